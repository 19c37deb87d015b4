package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.jspecify.annotations.Nullable;
import trammel.catalog.Linkage;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.UpperArm;
import trammel.fact.BumpSteer;
import trammel.fact.JointSwing;
import trammel.fact.Standing;
import trammel.geometry.Corner;
import trammel.geometry.DoubleWishbone;
import trammel.geometry.HardPoint;
import trammel.geometry.Pose;
import trammel.geometry.Rods;
import trammel.quantity.Absence;
import trammel.quantity.Decision;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Position;
import trammel.subject.Subject;

/** One wheel that is solved. */
final class LinkageWheel {
  private static final Formula TOE_CHANGE =
      new Formula(
          "bump steer",
          "greater change of toe over 25 mm either way",
          "closed form from hard points; tie rod as long as the reset toe makes it");
  private static final Formula MORE =
      new Formula("bump steer added", "as proposed − before", "definition");
  private static final Formula SWING =
      new Formula(
          "swing of the upper ball joint",
          "as surveyed + turn of the upper arm against the upright",
          "DoubleWishbone: stud along the steering axis, housing fixed in the arm");
  private static final Formula WHERE =
      new Formula("point of the arm", "between pivot and ball joint", "straight legs");
  private static final Formula ROOM =
      new Formula("gap", "distance of the axes − both radii", "definition");

  /** Travel over which bump steer is told (mm): rules of the trade tell it over an inch. */
  private static final double OVER = 25;

  private static final Absence UNBOUNDED =
      new Absence(
          "travel and lock",
          "bump travel, droop travel and the rack's travel are not all known",
          Instrument.TAPE,
          "tape: stop to its seat at rest, rest to hanging, rack from lock to lock");

  private final LinkageFacts facts;
  private final Position position;
  private final Linkage linkage;
  private final CornerModel model;
  private final Variables variables;
  private final SurveyedAlignment.Solved solved;
  private final Standing standing;
  private final Quantity lift;
  private final List<Double> settings;
  private final CornerPoses poses;
  private final Corner<Binary64> plain;

  LinkageWheel(
      LinkageFacts facts,
      Position position,
      Linkage linkage,
      Corners.Surveyed corner,
      Standing standing,
      Quantity lift) {
    this.facts = facts;
    this.position = position;
    this.linkage = linkage;
    this.model = corner.model();
    this.variables = corner.variables();
    this.solved = corner.solved().orElseThrow();
    this.standing = standing;
    this.lift = lift;
    this.settings = solved.best().settings();
    this.poses = corner.poses().orElseThrow();
    this.plain = poses.plain(true);
  }

  void add() {
    bumpSteer();
    if (model.bounded()) {
      reach();
      swing();
      linkage.armRooms().forEach(this::room);
    } else {
      facts.reach(position, Decision.ABSENT, "");
      facts.swing(position, standing, lift, linkage, UNBOUNDED);
      linkage
          .armRooms()
          .forEach(
              room -> facts.room(position, standing, room, Quantity.absent(LENGTH, UNBOUNDED), ""));
    }
  }

  private Subject subject() {
    return Subject.of(position);
  }

  private void bumpSteer() {
    Quantity before = steer(false, SurveyedAlignment.AS_SHOWN, solved.before());
    Quantity after = steer(true, SurveyedAlignment.PROPOSED, solved.after());
    facts.derivation.facts.add(
        new BumpSteer(
            subject(),
            Standing.WORSE_OR_NEW,
            facts.arms(position),
            before.called("bump steer before"),
            after,
            MORE.linear(1, after, -1, before)));
  }

  /** The greater change of toe over 25 mm either way of a ride height. */
  private Quantity steer(boolean proposed, int height, Pose<Gradient> rest) {
    double toe = rest.toe().getValue();
    double up = toeAt(proposed, model.travel(height) + OVER) - toe;
    double down = toeAt(proposed, model.travel(height) - OVER) - toe;
    double over = Double.isNaN(down) || Math.abs(up) >= Math.abs(down) ? OVER : -OVER;
    Optional<Pose<Gradient>> there =
        poses.at(
            "bump steer " + proposed + over,
            proposed,
            () -> variables.variable(model.heightIndex(height)).add(over),
            () -> poses.straight(proposed));
    if (there.isEmpty()) {
      return Quantity.absent(
          ANGLE,
          new Absence(
              "bump steer",
              "the linkage does not go 25 mm either way of this height",
              Instrument.READ,
              "raise it less"));
    }
    Gradient change = there.get().toe().subtract(rest.toe());
    return variables.quantity(TOE_CHANGE, ANGLE, change.getValue() < 0 ? change.negate() : change);
  }

  private double toeAt(boolean proposed, double rise) {
    return poses.plainAt(proposed, rise, 0) instanceof Pose<Binary64> pose
        ? pose.toe().getReal()
        : Double.NaN;
  }

  private void reach() {
    Optional<String> limit = poses.limit();
    facts.reach(
        position,
        Decision.of(limit.isEmpty()),
        limit.orElse("it goes from droop to bump and from lock to lock"));
  }

