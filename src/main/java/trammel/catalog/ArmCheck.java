package trammel.catalog;

import static trammel.geometry.HardPoint.LOWER_BALL_JOINT;
import static trammel.geometry.HardPoint.LOWER_FRONT_PIVOT;
import static trammel.geometry.HardPoint.LOWER_REAR_PIVOT;
import static trammel.geometry.HardPoint.STRUT_TOP;
import static trammel.geometry.HardPoint.TIE_ROD_INNER;
import static trammel.geometry.HardPoint.TIE_ROD_OUTER;
import static trammel.geometry.HardPoint.UPPER_BALL_JOINT;
import static trammel.geometry.HardPoint.UPPER_FRONT_PIVOT;
import static trammel.geometry.HardPoint.UPPER_REAR_PIVOT;

import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import trammel.geometry.HardPoint;
import trammel.quantity.Quantity;

/**
 * Finds arms, rods and uprights of a length that none has, and steering axes that lie down. All
 * limits are common practice, drawn wide.
 */
final class ArmCheck {
  /** Points nearer to each other than this are one point written twice (mm). */
  static final double LEAST_SPACING = 20;

  private static final double LEAST_ARM = 100;
  private static final double MOST_ARM = 900;
  private static final double LEAST_STEERING_ARM = 30;
  private static final double LEAST_TIE_ROD = 100;
  private static final double MOST_LEAN = 30;

  private static final String AGAIN = "Measure it again; was one point copied from the other?";

  private final SurveyFaults faults;

  ArmCheck(SurveyFaults faults) {
    this.faults = faults;
  }

  void check(Map<HardPoint, SurveyPoint> points) {
    int before = faults.count();
    arm(points, "upper arm", UPPER_FRONT_PIVOT, UPPER_REAR_PIVOT, UPPER_BALL_JOINT);
    arm(points, "lower arm", LOWER_FRONT_PIVOT, LOWER_REAR_PIVOT, LOWER_BALL_JOINT);
    SurveyPoint inner = points.get(TIE_ROD_INNER);
    SurveyPoint outer = points.get(TIE_ROD_OUTER);
    if (inner != null && outer != null) {
      within(outer.out(), "the tie rod", distance(inner, outer), LEAST_TIE_ROD, MOST_ARM);
    }
    SurveyPoint upper = HardPoint.upperPoint(points);
    SurveyPoint lower = points.get(LOWER_BALL_JOINT);
    if (upper != null && lower != null && faults.count() == before) {
      upright(upper, lower, points.containsKey(STRUT_TOP));
      if (outer != null) {
        steeringArm(upper, lower, outer);
      }
      if (faults.count() == before) {
        new StrutAxisCheck(faults).check(points);
      }
    }
  }

  private static double distance(SurveyPoint one, SurveyPoint other) {
    return one.vector().distance(other.vector());
  }

  private void within(Quantity at, String what, double length, double least, double most) {
    if (length < least || length > most) {
      faults.at(
          at,
          "makes "
              + what
              + " "
              + SurveyFaults.length(length)
              + " long; expected "
              + SurveyFaults.length(least)
              + " to "
              + SurveyFaults.length(most),
          length < least ? AGAIN : "Measure it again; check its unit and its digits.");
    }
  }

  private void arm(
      Map<HardPoint, SurveyPoint> points,
      String arm,
      HardPoint front,
      HardPoint rear,
      HardPoint to) {
    SurveyPoint first = points.get(front);
    SurveyPoint second = points.get(rear);
    SurveyPoint ball = points.get(to);
    if (first == null || second == null) {
      return;
    }
    double spacing = distance(first, second);
    if (spacing < LEAST_SPACING) {
      faults.at(
          second.fore(),
          "puts the "
              + arm
              + "'s pivots "
              + SurveyFaults.length(spacing)
              + " apart; expected "
              + SurveyFaults.length(LEAST_SPACING)
              + " or more",
          AGAIN);
    } else if (ball != null) {
      Vector3D axis = first.vector().subtract(second.vector()).normalize();
      Vector3D from = ball.vector().subtract(second.vector());
      double reach = from.crossProduct(axis).getNorm();
      within(ball.out(), "the " + arm + ", from its pivots' axis,", reach, LEAST_ARM, MOST_ARM);
      spread(ball, arm, from.dotProduct(axis), spacing);
    }
  }

  /** Both legs of an arm, which runs far ahead or behind only by a slip in a point's fore. */
  private void spread(SurveyPoint ball, String arm, double along, double spacing) {
    double past = Math.max(-along, along - spacing);
    if (past > MOST_ARM / 2) {
      faults.at(
          ball.fore(),
          "puts the "
              + arm
              + "'s ball joint "
              + SurveyFaults.length(past)
              + (along < 0 ? " behind its rear pivot" : " ahead of its front pivot")
              + "; expected "
              + SurveyFaults.length(MOST_ARM / 2)
              + " at the most",
          "Measure it again; fore counts forward of this axle.");
    }
  }

  private void upright(SurveyPoint upper, SurveyPoint lower, boolean strut) {
    double rise = upper.up().value() - lower.up().value();
    within(
        upper.up(),
        strut ? "the steering axis" : "the upright",
        distance(upper, lower),
        LEAST_ARM,
        MOST_ARM);
    lean(
        upper.out(),
        Math.toDegrees(Math.atan2(lower.out().value() - upper.out().value(), rise)),
        "kingpin inclination",
        strut);
    lean(
        upper.fore(),
        Math.toDegrees(Math.atan2(lower.fore().value() - upper.fore().value(), rise)),
        "caster",
        strut);
  }

  private void lean(Quantity at, double degrees, String angle, boolean strut) {
    if (Math.abs(degrees) > MOST_LEAN) {
      faults.at(
          at,
          "makes a "
              + angle
              + " of "
              + SurveyFaults.angle(degrees)
              + ": the steering axis lies down; expected "
              + SurveyFaults.angle(MOST_LEAN)
              + " at the most",
          strut
              ? "Measure the strut's top and the ball joint again; is one of them another joint?"
              : "Measure both ball joints again; is one of them another joint?");
    }
  }

  private void steeringArm(SurveyPoint upper, SurveyPoint lower, SurveyPoint outer) {
    Vector3D axis = upper.vector().subtract(lower.vector());
    if (axis.getNorm() < LEAST_SPACING) {
      return;
    }
    double length =
        outer.vector().subtract(lower.vector()).crossProduct(axis.normalize()).getNorm();
    if (length < LEAST_STEERING_ARM) {
      faults.at(
          outer.fore(),
          "puts the tie rod's outer end "
              + SurveyFaults.length(length)
              + " from the steering axis: a steering arm without length; expected "
              + SurveyFaults.length(LEAST_STEERING_ARM)
              + " or more",
          AGAIN);
    }
  }
}
