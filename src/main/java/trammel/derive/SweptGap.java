package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import trammel.geometry.ClosestApproach;
import trammel.geometry.Motion;
import trammel.geometry.Obstacle;
import trammel.geometry.Pose;
import trammel.geometry.TireSolid;
import trammel.quantity.Formula;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;

/**
 * A swept gap and its change as quantities: with what the linkage, the obstacle's place and the
 * tire's measures each have in their uncertainty.
 */
record SweptGap(Quantity gap, Quantity change) {
  private static final Formula GAP =
      new Formula(
          "gap",
          "least distance of the swept tire from the obstacle",
          "SteeringSweep: true minimum over travel and lock, about the true steering axis");
  private static final Formula CHANGE =
      new Formula("change of gap", "gap as proposed − gap as found", "SteeringSweep");
  private static final Formula WHEEL =
      new Formula(
          "where the wheel stands, told along the gap",
          "pose of the linkage",
          "closed form from hard points");

  /** Shoulder radius of a tire where nobody has measured it (mm). Common practice. */
  static final Quantity SHOULDER =
      Quantity.read(
          "shoulder radius",
          LENGTH,
          40,
          10,
          new Input("SweptGaps", "shoulder radius", 0, "common practice", Instrument.STATED));

  /** What a sweep is good to (mm). */
  private static final double SWEEP_STEP = 0.05;

  /** Center and direction of a wheel: as many numbers tell how it stands. */
  private static final int OF_WHEEL = 6;

  /** Places of the tire's measures, after the three coordinates of the obstacle. */
  private static final int RADIUS_AT = 3;

  private static final int WIDTH_AT = 4;
  private static final int SHOULDER_AT = 5;
  private static final int OUTBOARD_AT = 6;

  /**
   * A gap from its closest approach.
   *
   * @param variables what the pose varies with
   * @param pose the deciding one
   * @param place of the obstacle's nearest point: fore, out, up
   * @param before how close the tire comes as found
   * @param outboard how far the tire was moved outboard of where it was surveyed
   */
  static SweptGap of(
      Variables variables,
      Pose<Gradient> pose,
      ClosestApproach approach,
      List<Quantity> place,
      ClosestApproach before,
      WheelEnd now,
      WheelEnd then,
      Quantity outboard) {
    List<Quantity> others = new ArrayList<>(place);
    others.addAll(List.of(now.radius, now.width, SHOULDER, outboard));
    double[] partials = partials(approach, others);
    double[] byOthers = Arrays.copyOfRange(partials, OF_WHEEL - 1, partials.length);
    byOthers[0] = 1;
    others.add(0, wheel(variables, pose, Arrays.copyOf(partials, OF_WHEEL)));
    double byRadius = partials[OF_WHEEL + RADIUS_AT];
    double byWidth = partials[OF_WHEEL + WIDTH_AT];
    double byOffset = -partials[OF_WHEEL + OUTBOARD_AT];
    return new SweptGap(
        GAP.of(LENGTH, approach.gap(), byOthers, others.toArray(Quantity[]::new)),
        CHANGE.of(
            LENGTH,
            settled(approach.gap() - before.gap()),
            new double[] {byRadius, -byRadius, byWidth, -byWidth, byOffset, -byOffset},
            now.radius,
            then.radius,
            now.width,
            then.width,
            now.offset,
            then.offset));
  }

  /** A change below what a sweep is good to is none. */
  private static double settled(double change) {
    return Math.abs(change) < SWEEP_STEP ? 0 : change;
  }

  /**
   * Where the linkage holds the wheel, told along the gap (mm).
   *
   * @param partials of the gap by the wheel's center and by its spindle's direction
   */
  private static Quantity wheel(Variables variables, Pose<Gradient> pose, double[] partials) {
    FieldVector3D<Gradient> center = pose.wheelCenter();
    FieldVector3D<Gradient> spindle = pose.spindle();
    return variables.combined(
        WHEEL,
        LENGTH,
        partials,
        List.of(
            center.getX(),
            center.getY(),
            center.getZ(),
            spindle.getX(),
            spindle.getY(),
            spindle.getZ()));
  }

  /**
   * Derivatives of the gap by the wheel's center and direction, the obstacle's place, the tire's
   * radius, width and shoulder, and what it was moved outboard; with the closest points held, for
   * they do not contribute to first order.
   *
   * @param others all of these but the wheel's
   */
  private static double[] partials(ClosestApproach approach, List<Quantity> others) {
    int all = OF_WHEEL + others.size();
    Motion carried =
        approach.obstacle().fixedTo() == Obstacle.FixedTo.KNUCKLE
            ? approach.stance().of(Obstacle.FixedTo.KNUCKLE)
            : Motion.NONE;
    Vector3D axis = carried.undoDirection(approach.stance().axis());
    double outboard = others.get(OUTBOARD_AT).value();
    Vector3D center = carried.undo(approach.stance().center()).add(-outboard, axis);
    Gradient moved = variable(all, OUTBOARD_AT, others);
    FieldVector3D<Gradient> spindle = vector(all, 3, axis);
    Gradient gap =
        TireSolid.gap(
            vector(all, 0, center).add(moved, spindle),
            spindle,
            vector(all, OF_WHEEL, carried.undo(approach.onObstacle())),
            variable(all, RADIUS_AT, others),
            variable(all, WIDTH_AT, others),
            variable(all, SHOULDER_AT, others));
    return gap.getGradient();
  }

  private static Gradient variable(int all, int at, List<Quantity> others) {
    return Gradient.variable(all, OF_WHEEL + at, others.get(at).value());
  }

  private static FieldVector3D<Gradient> vector(int count, int first, Vector3D at) {
    return new FieldVector3D<>(
        Gradient.variable(count, first, at.getX()),
        Gradient.variable(count, first + 1, at.getY()),
        Gradient.variable(count, first + 2, at.getZ()));
  }
}
