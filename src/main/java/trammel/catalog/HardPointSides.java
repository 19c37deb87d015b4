package trammel.catalog;

import static trammel.geometry.HardPoint.KNUCKLE_LOWER_BOLT;
import static trammel.geometry.HardPoint.KNUCKLE_UPPER_BOLT;
import static trammel.geometry.HardPoint.LOWER_BALL_JOINT;
import static trammel.geometry.HardPoint.LOWER_FRONT_PIVOT;
import static trammel.geometry.HardPoint.LOWER_REAR_PIVOT;
import static trammel.geometry.HardPoint.STRUT_FOOT;
import static trammel.geometry.HardPoint.STRUT_TOP;
import static trammel.geometry.HardPoint.TIE_ROD_INNER;
import static trammel.geometry.HardPoint.TIE_ROD_OUTER;
import static trammel.geometry.HardPoint.UPPER_BALL_JOINT;
import static trammel.geometry.HardPoint.UPPER_FRONT_PIVOT;
import static trammel.geometry.HardPoint.UPPER_REAR_PIVOT;
import static trammel.geometry.HardPoint.WHEEL_CENTER;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trammel.geometry.HardPoint;
import trammel.quantity.Quantity;
import trammel.subject.Side;

/** Finds hard points that stand on the wrong side of one another, or of the vehicle. */
final class HardPointSides {
  private final SurveyFaults faults;

  HardPointSides(SurveyFaults faults) {
    this.faults = faults;
  }

  void check(Map<HardPoint, SurveyPoint> points) {
    int before = faults.count();
    across(points);
    oneSide(points);
    if (faults.count() > before) {
      return;
    }
    outboard(points, UPPER_BALL_JOINT, List.of(UPPER_FRONT_PIVOT, UPPER_REAR_PIVOT));
    outboard(points, LOWER_BALL_JOINT, List.of(LOWER_FRONT_PIVOT, LOWER_REAR_PIVOT));
    outboard(points, TIE_ROD_OUTER, List.of(TIE_ROD_INNER));
    outboard(points, LOWER_BALL_JOINT, List.of(STRUT_TOP));
    outboard(points, WHEEL_CENTER, List.of(LOWER_BALL_JOINT, UPPER_BALL_JOINT, STRUT_FOOT));
    ahead(points, UPPER_FRONT_PIVOT, UPPER_REAR_PIVOT);
    ahead(points, LOWER_FRONT_PIVOT, LOWER_REAR_PIVOT);
    above(points, UPPER_BALL_JOINT, LOWER_BALL_JOINT, UPPER_AND_LOWER);
    above(points, STRUT_TOP, LOWER_BALL_JOINT, UPPER_AND_LOWER);
    above(points, STRUT_TOP, STRUT_FOOT, "Are top and foot swapped?");
    above(points, KNUCKLE_UPPER_BOLT, KNUCKLE_LOWER_BOLT, UPPER_AND_LOWER);
  }

  private static final String UPPER_AND_LOWER = "Are upper and lower swapped?";

  /** The tie rod's inner end alone may lie across the middle. */
  private void across(Map<HardPoint, SurveyPoint> points) {
    List<Quantity> across = new ArrayList<>();
    points.forEach(
        (name, point) -> {
          if (name != TIE_ROD_INNER && point.out().value() < 0) {
            across.add(point.out());
          }
        });
    if (across.size() > 2) {
      faults.at(
          across.get(0),
          "lies on the other side of the vehicle, and so do "
              + (across.size() - 1)
              + " more hard points; expected out to be positive",
          "Are left and right swapped? Out counts outward on either side: leave out the minus.");
      return;
    }
    for (Quantity out : across) {
      faults.at(
          out,
          "lies on the other side of the vehicle; expected out to be positive",
          SurveyFaults.signSwapped(out));
    }
  }

  private void oneSide(Map<HardPoint, SurveyPoint> points) {
    Side side = null;
    for (SurveyPoint point : points.values()) {
      if (point.side() != null && side != null && point.side() != side) {
        faults.at(
            point.out(),
            "is of the "
                + point.side()
                + " wheel, and another hard point of the "
                + side
                + " one; expected all of one wheel",
            "Survey one wheel whole; the other is its mirror image.");
        return;
      }
      side = point.side() == null ? side : point.side();
    }
  }

  private void outboard(
      Map<HardPoint, SurveyPoint> points, HardPoint outer, List<HardPoint> inner) {
    SurveyPoint outside = points.get(outer);
    for (HardPoint each : inner) {
      SurveyPoint inside = points.get(each);
      if (outside != null
          && inside != null
          && outside.out().value() <= inside.out().value()
          && apart(outside, inside)) {
        faults.at(
            outside.out(),
            "lies no farther out than the "
                + words(each)
                + ", which is at "
                + SurveyFaults.written(inside.out())
                + "; expected the "
                + words(outer)
                + " outboard of it",
            "Are inner and outer swapped? Exchange the two, or correct one of them.");
        return;
      }
    }
  }

  private static String words(HardPoint point) {
    return switch (point) {
      case TIE_ROD_INNER -> "tie rod's inner end";
      case TIE_ROD_OUTER -> "tie rod's outer end";
      default -> point.words();
    };
  }

  private void ahead(Map<HardPoint, SurveyPoint> points, HardPoint front, HardPoint rear) {
    SurveyPoint first = points.get(front);
    SurveyPoint second = points.get(rear);
    if (first != null
        && second != null
        && first.fore().value() < second.fore().value()
        && apart(first, second)) {
      faults.at(
          first.fore(),
          "lies behind the "
              + rear.words()
              + ", which is at "
              + SurveyFaults.written(second.fore())
              + "; expected the "
              + front.words()
              + " ahead of it",
          "Are front and rear swapped, or a sign? Fore counts forward of the axle.");
    }
  }

  /** Points that coincide are told as such, not as swapped. */
  private static boolean apart(SurveyPoint one, SurveyPoint other) {
    return one.vector().distance(other.vector()) >= ArmCheck.LEAST_SPACING;
  }

  private void above(
      Map<HardPoint, SurveyPoint> points, HardPoint high, HardPoint low, String swapped) {
    SurveyPoint upper = points.get(high);
    SurveyPoint lower = points.get(low);
    if (upper != null && lower != null && upper.up().value() <= lower.up().value()) {
      faults.at(
          upper.up(),
          "is no higher than the "
              + low.words()
              + ", which is at "
              + SurveyFaults.written(lower.up())
              + "; expected the "
              + high.words()
              + " above it",
          swapped + " Exchange the two, or correct one of them.");
    }
  }
}
