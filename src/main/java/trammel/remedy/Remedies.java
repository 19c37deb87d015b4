package trammel.remedy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.Catalog;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.WheelPart.Tire;
import trammel.catalog.WheelPart.Wheel;
import trammel.derive.Derivations;
import trammel.fact.Fact;
import trammel.fact.FluidLoad;
import trammel.judge.Finding;
import trammel.judge.Judge;
import trammel.judge.Judgement;
import trammel.judge.Kind;
import trammel.judge.Rule;
import trammel.quantity.Quantity;
import trammel.subject.Position;
import trammel.subject.Side;

/**
 * Parts of the catalog that settle a finding. Each is tried: fitted on the proposed build, derived
 * and judged again. It counts only if the finding is gone and nothing that decides has come in its
 * place.
 */
public final class Remedies {
  /** How many parts of one kind are named. */
  private static final int NAMED = 3;

  private final Build build;
  private final Judge judge;
  private final Catalog catalog;
  private final Derivations derivations;
  private final BuildJudge trials;
  private final Set<String> deciding;
  private final Map<String, Set<String>> tried = new HashMap<>();
  private final Fitting trial;

  /**
   * The remedies of a build.
   *
   * @param judgement what was found on it as it stands
   * @param on the day it is checked for
   */
  public Remedies(Build build, Judgement judgement, Judge judge, Catalog catalog, LocalDate on) {
    this.build = build;
    this.judge = judge;
    this.catalog = catalog;
    this.derivations = new Derivations(on);
    this.trials = new BuildJudge(judge, derivations);
    this.deciding = deciding(judgement);
    this.trial = new Fitting(build);
  }

  /**
   * The remedies of a finding, nearest to what is proposed first; empty where the finding decides
   * nothing.
   */
  public List<Remedy> of(Finding finding) {
    List<Position> at = positions(finding);
    if (finding.decides() && finding.fact() instanceof FluidLoad) {
      return ofPressure(finding, at);
    }
    boolean work = finding.kind() == Kind.COMPANION && finding.need() == null;
    if (!finding.decides() || at.isEmpty() || work) {
      return List.of();
    }
    List<Remedy> remedies = new ArrayList<>();
    for (PartKind kind : kinds(finding)) {
      List<List<Part>> candidates = new ArrayList<>();
      for (Part part : catalog.parts().values()) {
        if (part.kind() == kind && trial.suits(part, at)) {
          both(part).ifPresent(candidates::add);
        }
      }
      candidates.sort(
          Comparator.comparingDouble(parts -> distance(parts.get(0), build.after(at.get(0)))));
      List<String> found = new ArrayList<>();
      List<String> numbers = new ArrayList<>();
      for (List<Part> parts : candidates) {
        if (found.size() < NAMED && settles(finding, judged(parts, at))) {
          parts.forEach(part -> numbers.add(part.number()));
          found.add(parts.stream().map(Part::number).collect(Collectors.joining(" with ")));
        }
      }
      if (!found.isEmpty()) {
        remedies.add(
            new Remedy(
                "part", kind.words() + " " + String.join(", ", found), List.copyOf(numbers)));
      }
    }
    return List.copyOf(remedies);
  }

  /** Parts that take load from the fluid or give it back, with what each leaves. */
  private List<Remedy> ofPressure(Finding finding, List<Position> at) {
    List<Remedy> remedies = new ArrayList<>();
    for (PartKind kind : PressureRemedies.KINDS) {
      List<PressureRemedies.Left> all = new ArrayList<>();
      for (Part part : catalog.parts().values()) {
        if (part.kind() == kind
            && trial.suits(part, at)
            && settles(finding, judged(List.of(part), at))) {
          PressureRemedies.left(part, finding, derivations.facts(trial.fitted(List.of(part), at)))
              .ifPresent(all::add);
        }
      }
      PressureRemedies.remedy(kind, all).ifPresent(remedies::add);
    }
    return List.copyOf(remedies);
  }

