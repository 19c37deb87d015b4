package trammel.geometry;

import java.util.Locale;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;
import org.hipparchus.util.FastMath;
import org.jspecify.annotations.Nullable;

/**
 * Poses of a corner by how far its wheel's center has risen against the body, rather than by the
 * lower arm's angle. A suspension lift of d is a travel of −d.
 *
 * <p>The angle is found by secant steps in plain numbers on the closed form, or by small ones where
 * those lead past a limit. Where derivatives are wanted, the pose at that angle is worked out in
 * the field's own elements, and moved to the height wanted along what a turn of the arm does to it:
 * that carries the first ones over, to some parts in a billion.
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

  private static final double STEEPEST_SINE = FastMath.sin(STEEPEST);

  /** Half the step of the slope's central difference (radians): its error is of the square. */
  private static final double SLOPE_STEP = 1e-4;

  /**
   * A turn of the lower arm (radians) within which no linkage of a vehicle has been seen to gap.
   */
  static final double FAR = 0.35;

  /** Poses looked at in each such turn beyond the first. */
  private static final int FINELY = 12;

  /** How finely a limit of travel is found (mm). */
  private static final double LIMIT_STEP = 0.01;

  private final Corner<T> linkage;
  private final Corner<Binary64> plain;
  private final T surveyedHeight;
  private final double start;

  /**
   * What a turn of the lower arm raises the wheel by at the start (mm per radian); NaN: unknown.
   */
  private final double startSlope;

  private WheelTravel(Corner<T> linkage, Corner<Binary64> plain, double start, double startSlope) {
    this.linkage = linkage;
    this.plain = plain;
    this.surveyedHeight = linkage.surveyedWheel().getZ();
    this.start = start;
    this.startSlope = startSlope;
  }

  /** Travel of a linkage; the same linkage in plain numbers finds the angle. */
  public static <T extends CalculusFieldElement<T>> WheelTravel<T> of(
      Corner<T> linkage, Corner<Binary64> plain) {
    return new WheelTravel<>(linkage, plain, plain.surveyedAngle().getReal(), Double.NaN);
  }

  /** The same, where the lower arm is known to stand near an angle (radians): quicker. */
  public WheelTravel<T> near(double angle) {
    return near(angle, Double.NaN);
  }

  /**
   * The same, where it is also known what a turn of the arm raises the wheel by there: quicker
   * still.
   *
   * @param slope mm per radian, about; NaN where it is not known
   */
  public WheelTravel<T> near(double angle, double slope) {
    return new WheelTravel<>(linkage, plain, angle, slope);
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
    Heading<Binary64> plainHeading = heading.plain();
    double wanted = surveyedHeight.getReal() + travel.getReal();
    Pose<Binary64> found = find(wanted, plainHeading);
    if (found == null) {
      return new OutOfReach<>(limit(travel.getReal(), plainHeading));
    }
    if (linkage.field().equals(Binary64Field.getInstance())) {
      @SuppressWarnings("unchecked") // T is what its field says
      Posed<T> plainly = (Posed<T>) found;
      return plainly;
    }
    double angle = found.lowerAngle().getReal();
    Posed<T> near = linkage.pose(linkage.field().getZero().newInstance(angle), heading);
    if (!(near instanceof Pose<T> pose)) {
      return near;
    }
    Pose<Binary64> below = pose(angle - SLOPE_STEP, plainHeading);
    Pose<Binary64> above = pose(angle + SLOPE_STEP, plainHeading);
    if (below == null || above == null) {
      return new OutOfReach<>(limit(travel.getReal(), plainHeading));
    }
    T off = pose.wheelCenter().getZ().subtract(surveyedHeight).subtract(travel);
    double slope = (height(above) - height(below)) / (2 * SLOPE_STEP);
    return pose.turned(off.divide(-slope), below, above);
  }

  /**
   * The pose in which the wheel's center first has a height on its way from where it was surveyed;
   * null where none.
   */
  private @Nullable Pose<Binary64> find(double wanted, Heading<Binary64> heading) {
    Pose<Binary64> found = bySecant(wanted, heading);
    return found == null || !wayIsOpen(found, heading) ? bySmallSteps(wanted, heading) : found;
  }

  /**
   * Whether nothing stands between where it was surveyed and a pose that secant steps have leapt
   * to: far out, a linkage can have a stretch that it cannot pass, and a reach behind it.
   */
  private boolean wayIsOpen(Pose<Binary64> found, Heading<Binary64> heading) {
    double surveyed = plain.surveyedAngle().getReal();
    double way = found.lowerAngle().getReal() - surveyed;
    int steps = (int) (FastMath.abs(way) / FAR);
    for (int step = 1; step <= steps * FINELY; step++) {
      if (pose(surveyed + way * step / (steps * FINELY + 1), heading) == null) {
        return false;
      }
    }
    return true;
  }

  /** By secant steps; null where they fail or come to a place where the wheel no longer rises. */
  private @Nullable Pose<Binary64> bySecant(double wanted, Heading<Binary64> heading) {
    double angle = start;
    Pose<Binary64> pose = pose(angle, heading);
    if (pose == null) {
      return null;
    }
    double off = height(pose) - wanted;
    if (FastMath.abs(off) < CLOSE) {
      return pose;
    }
    double reach = plain.lower().radius().getReal();
    double next = startSlope > 0 ? angle - off / startSlope : asThoughOnTheArm(angle, off / reach);
    double slope = reach;
    for (int step = 0; step < MOST_STEPS; step++) {
      Pose<Binary64> nextPose = pose(next, heading);
      if (nextPose == null) {
        return null;
      }
      double nextOff = height(nextPose) - wanted;
      if (FastMath.abs(nextOff) < CLOSE || next == angle) {
        return FastMath.abs(nextOff) < CLOSE_ENOUGH && slope > 0 ? nextPose : null;
      }
      double change = nextOff - off;
      if (FastMath.abs(change) > CLOSE_ENOUGH) {
        slope = change / (next - angle);
        if (FastMath.abs(nextOff * (next - angle)) < CLOSE) {
          // What is left is gone along the secant: it misses by no more than this product, or so.
          return slope > 0 ? nextPose.turned(new Binary64(-nextOff / slope), pose, nextPose) : null;
        }
      }
      double secant = change == 0 ? next : next - nextOff * (next - angle) / change;
      angle = next;
      pose = nextPose;
      off = nextOff;
      next = secant;
    }
    return FastMath.abs(off) < CLOSE_ENOUGH && slope > 0 ? pose : null;
  }

  /**
   * Where the lower arm would stand (radians above level) if the wheel's center were on it: mostly
   * it nearly is.
   *
   * @param angle where it stands now
   * @param lower how far it is to sink, as a share of the arm's radius
   */
  private static double asThoughOnTheArm(double angle, double lower) {
    double sine = FastMath.sin(angle) - lower;
    return FastMath.abs(sine) < STEEPEST_SINE
        ? FastMath.asin(sine)
        : angle - lower / FastMath.max(0.3, FastMath.cos(angle));
  }

  /**
   * By small steps from where it was surveyed, halved before whatever the linkage cannot do: slow,
   * and never past the place where the wheel turns back.
   */
  private @Nullable Pose<Binary64> bySmallSteps(double wanted, Heading<Binary64> heading) {
    double angle = plain.surveyedAngle().getReal();
    Pose<Binary64> pose = pose(angle, heading);
    if (pose == null) {
      return null;
    }
    double step = FastMath.copySign(SMALL_STEP, wanted - height(pose));
    while (FastMath.abs(step) > LEAST_STEP) {
      Pose<Binary64> next = pose(angle + step, heading);
      if (next == null || (height(next) - height(pose)) * step <= 0) {
        step /= 2;
      } else if ((height(next) - wanted) * step >= 0) {
        if (FastMath.abs(height(next) - wanted) < CLOSE) {
          return next;
        }
        step /= 2;
      } else {
        angle += step;
        pose = next;
      }
    }
    return FastMath.abs(height(pose) - wanted) < CLOSE_ENOUGH ? pose : null;
  }

  /** The pose at an angle (radians); null out of reach. */
  private @Nullable Pose<Binary64> pose(double angle, Heading<Binary64> heading) {
    return FastMath.abs(angle) < STEEPEST
            && plain.pose(new Binary64(angle), heading) instanceof Pose<Binary64> pose
        ? pose
        : null;
  }

  private static double height(Pose<Binary64> pose) {
    return pose.wheelCenter().getZ().getReal();
  }

  /** What stops the wheel on its way to a travel, and where. */
  private String limit(double travel, Heading<Binary64> heading) {
    double reached = 0;
    double beyond = travel;
    while (FastMath.abs(beyond - reached) > LIMIT_STEP) {
      double middle = (reached + beyond) / 2;
      if (find(surveyedHeight.getReal() + middle, heading) == null) {
        beyond = middle;
      } else {
        reached = middle;
      }
    }
    Pose<Binary64> last = find(surveyedHeight.getReal() + reached, heading);
    double end = last == null ? Double.NaN : last.lowerAngle().getReal();
    double further = end + FastMath.copySign(0.01, travel);
    String limit =
        plain.pose(new Binary64(further), heading) instanceof OutOfReach<Binary64> out
            ? out.limit()
            : "the lower arm passes its limit";
    return String.format(Locale.ROOT, "%s at %+.0f mm", limit, reached);
  }
}
