package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.catalog.AlignmentSpec.Angles;
import trammel.catalog.AxleProfile;
import trammel.catalog.CatalogFiles;
import trammel.derive.Predictions;
import trammel.quantity.Absence;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;

/** Toe that is foretold of a finished vehicle, and the other angles where nothing was turned. */
class PredictedAnglesTest {
  private static final Path DEMO = Path.of("catalog-demo");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @TempDir private Path folder;

  private Build build(String vehicle, String text) throws IOException {
    Path sheet =
        Files.writeString(
            folder.resolve("toe.build.yaml"),
            "build: b\ncatalog: "
                + DEMO.toAbsolutePath()
                + "\nvehicle: "
                + vehicle
                + "\nchanges:\n"
                + text);
    return BuildFiles.read(sheet, CatalogFiles.read(DEMO));
  }

  private static Build raised(PredictedAnglesTest test, double lift, String more)
      throws IOException {
    return test.build("skerrow", "  - { raise: " + lift + " mm ± 4 mm, at: front }\n" + more);
  }

  private static HardPoints<Binary64> surveyed(AxleProfile profile) {
    Map<HardPoint, Vector3D> points = new EnumMap<>(HardPoint.class);
    profile
        .linkage()
        .points()
        .forEach(
            (name, at) ->
                points.put(
                    name, new Vector3D(at.fore().value(), at.out().value(), at.up().value())));
    Angles shown = profile.alignment().asSurveyed();
    return HardPoints.of(points, shown.camber().value(), shown.toe().value());
  }

  private static String why(Quantity toe) {
    Absence absence = toe.absence();
    return absence == null ? "foretold" : absence.reason();
  }

  /**
   * Against least squares on the distances alone: tie rod, arms and upright keep their lengths
   * while the wheel goes down by the lift (own derivation).
   */
  @ParameterizedTest
  @ValueSource(doubles = {10, 30, 45})
  void bumpSteerIsWhatTheDistancesAloneGive(double lift) throws IOException {
    Build build = raised(this, lift, "");
    AxleProfile profile = build.vehicle().axle(Axle.FRONT);
    Angles shown = profile.alignment().asSurveyed();
    Vector3D[] solved = DistanceSolver.wishbones(surveyed(profile), -lift, Vector3D.ZERO);
    Vector3D spindle = solved[4].subtract(solved[3]);
    double toe = Math.toDegrees(Math.atan2(spindle.getX(), spindle.getY()));
    Predictions predictions = Predictions.of(build, DAY);
    assertThat(toe - shown.toe().value()).isGreaterThan(0.005);
    for (Position wheel : Position.of(Axle.FRONT)) {
      assertThat(predictions.toe(wheel, false).value()).isCloseTo(toe, within(1e-6));
    }
  }

  /**
   * The same solver's camber and caster: the wheel stands at the toe that bump steer has left it.
   * Another toe has another camber.
   */
  @ParameterizedTest
  @ValueSource(doubles = {10, 30, 45})
  void camberAndCasterAreThoseOfThatToe(double lift) throws IOException {
    Build build = raised(this, lift, "");
    AxleProfile profile = build.vehicle().axle(Axle.FRONT);
    Angles shown = profile.alignment().asSurveyed();
    HardPoints<Binary64> points = surveyed(profile);
    Vector3D[] before = DistanceSolver.wishbones(points, 0, Vector3D.ZERO);
    Vector3D[] after = DistanceSolver.wishbones(points, -lift, Vector3D.ZERO);
    Vector3D[] reset = DistanceSolver.wishbones(points, -lift, Vector3D.PLUS_J);
    double camber = shown.camber().value() + camber(after) - camber(before);
    double caster = shown.caster().value() + caster(after) - caster(before);
    assertThat(Math.abs(camber(reset) - camber(after))).isGreaterThan(1e-3);
    Predictions predictions = Predictions.of(build, DAY);
    for (Position wheel : Position.of(Axle.FRONT)) {
      assertThat(predictions.camber(wheel, false).value()).isCloseTo(camber, within(1e-6));
      assertThat(predictions.caster(wheel, false).value()).isCloseTo(caster, within(1e-6));
    }
  }

