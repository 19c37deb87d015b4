package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;
import org.jspecify.annotations.Nullable;
import trammel.catalog.AxleProfile;
import trammel.catalog.AxleProfile.Layout;
import trammel.catalog.Linkage.MountProfile;
import trammel.catalog.SurveyPoint;
import trammel.geometry.DoubleWishbone;
import trammel.geometry.HardPoint;
import trammel.geometry.HardPoints;
import trammel.geometry.Heading;
import trammel.geometry.MotionRatio;
import trammel.geometry.Mount;
import trammel.geometry.MountPath;
import trammel.geometry.Pose;
import trammel.geometry.WheelTravel;
import trammel.physics.SpringPath;
import trammel.quantity.Absence;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;

/**
 * How the seats of a spring part as the wheel hangs lower: from the hard points where corner and
 * spring are surveyed, else by one motion ratio. Travel is the rise of the wheel's center against
 * the body from book height (mm). A replacement upper arm is taken to lead the wheel as the book's.
 */
final class SpringTravel {
  private static final Formula SEATS =
      new Formula(
          "room for the spring", "room at book height − motion ratio · travel", "definition");
  private static final Heading<Binary64> STRAIGHT = new Heading.Reset<>(new Binary64(0));

  private final AxleProfile axle;

  /** Where the spring is fixed; null where corner or spring are not surveyed. */
  private final @Nullable MountProfile mount;

  private final Once<SpringSurvey> survey = new Once<>(this::survey);

  SpringTravel(AxleProfile axle) {
    this.axle = axle;
    this.mount = surveyed(axle) ? axle.linkage().spring() : null;
  }

  private static boolean surveyed(AxleProfile axle) {
    MountProfile mount = axle.linkage().spring();
    return axle.layout() == Layout.DOUBLE_WISHBONE
        && mount != null
        && SurveyedShape.known(mount.body())
        && SurveyedShape.known(mount.moving())
        && axle.alignment().asSurveyed().camber().isKnown()
        && axle.alignment().asSurveyed().toe().isKnown()
        && jointsKnown(axle);
  }

  private static boolean jointsKnown(AxleProfile axle) {
    for (HardPoint joint : HardPoint.ofWishbones()) {
      SurveyPoint point = axle.linkage().points().get(joint);
      if (point == null || !SurveyedShape.known(point)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Where the seats are at a travel.
   *
   * @param seats distance of the seats, with whatever lies between them (mm)
   * @param ratio spring travel over wheel travel there
   */
  record Stand(Quantity seats, Quantity ratio) {}

  /** Whether corner and spring are surveyed. */
  boolean surveyed() {
    return mount != null;
  }

  /** Where the seats are at a travel, with the travel's own uncertainty. */
  Stand at(Quantity travel) {
    return surveyed() && travel.isKnown() ? byPoints(travel) : byRatio(travel);
  }

  private Stand byRatio(Quantity travel) {
    Quantity ratio = axle.springMotionRatio();
    Quantity atBook = axle.support().springLength();
    double r = number(ratio);
    double z = number(travel);
    return new Stand(
        SEATS.of(LENGTH, number(atBook) - r * z, new double[] {1, -z, -r}, atBook, ratio, travel),
        ratio);
  }

  private Stand byPoints(Quantity travel) {
    Quantity seats = axle.support().springLength();
    return seats.isKnown() ? survey.get().at(travel) : absent(Variables.absence(seats));
  }

  private SpringSurvey survey() {
    MountProfile fixed = Objects.requireNonNull(mount, "the spring is not surveyed");
    DoubleWishbone<Binary64> corner = plainCorner();
    return new SpringSurvey(axle, fixed, MountPath.of(corner, spring(corner, fixed), 0));
  }

  private static Mount<Binary64> spring(DoubleWishbone<Binary64> corner, MountProfile mount) {
    return Mount.of(
        corner,
        mount.on(),
        plain(SurveyedShape.vector(mount.body())),
        plain(SurveyedShape.vector(mount.moving())));
  }

  static Stand absent(Absence absence) {
    return new Stand(Quantity.absent(LENGTH, absence), Quantity.absent(RATIO, absence));
  }

  /** The same in plain numbers; only where all that {@link #needed} lists is known. */
  SpringPath path() {
    if (mount == null) {
      return new SpringPath.Constant(
          axle.support().springLength().value(), axle.springMotionRatio().value());
    }
    DoubleWishbone<Binary64> corner = plainCorner();
    Mount<Binary64> spring = spring(corner, mount);
    double book = spring.length(corner, corner.asSurveyed()).getReal();
    double seats = axle.support().springLength().value();
    MotionRatio<Binary64> ratios = MotionRatio.of(corner, spring);
    WheelTravel<Binary64> travel = WheelTravel.of(corner);
    return new SpringPath() {
      @Override
      public double seatDistance(double z) {
        return seats + spring.length(corner, pose(travel, z)).getReal() - book;
      }

      @Override
      public double ratio(double z) {
        return ratios.at(pose(travel, z), STRAIGHT).getReal();
      }
    };
  }

  /** What the path needs. */
  List<Quantity> needed() {
    return surveyed()
        ? List.of(axle.support().springLength())
        : List.of(axle.support().springLength(), axle.springMotionRatio());
  }

  private static Pose<Binary64> pose(WheelTravel<Binary64> travel, double z) {
    if (travel.at(new Binary64(z), STRAIGHT) instanceof Pose<Binary64> pose) {
      return pose;
    }
    throw new IllegalArgumentException("the linkage does not reach a travel of " + z + " mm");
  }

  private DoubleWishbone<Binary64> plainCorner() {
    Map<HardPoint, Vector3D> points = new EnumMap<>(HardPoint.class);
    for (HardPoint joint : HardPoint.ofWishbones()) {
      points.put(joint, SurveyedShape.vector(axle.linkage().points().get(joint)));
    }
    return DoubleWishbone.of(
        HardPoints.of(
            points,
            axle.alignment().asSurveyed().camber().value(),
            axle.alignment().asSurveyed().toe().value()));
  }

  private static FieldVector3D<Binary64> plain(Vector3D vector) {
    return new FieldVector3D<>(Binary64Field.getInstance(), vector);
  }

  private static double number(Quantity quantity) {
    return quantity.isKnown() ? quantity.value() : Double.NaN;
  }
}
