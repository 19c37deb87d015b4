package trammel.derive;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import trammel.build.Build;
import trammel.catalog.AxleProfile.Layout;
import trammel.catalog.Listing.FastenerNeed;
import trammel.catalog.PartKind;
import trammel.fact.AfterWork;
import trammel.fact.FastenerSupply;
import trammel.fact.Standing;
import trammel.quantity.Decision;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Subject;

/** What fitting the parts of a sheet asks for: fasteners before it, work after it. */
final class FittingFacts {
  private final Derivation derivation;
  private final Build build;

  FittingFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  /**
   * The fasteners of one line. A plate above a strut takes the length of its studs away, blocks
   * under the body that of its bolts, so one that says nothing of fasteners leaves a question open;
   * any other part goes on with those it finds.
   *
   * @param pieces how many pieces the job asks for
   */
  void fasteners(Build.Line line, int pieces) {
    List<FastenerNeed> needs = line.part().listing().fasteners();
    boolean thick =
        line.part().kind() == PartKind.STRUT_TOP_SPACER
            || line.part().kind() == PartKind.BODY_LIFT_KIT;
    if (needs.isEmpty() && !thick) {
      return;
    }
    String number = line.part().number();
    String missing = lacking(needs, pieces, false);
    String onceOnly = lacking(needs, pieces, true);
    derivation.facts.add(
        new FastenerSupply(
            Subject.line(number),
            Standing.WORSE_OR_NEW,
            List.of(number),
            number,
            missing,
            needs.isEmpty() ? Decision.ABSENT : Decision.of(missing.isEmpty()),
            onceOnly,
            Decision.of(onceOnly.isEmpty())));
  }

  private static String lacking(List<FastenerNeed> needs, int pieces, boolean singleUse) {
    return needs.stream()
        .filter(need -> !need.supplied() && need.singleUse() == singleUse)
        .map(need -> need.words(pieces))
        .collect(Collectors.joining(" and "));
  }

  /** Whether an arm, a height or a steering part changes, on either axle. */
  void afterwards() {
    Set<String> parts = new LinkedHashSet<>();
    boolean arms = false;
    boolean heights = Position.running().stream().anyMatch(build.raised()::containsKey);
    boolean steering = false;
    for (Axle axle : Axle.values()) {
      Layout layout = build.vehicle().axle(axle).layout();
      arms |= changed(axle, kind -> kind.locatesWheel(), parts);
      arms |= layout == Layout.STRUT && changed(axle, kind -> kind == PartKind.DAMPER, parts);
      heights |= changed(axle, PartKind::setsHeight, parts);
      steering |= changed(axle, kind -> kind == PartKind.ECCENTRIC_BOLT, parts);
      // A panhard bar in front swings with the drag link.
      steering |=
          axle == Axle.FRONT
              && layout.beam()
              && build.changes(axle, PartKind.PANHARD_BAR, PartKind.PANHARD_BRACKET);
    }
    derivation.facts.add(
        new AfterWork(
            Subject.VEHICLE, Standing.WORSE_OR_NEW, List.copyOf(parts), arms, heights, steering));
  }

  private boolean changed(Axle axle, Predicate<PartKind> which, Set<String> parts) {
    List<PartKind> changed = new ArrayList<>();
    for (PartKind kind : PartKind.values()) {
      if (which.test(kind) && build.changes(axle, kind)) {
        changed.add(kind);
      }
    }
    build.lines().stream()
        .filter(line -> changed.contains(line.part().kind()))
        .filter(line -> line.at().stream().anyMatch(Position.of(axle)::contains))
        .forEach(line -> parts.add(line.part().number()));
    return !changed.isEmpty();
  }
}