  /**
   * The wheels that a remedy goes to: both of the axle, and all that the same order line would
   * change.
   */
  private List<Position> positions(Finding finding) {
    String where = finding.fact().subject().where();
    Set<Position> at = EnumSet.noneOf(Position.class);
    for (Position position : Position.running()) {
      boolean here =
          position.toString().equals(where)
              || position.axle().map(axle -> axle.toString().equals(where)).orElse(false);
      if (here) {
        at.addAll(Position.of(position.axle().orElseThrow()));
      }
    }
    for (Build.Line line : build.lines()) {
      if (finding.about(line.part().number()) && line.at().stream().anyMatch(at::contains)) {
        at.addAll(line.at());
      }
    }
    at.remove(Position.SPARE);
    return List.copyOf(at);
  }

  /**
   * Kinds to try: what the rule asks for, else the kinds that the fact concerns and the build adds;
   * for an alignment all that it concerns, since arms and links are bought for that. Then what the
   * rule says may settle it too.
   */
  private Set<PartKind> kinds(Finding finding) {
    Set<PartKind> kinds = new LinkedHashSet<>();
    if (finding.need() != null) {
      kinds.add(finding.need().kind());
      kinds.addAll(alsoTried(finding));
      return kinds;
    }
    Fact.Concerns concerns = finding.fact().getClass().getAnnotation(Fact.Concerns.class);
    Set<PartKind> added =
        build.lines().stream().map(line -> line.part().kind()).collect(Collectors.toSet());
    if (concerns != null) {
      for (PartKind kind : concerns.value()) {
        boolean bought =
            kind.takesThePlace() && (added.contains(kind) || kind == PartKind.FASTENER);
        if (bought || finding.kind() == Kind.ALIGNMENT) {
          kinds.add(kind);
        }
      }
    }
    kinds.addAll(alsoTried(finding));
    return kinds;
  }

  private List<PartKind> alsoTried(Finding finding) {
    return judge.rule(finding.rule()).map(Rule::tries).orElse(List.of());
  }

  /**
   * A part, or a handed one with the like of it for the other side; empty where that is missing.
   */
  private Optional<List<Part>> both(Part part) {
    if (part.listing().hand() == null) {
      return Optional.of(List.of(part));
    }
    String wanted = part.listing().name().replace("left", "right");
    return catalog.parts().values().stream()
        .filter(
            other ->
                other.kind() == part.kind()
                    && other.listing().hand() == Side.RIGHT
                    && other.listing().vehicles().equals(part.listing().vehicles())
                    && other.listing().name().equals(wanted))
        .findFirst()
        .map(other -> List.of(part, other));
  }

  /** What decides with a part in place; tried once, since many findings ask for the same trial. */
  private Set<String> judged(List<Part> parts, List<Position> at) {
    return tried.computeIfAbsent(
        parts.stream().map(Part::number).collect(Collectors.joining("+")) + at,
        key -> deciding(trials.judge(trial.fitted(parts, at))));
  }

  private static Set<String> deciding(Judgement judgement) {
    return judgement.findings().stream()
        .filter(Finding::decides)
        .map(Finding::identity)
        .collect(Collectors.toSet());
  }

  private boolean settles(Finding finding, Set<String> after) {
    Set<String> come = new HashSet<>(after);
    come.removeAll(deciding);
    return come.isEmpty() && !after.contains(finding.identity());
  }

  /**
   * How far a part is from what is proposed, in millimeters of diameter or offset; equal for other
   * kinds.
   */
  private static double distance(Part part, Equipment now) {
    if (part instanceof Tire tire) {
      return now.one(PartKind.TIRE, Tire.class)
          .map(other -> Math.abs(nominal(tire) - nominal(other)))
          .orElse(0.0);
    }
    if (part instanceof Wheel wheel) {
      return now.one(PartKind.WHEEL, Wheel.class)
          .map(other -> apart(wheel.offset(), other.offset()))
          .orElse(0.0);
    }
    return 0;
  }

  private static double nominal(Tire tire) {
    return tire.designation().rim().millimeters()
        + 2
            * tire.designation().sectionWidthMillimeters()
            * tire.designation().aspect().orElse(0)
            / 100.0;
  }

  private static double apart(Quantity one, Quantity other) {
    return one.isKnown() && other.isKnown()
        ? Math.abs(one.value() - other.value())
        : Double.MAX_VALUE;
  }
}
