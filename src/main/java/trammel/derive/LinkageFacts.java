package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import java.util.Optional;
import trammel.build.Build;
import trammel.catalog.AxleProfile;
import trammel.catalog.Linkage;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.UpperArm;
import trammel.fact.ArmRoom;
import trammel.fact.BumpSteer;
import trammel.fact.JointSwing;
import trammel.fact.LinkageReach;
import trammel.fact.Standing;
import trammel.quantity.Absence;
import trammel.quantity.Decision;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Subject;

/** What a surveyed front linkage does over its travel: bump steer, swing, room, reach. */
final class LinkageFacts {
  private static final Absence UNSURVEYED =
      new Absence(
          "swing of the upper ball joint",
          "its hard points are not surveyed",
          Instrument.HARD_POINT,
          "survey the front hard points, or hang the wheel and look at the joint");

  private static final Absence UNSOLVED =
      new Absence(
          "swing of the upper ball joint",
          RackAlignment.UNSOLVED,
          Instrument.READ,
          "hang the wheel and look at the joint");

  final Derivation derivation;
  final Build build;
  private final HeightFacts heights;

  LinkageFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.heights = derivation.heights();
  }

  void add() {
    for (Axle axle : Axle.values()) {
      AxleProfile profile = build.vehicle().axle(axle);
      for (Position position : Position.of(axle)) {
        Quantity lift = heights.lift(position);
        boolean arm = build.changes(position, PartKind.UPPER_ARM);
        boolean raised = !lift.isKnown() || lift.value() != 0;
        if (profile.layout().beam() || !(arm || raised)) {
          continue;
        }
        Corners corners = derivation.corners(axle);
        Optional<Corners.Surveyed> corner = corners.solvable(position);
        if (corner.isPresent()) {
          // Only an arm of another shape, or a stroke that begins lower, goes where none went
          // before.
          boolean farther =
              arm
                  || build.changes(
                      position,
                      PartKind.STRUT_TOP_SPACER,
                      PartKind.DAMPER,
                      PartKind.DAMPER_BRACKET);
          new LinkageWheel(
                  this, position, profile.linkage(), corner.get(), Standing.ofChange(farther), lift)
              .add();
        } else {
          if (corners.surveyed(position)) {
            unsolved(position, profile.linkage());
          }
          swing(
              position,
              Standing.WORSE_OR_NEW,
              lift,
              profile.linkage(),
              corners.surveyed(position)
                  ? corners.unsolved(position)
                  : profile.layout().solved() ? UNSURVEYED : UNSOLVED);
        }
      }
    }
  }

  /** A linkage of which something is missing, or that does not come to the proposed height. */
  private void unsolved(Position position, Linkage linkage) {
    Corners corners = derivation.corners(position.axle().orElseThrow());
    Optional<String> limit = corners.limit(position);
    Absence why = corners.unsolved(position);
    Quantity angle = Quantity.absent(ANGLE, why);
    derivation.facts.add(
        new BumpSteer(
            Subject.of(position), Standing.WORSE_OR_NEW, arms(position), angle, angle, angle));
    reach(position, limit.isPresent() ? Decision.NOT_MET : Decision.ABSENT, limit.orElse(""));
    linkage
        .armRooms()
        .forEach(
            room -> room(position, Standing.WORSE_OR_NEW, room, Quantity.absent(LENGTH, why), ""));
  }

  void reach(Position position, Decision reaches, String limit) {
    derivation.facts.add(
        new LinkageReach(
            Subject.of(position), Standing.WORSE_OR_NEW, arms(position), reaches, limit));
  }

  void room(Position position, Standing standing, Linkage.ArmRoom room, Quantity gap, String pose) {
    derivation.facts.add(
        new ArmRoom(
            Subject.of(position, room.obstacle().replace(' ', '-')),
            standing,
            arms(position),
            room.obstacle(),
            gap,
            pose));
  }

  /** Whether a wheel's suspension has an upper arm whose ball joint swings. */
  boolean upperArm(Position position) {
    return switch (build.vehicle().axle(position.axle().orElseThrow()).layout()) {
      case DOUBLE_WISHBONE, MULTI_LINK -> true;
      case STRUT, TRAILING_ARM, BEAM -> false;
    };
  }

  /** A swing that nobody knows; none where no upper ball joint swings. */
  void swing(Position position, Standing standing, Quantity lift, Linkage linkage, Absence why) {
    if (!upperArm(position)) {
      return;
    }
    derivation.facts.add(
        new JointSwing(
            Subject.of(position),
            standing,
            arms(position),
            Quantity.absent(ANGLE, why),
            linkage.upperSwing().limit(),
            lift,
            "hanging"));
  }

  List<String> arms(Position position) {
    return build.changes(position, PartKind.UPPER_ARM)
        ? build.after(position).one(PartKind.UPPER_ARM, UpperArm.class).stream()
            .map(UpperArm::number)
            .toList()
        : List.of();
  }
}
