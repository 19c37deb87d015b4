package trammel.geometry;

import java.util.Optional;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.util.Binary64;
import org.jspecify.annotations.Nullable;

/**
 * How long a mount is, and its motion ratio, by how far the wheel's center has risen against the
 * body.
 *
 * <p>Both come of two poses in the corner's own numbers, which stand beside the one wanted with the
 * lower arm held at an angle. What any of the corner's numbers lifts the wheel by there is taken
 * back along the path, to first order: that carries their derivatives over, to some parts in a
 * million. Where derivatives are many, such poses are most of the work, and one more would be half
 * of it again.
 */
public final class MountPath<T extends CalculusFieldElement<T>> {
  /**
   * Half the turn over which the motion ratio is seen to change (radians): of a second difference
   * the error, of the square, and that of rounding, of the inverse square, are alike here.
   */
  private static final double WIDE_STEP = 3e-4;

  private final Corner<T> corner;
  private final Mount<T> mount;
  private final Corner<Binary64> plain;
  private final Mount<Binary64> plainMount;
  private final WheelTravel<Binary64> travel;

  private MountPath(Corner<T> corner, Mount<T> mount, Corner<Binary64> plain) {
    this.corner = corner;
    this.mount = mount;
    this.plain = plain;
    this.plainMount =
        new Mount<>(mount.carrier(), Corner.plain(mount.body()), Corner.plain(mount.along()));
    this.travel = WheelTravel.of(plain);
  }

  /**
   * The path of a mount.
   *
   * @param plain the same corner in plain numbers
   */
  public static <T extends CalculusFieldElement<T>> MountPath<T> of(
      Corner<T> corner, Mount<T> mount, Corner<Binary64> plain) {
    return new MountPath<>(corner, mount, plain);
  }

  /**
   * A mount at a travel.
   *
   * @param length of the mount (mm)
   * @param ratio how far it shortens for each millimeter that the wheel rises
   * @param ratioPerRise what the ratio grows by for each such millimeter (1/mm)
   */
  public record Place<T extends CalculusFieldElement<T>>(T length, T ratio, double ratioPerRise) {}

  /** Length and height in a pose. */
  private record Point<T extends CalculusFieldElement<T>>(T length, T height) {

    /** The motion ratio from here to another. */
    T ratio(Point<T> above) {
      return length.subtract(above.length).divide(above.height.subtract(height));
    }
  }

  /**
   * Where the mount is; nothing where the linkage does not reach that travel, or ends there.
   *
   * @param rise of the wheel's center from where it was surveyed (mm)
   */
  public Optional<Place<T>> at(double rise, Heading<T> heading) {
    Heading<Binary64> plainly = heading.plain();
    if (!(travel.at(new Binary64(rise), plainly) instanceof Pose<Binary64> pose)) {
      return Optional.empty();
    }
    double angle = pose.lowerAngle().getReal();
    Point<T> below = point(corner, mount, angle - MotionRatio.STEP, heading);
    Point<T> above = point(corner, mount, angle + MotionRatio.STEP, heading);
    if (below == null || above == null) {
      return Optional.empty();
    }
    T ratio = below.ratio(above);
    double perRise = ratioPerRise(pose, ratio.getReal(), plainly);
    if (Double.isNaN(perRise)) {
      return Optional.empty();
    }
    T over =
        middle(below.height, above.height).subtract(corner.surveyedWheel().getZ()).subtract(rise);
    return Optional.of(
        new Place<>(
            middle(below.length, above.length).add(over.multiply(ratio.getReal())),
            ratio.subtract(over.multiply(perRise)),
            perRise));
  }

  /**
   * What the ratio grows by from under a pose to over it; next to a limit from one side alone, and
   * not a number between two.
   */
  private double ratioPerRise(Pose<Binary64> pose, double ratio, Heading<Binary64> heading) {
    double angle = pose.lowerAngle().getReal();
    Point<Binary64> here = new Point<>(plainMount.length(plain, pose), pose.wheelCenter().getZ());
    Point<Binary64> below = point(plain, plainMount, angle - WIDE_STEP, heading);
    Point<Binary64> above = point(plain, plainMount, angle + WIDE_STEP, heading);
    double height = here.height.getReal();
    // A ratio between two heights is the one in their middle.
    double from = below == null ? height : (below.height.getReal() + height) / 2;
    double to = above == null ? height : (above.height.getReal() + height) / 2;
    double first = below == null ? ratio : below.ratio(here).getReal();
    double last = above == null ? ratio : here.ratio(above).getReal();
    return (last - first) / (to - from);
  }

  private static <S extends CalculusFieldElement<S>> @Nullable Point<S> point(
      Corner<S> corner, Mount<S> mount, double angle, Heading<S> heading) {
    return corner.pose(corner.field().getZero().newInstance(angle), heading) instanceof Pose<S> pose
        ? new Point<>(mount.length(corner, pose), pose.wheelCenter().getZ())
        : null;
  }

  private static <S extends CalculusFieldElement<S>> S middle(S one, S other) {
    return one.add(other).multiply(0.5);
  }
}
