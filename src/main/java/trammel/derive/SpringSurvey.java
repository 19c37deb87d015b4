package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.Binary64;
import trammel.catalog.AxleProfile;
import trammel.catalog.Linkage.MountProfile;
import trammel.catalog.SurveyPoint;
import trammel.geometry.DoubleWishbone;
import trammel.geometry.HardPoint;
import trammel.geometry.HardPoints;
import trammel.geometry.Heading;
import trammel.geometry.Mount;
import trammel.geometry.MountPath;
import trammel.quantity.Absence;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;

/**
 * A surveyed corner and its spring, with the derivatives by every point that was surveyed: set up
 * once, and each travel worked out once, whoever asks for it.
 */
final class SpringSurvey {
  private static final Formula AT_TRAVEL =
      new Formula(
          "room for the spring",
          "by the hard points, at the wheel's travel",
          "closed form of the linkage");
  private static final Formula RATIO_AT_TRAVEL =
      new Formula(
          "motion ratio of the spring",
          "by the hard points, at the wheel's travel",
          "closed form of the linkage");
  private static final Formula BY_POINTS =
      new Formula(
          "room for the spring at exactly this travel",
          "by the hard points of corner and spring",
          "closed form of the linkage");
  private static final Formula RATIO_BY_POINTS =
      new Formula(
          "motion ratio of the spring at exactly this travel",
          "by the hard points of corner and spring",
          "closed form of the linkage");

  /** With the toe set again at every height the wheel stands alike, wherever its tie rod is. */
  private static final Set<HardPoint> TIE_ROD =
      EnumSet.of(HardPoint.TIE_ROD_INNER, HardPoint.TIE_ROD_OUTER);

  private final Variables variables;
  private final MountPath<Gradient> path;

  /** Seats' distance less the length of the spring's mount, as surveyed. */
  private final Gradient beyond;

  private final Heading<Gradient> straight;
  private final Latest<Double, Optional<Room>> worked = new Latest<>();

  /** What a travel brings, as though it were known exactly, and what more travel makes of it. */
  private record Room(Quantity seats, Quantity ratio, double ratioPerRise) {}

  /** Of an axle whose hard points, angles and mount are all known. */
  SpringSurvey(AxleProfile axle, MountProfile mount, DoubleWishbone<Binary64> plain) {
    Variables.Collector collector = new Variables.Collector();
    Map<HardPoint, int[]> points = new EnumMap<>(HardPoint.class);
    axle.linkage()
        .points()
        .forEach(
            (point, at) -> {
              if (!TIE_ROD.contains(point)) {
                points.put(point, collector.add(at, point.words()));
              }
            });
    int camber = collector.add(axle.alignment().asSurveyed().camber());
    int toe = collector.add(axle.alignment().asSurveyed().toe());
    int[] body = collector.add(mount.body(), "spring on the body");
    int[] moving = collector.add(mount.moving(), "spring on the arm");
    int seats = collector.add(axle.support().springLength());
    variables = collector.all();
    Map<HardPoint, FieldVector3D<Gradient>> at = new EnumMap<>(HardPoint.class);
    points.forEach((point, index) -> at.put(point, variables.point(index)));
    TIE_ROD.forEach(point -> at.put(point, constant(axle.linkage().points(), point)));
    DoubleWishbone<Gradient> corner =
        DoubleWishbone.of(
            new HardPoints<>(at, variables.variable(camber), variables.variable(toe)), Map.of());
    FieldVector3D<Gradient> upper = variables.point(body);
    FieldVector3D<Gradient> lower = variables.point(moving);
    Mount<Gradient> spring = Mount.of(corner, mount.on(), upper, lower);
    path = MountPath.of(corner, spring, plain);
    beyond = variables.variable(seats).subtract(lower.subtract(upper).getNorm());
    straight = new Heading.Reset<>(variables.constant(0));
  }

  /** Where the seats are at a known travel, with the travel's own uncertainty. */
  SpringTravel.Stand at(Quantity travel) {
    Optional<Room> found = worked.get(travel.value(), () -> room(travel.value()));
    if (found.isEmpty()) {
      return SpringTravel.absent(
          new Absence(
              "room for the spring",
              "the linkage does not reach this height",
              Instrument.READ,
              "raise it less"));
    }
    Room room = found.get();
    double ratio = room.ratio.value();
    return new SpringTravel.Stand(
        AT_TRAVEL.of(LENGTH, room.seats.value(), new double[] {1, -ratio}, room.seats, travel),
        RATIO_AT_TRAVEL.of(RATIO, ratio, new double[] {1, room.ratioPerRise}, room.ratio, travel));
  }

  private FieldVector3D<Gradient> constant(Map<HardPoint, SurveyPoint> points, HardPoint point) {
    return new FieldVector3D<>(
        variables.constant(0).getField(), SurveyedShape.vector(points.get(point)));
  }

  private Optional<Room> room(double rise) {
    return path.at(rise, straight)
        .map(
            place ->
                new Room(
                    variables.quantity(BY_POINTS, LENGTH, beyond.add(place.length())),
                    variables.quantity(RATIO_BY_POINTS, RATIO, place.ratio()),
                    place.ratioPerRise()))
        .filter(room -> room.seats.isKnown() && room.ratio.isKnown());
  }
}
