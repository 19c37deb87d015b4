package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Both axles of a 4x4 truck with double wishbones: points from a multibody library's vehicle data
 * files, sensitivities to shims from the maker's manuals TM 9-2320-280-34, table 20-3, and TM
 * 9-2320-387-24-2, tables 34-1 and 34-2. Points and sensitivities come from unrelated sources.
 *
 * <p>The arm followed: a shim moves its pivot alone, 3.05 mm outboard, both legs of the upper arm
 * keep their length, and the ball joint goes where they meet. The lower arm stays, toe is reset.
 */
class TruckWishbonesTest {
  private static final String FILE = "truck-wishbones.csv";
  private static final double SHIM = 3.05;

  private static HardPoints<Binary64> points(String axle) {
    return PublishedCorner.of(FILE, "point," + axle).hardPoints(0, 0);
  }

  private static Pose<Binary64> pose(
      DoubleWishbone<Binary64> linkage, double travel, Heading<Binary64> heading) {
    if (WheelTravel.of(linkage).at(new Binary64(travel), heading) instanceof Pose<Binary64> pose) {
      return pose;
    }
    throw new AssertionError("out of reach at " + travel);
  }

  static Stream<String[]> shims() {
    return PublishedCorner.rows(FILE, "shim").stream();
  }

  @ParameterizedTest
  @MethodSource("shims")
  void shimsTurnTheWheelAsTheManualSays(String axle, String bracket, double camber, double caster) {
    HardPoints<Binary64> points = points(axle);
    FieldVector3D<Binary64> outboard =
        new FieldVector3D<>(Binary64Field.getInstance(), new Vector3D(0, SHIM, 0));
    Map<HardPoint, FieldVector3D<Binary64>> shifts = new EnumMap<>(HardPoint.class);
    if (!bracket.equals("rear")) {
      shifts.put(HardPoint.UPPER_FRONT_PIVOT, outboard);
    }
    if (!bracket.equals("front")) {
      shifts.put(HardPoint.UPPER_REAR_PIVOT, outboard);
    }
    Heading<Binary64> reset = new Heading.Reset<>(new Binary64(0));
    Pose<Binary64> before = pose(DoubleWishbone.of(points), 0, reset);
    Pose<Binary64> after = pose(DoubleWishbone.of(points, shifts), 0, reset);
    assertThat(after.camber().subtract(before.camber()).getReal()).isCloseTo(camber, within(0.1));
    assertThat(after.caster().subtract(before.caster()).getReal()).isCloseTo(caster, within(0.1));
    assertThat(after.toe().getReal()).isCloseTo(0, within(1e-9));
  }

  static Stream<String[]> statics() {
    return Stream.concat(
        PublishedCorner.rows(FILE, "static").stream().map(row -> with(FILE, row)),
        PublishedCorner.rows("published-corners.csv", "static").stream()
            .map(row -> with("published-corners.csv", row)));
  }

  private static String[] with(String file, String[] row) {
    return new String[] {file, row[0], row[1], row[2]};
  }

  /** Own derivation, independent solution: the axis through the ball joints as surveyed. */
  @ParameterizedTest
  @MethodSource("statics")
  void surveyedAxisLeansAsWorkedOut(String file, String corner, double caster, double inclination) {
    DoubleWishbone<Binary64> linkage =
        DoubleWishbone.of(PublishedCorner.of(file, "point," + corner).hardPoints(0, 0));
    Pose<Binary64> pose = pose(linkage, 0, new Heading.ByTieRod<>(linkage.tieRodInner()));
    assertThat(pose.caster().getReal()).isCloseTo(caster, within(0.005));
    assertThat(pose.kingpinInclination().getReal()).isCloseTo(inclination, within(0.005));
  }

  static Stream<String[]> curve() {
    return PublishedCorner.rows(FILE, "curve").stream();
  }

  /** Own derivation, independent solution: wheel-center travel, tie rod unchanged. */
  @ParameterizedTest
  @MethodSource("curve")
  void curvesAreThoseOfAnotherProgram(
      String axle, double travel, double camber, double toe, double caster) {
    DoubleWishbone<Binary64> linkage = DoubleWishbone.of(points(axle));
    Pose<Binary64> pose = pose(linkage, travel, new Heading.ByTieRod<>(linkage.tieRodInner()));
    assertThat(pose.camber().getReal()).isCloseTo(camber, within(0.0006));
    assertThat(pose.toe().getReal()).isCloseTo(toe, within(0.0006));
    assertThat(pose.caster().getReal()).isCloseTo(caster, within(0.0006));
  }
}
