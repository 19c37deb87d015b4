package trammel.remedy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.Trial;
import trammel.derive.Derivations;
import trammel.derive.Proposed;
import trammel.judge.Finding;
import trammel.judge.Judge;
import trammel.quantity.Quantity;

/**
 * How far each wish of a build may go, one at a time, before something new decides against it:
 * tried in steps and then closed in upon, each trial derived and judged as a sheet is.
 */
public final class Limits {
  /** How close a limit is found (mm): as near as anybody cuts, sets or measures. */
  private static final double CLOSE = 0.5;

  private final Build build;
  private final BuildJudge judge;

  private Limits(Build build, Judge judge, LocalDate on) {
    this.build = build;
    this.judge = new BuildJudge(judge, new Derivations(on));
  }

  /** Something that may be had larger or smaller. */
  public enum Wish {
    TIRE_DIAMETER("tire diameter", 10, 120, more -> new Trial(more, 0, 0, 0, 0, 0, 0)),
    TIRE_WIDTH("tire width", 10, 80, more -> new Trial(0, more, 0, 0, 0, 0, 0)),
    WHEEL_OFFSET("wheel offset", 5, 60, more -> new Trial(0, 0, more, 0, 0, 0, 0)),
    WHEEL_SPACER("wheel spacer", 2, 40, more -> new Trial(0, 0, 0, more, 0, 0, 0)),
    SPRING_SPACER("spring spacer", 5, 60, more -> new Trial(0, 0, 0, 0, more, 0, 0)),
    FRONT_LIFT("lift in front", 5, 100, more -> new Trial(0, 0, 0, 0, 0, more, 0)),
    REAR_LIFT("lift at the rear", 5, 100, more -> new Trial(0, 0, 0, 0, 0, 0, more)),
    LIFT("lift of both axles", 5, 100, more -> new Trial(0, 0, 0, 0, 0, more, more));

    private final String words;
    private final double step;
    private final double most;

    @SuppressWarnings("ImmutableEnumChecker") // none of them holds anything
    private final DoubleFunction<Trial> trial;

    Wish(String words, double step, double most, DoubleFunction<Trial> trial) {
      this.words = words;
      this.step = step;
      this.most = most;
      this.trial = trial;
    }

    /** In a fitter's words. */
    public String words() {
      return words;
    }
  }

  /**
   * Where a wish ends in one direction.
   *
   * @param by how much more or less than proposed is still free of it (mm, signed)
   * @param stops what stops it; null where nothing does as far as was tried
   */
  public record End(double by, @Nullable Finding stops) {}

  /**
   * The range of one wish.
   *
   * @param now what is proposed, front and rear where they differ
   * @param less toward smaller values
   * @param more toward larger values
   */
  public record Range(Wish wish, List<Quantity> now, End less, End more) {}

  /**
   * The ranges of every wish.
   *
   * @param on the day the build is checked for
   */
  public static List<Range> of(Build build, Judge judge, LocalDate on) {
    Limits limits = new Limits(build, judge, on);
    Set<String> already = limits.deciding(Trial.NONE).keySet();
    List<Range> ranges = new ArrayList<>();
    Proposed proposed = Proposed.of(build, on);
    for (Wish wish : Wish.values()) {
      List<Quantity> now = now(wish, proposed);
      if (!now.isEmpty()) {
        ranges.add(
            new Range(wish, now, limits.end(wish, -1, already), limits.end(wish, 1, already)));
      }
    }
    return List.copyOf(ranges);
  }

  /** What is proposed of a wish; empty where the build has nothing of the kind. */
  private static List<Quantity> now(Wish wish, Proposed proposed) {
    return switch (wish) {
      case TIRE_DIAMETER -> proposed.diameters();
      case TIRE_WIDTH -> proposed.widths();
      case WHEEL_OFFSET -> proposed.offsets();
      case WHEEL_SPACER -> proposed.wheelSpacers();
      case SPRING_SPACER -> proposed.springSpacers();
      case FRONT_LIFT -> proposed.lifts().subList(0, 1);
      case REAR_LIFT -> proposed.lifts().subList(1, 2);
      case LIFT -> proposed.lifts();
    };
  }

  private End end(Wish wish, int way, Set<String> already) {
    double free = 0;
    for (double tried = wish.step; tried <= wish.most; tried += wish.step) {
      Optional<Finding> stop = stop(wish, way * tried, already);
      if (stop.isPresent()) {
        return closeIn(wish, way, free, tried, stop.get(), already);
      }
      free = tried;
    }
    return new End(way * free, null);
  }

  private End closeIn(
      Wish wish, int way, double free, double stopped, Finding stop, Set<String> already) {
    double from = free;
    double to = stopped;
    Finding first = stop;
    while (to - from > CLOSE) {
      double middle = (from + to) / 2;
      Optional<Finding> there = stop(wish, way * middle, already);
      if (there.isPresent()) {
        to = middle;
        first = there.get();
      } else {
        from = middle;
      }
    }
    return new End(way * from, first);
  }

  /** The gravest thing that decides and did not before. */
  private Optional<Finding> stop(Wish wish, double more, Set<String> already) {
    return deciding(wish.trial.apply(more)).entrySet().stream()
        .filter(entry -> !already.contains(entry.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  private Map<String, Finding> deciding(Trial trial) {
    return judge.judge(build.trying(trial)).findings().stream()
        .filter(Finding::decides)
        .collect(
            Collectors.toMap(
                Finding::identity, finding -> finding, (one, other) -> one, LinkedHashMap::new));
  }
}
