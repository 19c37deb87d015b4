package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import trammel.catalog.AxleProfile;
import trammel.catalog.Linkage.MountProfile;
import trammel.catalog.SurveyPoint;
import trammel.geometry.ByPlace;
import trammel.geometry.HardPoint;
import trammel.geometry.MountPath;
import trammel.quantity.Absence;
import trammel.quantity.Basis;
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

  /**
   * Names of the coordinates of all places, in the order in which these are added, before anything
   * else: made once, since every sheet asks for them.
   */
  private static final List<String> COORDINATES =
      Stream.concat(
              ByPlace.JOINTS.stream().map(HardPoint::words),
              Stream.of("spring on the body", "spring on the arm"))
          .flatMap(place -> Stream.of(place + ", fore", place + ", out", place + ", up"))
          .toList();

  /** What was surveyed: places by their three coordinates, then angles and the seats' distance. */
  private final Basis surveyed;

  private final MountPath path;

  /** Length of the mount as surveyed (mm). */
  private final double mounted;

  /** What that length grows by with the places of its ends. */
  private final ByPlace mountedBy;

  private final double seats;
  private final Latest<Double, Optional<Room>> worked = new Latest<>();

  /** What a travel brings, as though it were known exactly, and what more travel makes of it. */
  private record Room(Quantity seats, Quantity ratio, double ratioPerRise) {}

  /** Of an axle whose hard points, angles and mount are all known. */
  SpringSurvey(AxleProfile axle, MountProfile mount, MountPath path) {
    List<Quantity> surveyed = new ArrayList<>(ByPlace.COUNT + 1);
    for (HardPoint joint : ByPlace.JOINTS) {
      add(surveyed, axle.linkage().points().get(joint));
    }
    add(surveyed, mount.body());
    add(surveyed, mount.moving());
    surveyed.add(axle.alignment().asSurveyed().camber());
    surveyed.add(axle.alignment().asSurveyed().toe());
    surveyed.add(axle.support().springLength());
    this.surveyed = new Basis(surveyed.toArray(Quantity[]::new));
    this.path = path;
    Vector3D along =
        SurveyedShape.vector(mount.moving()).subtract(SurveyedShape.vector(mount.body()));
    this.mounted = along.getNorm();
    Vector3D unit = along.scalarMultiply(1 / mounted);
    this.mountedBy = ByPlace.ofMount(unit.negate(), unit);
    this.seats = axle.support().springLength().value();
  }

  private static void add(List<Quantity> surveyed, SurveyPoint point) {
    for (Quantity coordinate : List.of(point.fore(), point.out(), point.up())) {
      surveyed.add(coordinate.called(COORDINATES.get(surveyed.size())));
    }
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

  private Optional<Room> room(double rise) {
    return path.at(rise).map(this::room);
  }

  /** The seats are as much nearer to each other as the mount is shorter than it was surveyed. */
  private Room room(MountPath.Place place) {
    return new Room(
        surveyed.derive(
            BY_POINTS,
            LENGTH,
            seats + place.length() - mounted,
            partials(place.lengthBy().plus(-1, mountedBy), 1)),
        surveyed.derive(RATIO_BY_POINTS, RATIO, place.ratio(), partials(place.ratioBy(), 0)),
        place.ratioPerRise());
  }

  /** In the order of what was surveyed. */
  private static double[] partials(ByPlace by, double seats) {
    double[] partials = by.slopes(1);
    partials[ByPlace.COUNT] = seats;
    return partials;
  }
}