  /** Top outward, from the spindle (the design's definition). */
  private static double camber(Vector3D[] solved) {
    return Math.toDegrees(Math.asin(-solved[4].subtract(solved[3]).normalize().getZ()));
  }

  /** Top rearward, from the ball joints in side view. */
  private static double caster(Vector3D[] solved) {
    Vector3D axis = solved[1].subtract(solved[0]);
    return Math.toDegrees(Math.atan2(-axis.getX(), axis.getZ()));
  }

  /** Nothing moved and nothing turned: the rack shows again what it showed, far from any window. */
  @ParameterizedTest
  @CsvSource({"0.08, 0", "0.9, 0", "-0.7, 0", "0.9, 8", "-0.7, -8"})
  void withoutAChangeOfHeightAllThreeAreAsTheyWere(double toe, double off) throws IOException {
    String angles = "camber: 0.55°, caster: 2.6°, toe: " + toe + "°";
    String height = "height: " + (512 + off) + " mm";
    String found =
        "measurements:\n  heights:\n    - { at: front-left, %s, state: as-found }\n"
                .formatted(height)
            + "  alignment:\n    - { at: front-left, %s, %s, state: as-found }\n"
                .formatted(height, angles);
    Predictions predictions =
        Predictions.of(build("skerrow", "  - { raise: 10 mm, at: rear }\n" + found), DAY);
    Position wheel = Position.FRONT_LEFT;
    assertThat(predictions.lift(wheel).value()).isZero();
    assertThat(predictions.camber(wheel, false).value()).isCloseTo(0.55, within(1e-9));
    assertThat(predictions.caster(wheel, false).value()).isCloseTo(2.6, within(1e-9));
    assertThat(predictions.toe(wheel, false).value()).isCloseTo(toe, within(1e-9));
  }

  /** What the rack showed as found is carried on, and its ± with it; own derivation. */
  @Test
  void whatTheRackShowedBeforeIsCarriedOn() throws IOException {
    String rack =
        """
        measurements:
          heights:
            - { at: front-left, height: 512 mm, state: as-found }
          alignment:
            - { at: front-left, height: 512 mm, camber: 0.15°, caster: 3°, toe: 0.38° ± 0.3°, state: as-found }
        """;
    double without =
        Predictions.of(raised(this, 30, ""), DAY).toe(Position.FRONT_LEFT, false).value();
    Quantity with = Predictions.of(raised(this, 30, rack), DAY).toe(Position.FRONT_LEFT, false);
    assertThat(with.value()).isCloseTo(without + 0.3, within(0.01));
    assertThat(with.expanded()).isBetween(0.3, 0.45);
  }

  /** The demo's window is 0 to 0.16°, 0.08° preferred. */
  @Test
  void setAnewItIsTheMakersWithinHisWindow() throws IOException {
    Quantity toe = Predictions.of(raised(this, 30, ""), DAY).toe(Position.FRONT_RIGHT, true);
    assertThat(toe.value()).isCloseTo(0.08, within(1e-12));
    assertThat(toe.expanded()).isCloseTo(0.08, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "cairnback, front-left, true, names no toe to set",
    "cairnback, front-left, false, from hard points alone",
    "cairnback, rear-left, false, the rack showed of this beam axle",
    "cairnback, rear-left, true, the rack showed of this beam axle"
  })
  void whereNothingForetellsItThatIsSaid(
      String vehicle, String wheel, boolean adjusted, String said) throws IOException {
    Build build = build(vehicle, "  - { add: LT-CB-F30, at: front }\n");
    Position position =
        Position.running().stream()
            .filter(p -> p.toString().equals(wheel))
            .findFirst()
            .orElseThrow();
    assertThat(why(Predictions.of(build, DAY).toe(position, adjusted))).contains(said);
  }
}
