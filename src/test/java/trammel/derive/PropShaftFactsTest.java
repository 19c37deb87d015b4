package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trammel.derive.DemoSheet.DAY;
import static trammel.derive.DemoSheet.facts;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.build.Build;
import trammel.fact.PropShaft;
import trammel.subject.Position;

/** The Stonecrop's shafts at a lift, against a computation of their own from the profile's data. */
class PropShaftFactsTest {
  @TempDir private Path folder;

  private static PropShaft shaft(Build build, String name) {
    return facts(build, PropShaft.class).stream()
        .filter(shaft -> shaft.shaft().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static double angle(Vector3D one, Vector3D other) {
    return Math.toDegrees(Vector3D.angle(one, other));
  }

  private static Vector3D flange(double slope) {
    return new Vector3D(Math.cos(Math.toRadians(slope)), 0, Math.sin(Math.toRadians(slope)));
  }

  /** A spacer of 70 mm at a motion ratio of 0.92 (own derivation: thickness / ratio). */
  @Test
  void theShortRearShaftsAnglesAreThoseOfItsFlanges() {
    Build build = DemoSheet.demo("stonecrop-steep-shaft");
    double lift = 70 / 0.92;
    SideViewNewton.Moved moved = SideViewNewton.STONECROP_REAR.at(lift);
    Vector3D output = new Vector3D(1180, -30, 470);
    Vector3D pinion = moved.at(new Vector3D(235, -20, 392));
    Vector3D along = output.subtract(pinion);
    double atOutput = angle(along, flange(3.6));
    double atPinion = angle(along, flange(3.4 + Math.toDegrees(moved.turn())));
    PropShaft shaft = shaft(build, "rear shaft");
    assertThat(atPinion).isGreaterThan(3);
    assertThat(shaft.outputAngle().value()).isCloseTo(atOutput, within(0.01));
    assertThat(shaft.pinionAngle().value()).isCloseTo(atPinion, within(0.01));
    assertThat(shaft.steeper().value()).isCloseTo(Math.max(atOutput, atPinion), within(0.01));
    assertThat(shaft.mismatch().value()).isCloseTo(Math.abs(atOutput - atPinion), within(0.01));
  }

  /** At droop, 130 below the surveyed height, against the length it was surveyed at. */
  @Test
  void theSplineDrawsOutByWhatTheShaftGrows() {
    Vector3D output = new Vector3D(1180, -30, 470);
    Vector3D pinion = new Vector3D(235, -20, 392);
    double surveyed = output.distance(pinion);
    double hanging = output.distance(SideViewNewton.STONECROP_REAR.at(130).at(pinion));
    PropShaft shaft = shaft(DemoSheet.demo("stonecrop-steep-shaft"), "rear shaft");
    assertThat(shaft.splineLeft().value()).isCloseTo(60 - (hanging - surveyed), within(0.05));
    assertThat(shaft.splineNeeded().value()).isCloseTo(88 / 3.0, within(1e-9));
  }

  /**
   * Turns of the shaft at 160 km/h: speed · 3.73 / (3.05 · diameter); what a joint may have at them
   * lies between the rows of joint-angle-by-speed.csv (a handbook, common practice).
   */
  @Test
  void aShaftThatAlwaysTurnsIsAllowedWhatItsTopSpeedAllows() throws IOException {
    allowed(DemoSheet.demo("stonecrop-steep-shaft"), "rear shaft", Position.REAR_LEFT, 160);
  }

  /** The front shaft turns with four-wheel drive only, and with it no faster than 90 km/h. */
  @Test
  void aShaftThatTurnsWithFourWheelDriveIsAllowedWhatThatSpeedAllows() throws IOException {
    Build build =
        DemoSheet.of(folder, "stonecrop", "changes:\n  - { add: LS-SC-F40, at: front }\n");
    allowed(build, "front shaft", Position.FRONT_LEFT, 90);
  }

  private static void allowed(Build build, String name, Position position, double speed)
      throws IOException {
    double diameter = new Derivation(build, DAY).after(position).diameter.value();
    double turns = speed * 1e6 / 60 / (3.05 * diameter) * 3.73;
    List<double[]> rows =
        Files.readAllLines(Path.of("shared/reference/joint-angle-by-speed.csv")).stream()
            .filter(line -> line.matches("\\d.*"))
            .map(line -> line.split(","))
            .map(cells -> new double[] {Double.parseDouble(cells[0]), Double.parseDouble(cells[1])})
            .toList();
    double more =
        rows.stream().filter(r -> r[0] <= turns).mapToDouble(r -> r[1]).min().orElseThrow();
    double less =
        rows.stream().filter(r -> r[0] >= turns).mapToDouble(r -> r[1]).max().orElseThrow();
    assertThat(shaft(build, name).allowed().value()).isBetween(less, more);
    double from = rows.stream().filter(r -> r[1] == more).findFirst().orElseThrow()[0];
    double to = rows.stream().filter(r -> r[1] == less).findFirst().orElseThrow()[0];
    double between = more + (less - more) * (turns - from) / (to - from);
    assertThat(shaft(build, name).allowed().value()).isCloseTo(between, within(0.1));
  }
}
