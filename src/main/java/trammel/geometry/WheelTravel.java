package trammel.geometry;

import java.util.Locale;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;
import org.hipparchus.util.FastMath;

/**
 * Poses of a corner by how far its wheel's center has risen against the body, rather than by the
 * lower arm's angle. A suspension lift of d is a travel of −d.
 *
 * <p>The angle is found by secant steps in plain numbers on the closed form, or by small ones where
 * those lead past a limit; where derivatives are wanted, one Newton step in the field's own
 * elements then carries the first ones over, to some parts in a billion.
 */
public final class WheelTravel<T extends CalculusFieldElement<T>> {
  /** Travel is met to this (mm). */
  private static final double CLOSE = 1e-10;

  /** Where rounding lets it come no nearer, this is met (mm). */
  private static final double CLOSE_ENOUGH = 1e-6;

  private static final int MOST_STEPS = 40;

  /** First and last step of the search that cannot overshoot (radians). */
  private static final double SMALL_STEP = 0.02;

  private static final double LEAST_STEP = 1e-13;

  /** An arm that stands steeper than this has passed its limit (radians): 80°. */
  private static final double STEEPEST = FastMath.toRadians(80);

  /** Half the step of the slope's central difference (radians): its error is of the square. */
  private static final double SLOPE_STEP = 1e-4;

  /** How finely a limit of travel is found (mm). */
  private static final double LIMIT_STEP = 0.01;

  private final Corner<T> linkage;
  private final Corner<Binary64> plain;
  private final T surveyedHeight;

  private WheelTravel(Corner<T> linkage, Corner<Binary64> plain, T height) {
    this.linkage = linkage;
    this.plain = plain;
    this.surveyedHeight = height;
  }

  /** Travel of a linkage; the same linkage in plain numbers finds the angle. */
  public static <T extends CalculusFieldElement<T>> WheelTravel<T> of(
      Corner<T> linkage, Corner<Binary64> plain) {
    return new WheelTravel<>(linkage, plain, linkage.surveyedWheel().getZ());
  }

  /** Travel of a linkage in plain numbers. */
  public static WheelTravel<Binary64> of(Corner<Binary64> linkage) {
    return of(linkage, linkage);
  }

  /** The linkage. */
  public Corner<T> linkage() {
    return linkage;
  }

  /**
   * The pose at a travel.
   *
   * @param travel rise of the wheel's center from where it was surveyed (mm)
   */
  public Posed<T> at(T travel, Heading<T> heading) {
    Heading<Binary64> plainHeading = plain(heading);
    double wanted = surveyedHeight.getReal() + travel.getReal();
    double angle = angle(wanted, plainHeading);
    if (Double.isNaN(angle)) {
      return new OutOfReach<>(limit(travel.getReal(), plainHeading));
    }
    Posed<T> near = linkage.pose(linkage.field().getZero().newInstance(angle), heading);
    if (!(near instanceof Pose<T> pose) || linkage.field().equals(Binary64Field.getInstance())) {
      return near;
    }
    double slope =
        (height(angle + SLOPE_STEP, plainHeading) - height(angle - SLOPE_STEP, plainHeading))
            / (2 * SLOPE_STEP);
    T off = pose.wheelCenter().getZ().subtract(surveyedHeight).subtract(travel);
    return linkage.pose(off.divide(-slope).add(angle), heading);
  }

  private Heading<Binary64> plain(Heading<T> heading) {
    if (heading instanceof Heading.ByTieRod<T> rod) {
      T length = rod.length();
      return new Heading.ByTieRod<>(
          new FieldVector3D<>(Binary64Field.getInstance(), rod.inner().toVector3D()),
          length == null ? null : new Binary64(length.getReal()));
    }
    return new Heading.Reset<>(new Binary64(((Heading.Reset<T>) heading).toe().getReal()));
  }

  /**
   * The lower arm's angle (radians) at which the wheel's center first has a height on its way from
   * where it was surveyed; NaN where none.
   */
  private double angle(double wanted, Heading<Binary64> heading) {
    double angle = bySecant(wanted, heading);
    return Double.isNaN(angle) ? bySmallSteps(wanted, heading) : angle;
  }

  /** By secant steps; NaN where they fail or come to a place where the wheel no longer rises. */
  private double bySecant(double wanted, Heading<Binary64> heading) {
    double angle = plain.surveyedAngle().getReal();
    double off = height(angle, heading) - wanted;
    double reach = plain.lower().radius().getReal();
    double next = angle - off / (reach * FastMath.max(0.3, FastMath.cos(angle)));
    double slope = reach;
    for (int step = 0; step < MOST_STEPS; step++) {
      double nextOff = height(next, heading) - wanted;
      if (Double.isNaN(nextOff)) {
        return Double.NaN;
      }
      if (FastMath.abs(nextOff) < CLOSE || next == angle) {
        return FastMath.abs(nextOff) < CLOSE_ENOUGH && slope > 0 ? next : Double.NaN;
      }
      double change = nextOff - off;
      if (FastMath.abs(change) > CLOSE_ENOUGH) {
        slope = change / (next - angle);
      }
      double secant = change == 0 ? next : next - nextOff * (next - angle) / change;
      angle = next;
      off = nextOff;
      next = secant;
    }
    return FastMath.abs(off) < CLOSE_ENOUGH && slope > 0 ? angle : Double.NaN;
  }

  /**
   * By small steps from where it was surveyed, halved before whatever the linkage cannot do: slow,
   * and never past the place where the wheel turns back.
   */
  private double bySmallSteps(double wanted, Heading<Binary64> heading) {
    double angle = plain.surveyedAngle().getReal();
    double height = height(angle, heading);
    double step = FastMath.copySign(SMALL_STEP, wanted - height);
    while (FastMath.abs(step) > LEAST_STEP) {
      double next = height(angle + step, heading);
      if (Double.isNaN(next) || (next - height) * step <= 0) {
        step /= 2;
      } else if ((next - wanted) * step >= 0) {
        if (FastMath.abs(next - wanted) < CLOSE) {
          return angle + step;
        }
        step /= 2;
      } else {
        angle += step;
        height = next;
      }
    }
    return FastMath.abs(height - wanted) < CLOSE_ENOUGH ? angle : Double.NaN;
  }

  private double height(double angle, Heading<Binary64> heading) {
    return FastMath.abs(angle) < STEEPEST
            && plain.pose(new Binary64(angle), heading) instanceof Pose<Binary64> pose
        ? pose.wheelCenter().getZ().getReal()
        : Double.NaN;
  }

  /** What stops the wheel on its way to a travel, and where. */
  private String limit(double travel, Heading<Binary64> heading) {
    double reached = 0;
    double beyond = travel;
    while (FastMath.abs(beyond - reached) > LIMIT_STEP) {
      double middle = (reached + beyond) / 2;
      if (Double.isNaN(angle(surveyedHeight.getReal() + middle, heading))) {
        beyond = middle;
      } else {
        reached = middle;
      }
    }
    double end = angle(surveyedHeight.getReal() + reached, heading);
    double further = end + FastMath.copySign(0.01, travel);
    String limit =
        plain.pose(new Binary64(further), heading) instanceof OutOfReach<Binary64> out
            ? out.limit()
            : "the lower arm passes its limit";
    return String.format(Locale.ROOT, "%s at %+.0f mm", limit, reached);
  }
}