  /** The ball joint of an upper arm; a strut's top turns on a bearing and a bushing instead. */
  private void swing() {
    if (!facts.upperArm(position)) {
      return;
    }
    Optional<UpperArm> arm = facts.build.after(position).one(PartKind.UPPER_ARM, UpperArm.class);
    Quantity limit =
        arm.map(UpperArm::swing).filter(Quantity::isKnown).orElse(linkage.upperSwing().limit());
    Optional<Gradient> hung = poses.armsAtDroop().map(pose -> swing(true, pose));
    Optional<Gradient> bumped = poses.armsAtBump().map(pose -> swing(true, pose));
    if (hung.isEmpty() || bumped.isEmpty()) {
      facts.swing(position, standing, lift, linkage, UNBOUNDED);
      return;
    }
    Gradient surveyed = swing(false, poses.asSurveyed());
    Gradient droop = turn(surveyed, hung.get());
    Gradient bump = turn(surveyed, bumped.get());
    boolean hanging = droop.getValue() >= bump.getValue();
    Quantity turn = variables.quantity(SWING, ANGLE, hanging ? droop : bump);
    facts.derivation.facts.add(
        new JointSwing(
            subject(),
            standing,
            facts.arms(position),
            SWING.linear(1, linkage.upperSwing().atRest(), 1, turn),
            limit,
            lift,
            hanging ? "hanging" : "on the bump stop"));
  }

  /** Angle between the steering axis and the upper arm in a pose (degrees). */
  private Gradient swing(boolean asProposed, Pose<Gradient> pose) {
    return ((DoubleWishbone<Gradient>) poses.linkage(asProposed)).upperSwing(pose);
  }

  /** How far the arm turns from one angle to another, whichever way. */
  private static Gradient turn(Gradient from, Gradient to) {
    Gradient change = to.subtract(from);
    return change.getValue() < 0 ? change.negate() : change;
  }

  private void room(Linkage.ArmRoom room) {
    List<Quantity> ends =
        List.of(
            room.from().fore(),
            room.from().out(),
            room.from().up(),
            room.to().fore(),
            room.to().out(),
            room.to().up());
    Optional<Quantity> missing = ends.stream().filter(quantity -> !quantity.isKnown()).findFirst();
    if (missing.isPresent()) {
      facts.room(
          position, standing, room, Quantity.absent(LENGTH, Variables.absence(missing.get())), "");
      return;
    }
    Vector3D from = SurveyedShape.vector(room.from());
    Vector3D to = SurveyedShape.vector(room.to());
    double droop = -model.end(CornerModel.DROOP);
    double bump = model.end(CornerModel.BUMP);
    @Nullable Rods closest = null;
    HardPoint leg = HardPoint.UPPER_FRONT_PIVOT;
    double where = droop;
    Map<HardPoint, Vector3D> pivots = new HashMap<>();
    pivots.put(HardPoint.UPPER_FRONT_PIVOT, model.pivot(HardPoint.UPPER_FRONT_PIVOT, settings));
    pivots.put(HardPoint.UPPER_REAR_PIVOT, model.pivot(HardPoint.UPPER_REAR_PIVOT, settings));
    double surveyed = plain.surveyedWheel().getZ().getReal();
    for (Pose<Binary64> pose : poses.travel()) {
      for (Map.Entry<HardPoint, Vector3D> pivot : pivots.entrySet()) {
        Rods rods = Rods.closest(pivot.getValue(), pose.upperBall().toVector3D(), from, to);
        if (closest == null || rods.distance() < closest.distance()) {
          closest = rods;
          leg = pivot.getKey();
          where = pose.wheelCenter().getZ().getReal() - surveyed;
        }
      }
    }
    if (closest != null) {
      facts.room(
          position,
          standing,
          room,
          gap(room, closest, leg, where),
          where <= droop + 1 ? "hanging" : where >= bump - 1 ? "on the bump stop" : "in between");
    }
  }

  private Quantity gap(Linkage.ArmRoom room, Rods closest, HardPoint leg, double travel) {
    Optional<Pose<Gradient>> pose = poses.armsAt(travel);
    if (pose.isEmpty()) {
      return Quantity.absent(LENGTH, UNBOUNDED);
    }
    FieldVector3D<Gradient> pivot = model.pivotVariable(leg);
    FieldVector3D<Gradient> on =
        pivot
            .scalarMultiply(1 - closest.firstShare())
            .add(closest.firstShare(), pose.get().upperBall());
    Vector3D apart = closest.onFirst().subtract(closest.onSecond());
    double distance = apart.getNorm();
    Vector3D unit = distance > 0 ? apart.normalize() : Vector3D.PLUS_K;
    List<Quantity> operands = new ArrayList<>();
    for (Gradient component : List.of(on.getX(), on.getY(), on.getZ())) {
      operands.add(variables.quantity(WHERE, LENGTH, component));
    }
    double share = closest.secondShare();
    operands.add(WHERE.linear(1 - share, room.from().fore(), share, room.to().fore()));
    operands.add(WHERE.linear(1 - share, room.from().out(), share, room.to().out()));
    operands.add(WHERE.linear(1 - share, room.from().up(), share, room.to().up()));
    operands.add(room.radius());
    double radius = room.radius().isKnown() ? room.radius().value() : Double.NaN;
    return ROOM.of(
        LENGTH,
        distance - radius,
        new double[] {
          unit.getX(), unit.getY(), unit.getZ(), -unit.getX(), -unit.getY(), -unit.getZ(), -1
        },
        operands.toArray(Quantity[]::new));
  }
}
