package trammel.derive;

import java.util.Locale;
import trammel.build.Build;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.EndShape;
import trammel.catalog.SuspensionPart.Spring;
import trammel.catalog.SuspensionPart.SpringSpacer;
import trammel.fact.CoilRoom;
import trammel.fact.SpacerStep;
import trammel.fact.Standing;
import trammel.quantity.Decision;
import trammel.subject.Position;
import trammel.subject.Subject;

/** Coils between their seats at both ends of the travel, and against a spacer's step. */
final class CoilFacts {
  private static final PartKind[] TOUCHING = {
    PartKind.SPRING,
    PartKind.SPRING_SPACER,
    PartKind.STRUT_TOP_SPACER,
    PartKind.DAMPER,
    PartKind.DAMPER_BRACKET,
    PartKind.DROOP_STRAP,
    PartKind.BUMP_STOP,
    PartKind.COIL_RETAINER
  };

  private final Derivation derivation;
  private final Build build;

  CoilFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  void add(Position position, Standings standings) {
    CornerTravel travel = standings.after();
    boolean touched = build.changes(position, TOUCHING) || build.trial().springSpacer() != 0;
    boolean held =
        travel.axle().support().springCaptive()
            || !travel.equipment().all(PartKind.COIL_RETAINER).isEmpty();
    travel
        .coil()
        .ifPresent(
            coil ->
                derivation.facts.add(
                    new CoilRoom(
                        Subject.of(position),
                        Standing.ofChange(touched),
                        travel.numbers(TOUCHING),
                        coil.coil().number(),
                        coil.gap(),
                        held,
                        coil.bindRoom())));
    travel
        .equipment()
        .one(PartKind.SPRING, Spring.class)
        .ifPresent(spring -> steps(position, travel, spring));
  }

  private void steps(Position position, CornerTravel travel, Spring spring) {
    EndShape end = spring.lowerEnd();
    for (SpringSpacer spacer : travel.equipment().all(PartKind.SPRING_SPACER, SpringSpacer.class)) {
      if (spacer.stepped()) {
        derivation.facts.add(
            new SpacerStep(
                Subject.of(position, spacer.number()),
                Standing.ofChange(build.changes(position, PartKind.SPRING, PartKind.SPRING_SPACER)),
                travel.numbers(PartKind.SPRING, PartKind.SPRING_SPACER),
                spacer.number(),
                spring.number(),
                end == null ? Decision.ABSENT : Decision.of(end != EndShape.CLOSED_GROUND),
                end == null
                    ? "unknown"
                    : end.toString().toLowerCase(Locale.ROOT).replace('_', ' ')));
      }
    }
  }
}
