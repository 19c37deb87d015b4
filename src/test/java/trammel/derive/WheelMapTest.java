package trammel.derive;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trammel.derive.DemoSheet.DAY;
import static trammel.derive.DemoSheet.alignment;
import static trammel.derive.DemoSheet.raised;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.build.Build;
import trammel.fact.Alignment;
import trammel.subject.Position;

/** The map of a wheel, against what is said of the wheel at the same height. */
class WheelMapTest {
  @TempDir private Path folder;

  private static WheelMap.Drawing drawing(Build build) {
    return requireNonNull(WheelMap.of(build, DAY).get(0).drawing());
  }

  private Build skerrow(String sheet) throws IOException {
    return DemoSheet.of(folder, "skerrow", sheet);
  }

  private double least(double lift) throws IOException {
    Alignment wheel = alignment(skerrow(raised("free", lift, lift, "")), Position.FRONT_LEFT);
    return Math.min(wheel.camberReserve().value(), wheel.casterReserve().value());
  }

  /** Sheets raised by a little less and a little more are inside the windows and out of them. */
  @Test
  void theLastLiftIsTheLastThatComesHome() throws IOException {
    double last = requireNonNull(drawing(skerrow(raised("free", 20, 20, ""))).lifts()).to();
    assertThat(least(last - 0.3)).isPositive();
    assertThat(least(last + 0.3)).isNegative();
  }

  @ParameterizedTest
  @ValueSource(doubles = {5, 30, 50})
  void theLastLiftDoesNotDependOnTheRaiseProposed(double raise) throws IOException {
    double one = requireNonNull(drawing(skerrow(raised("free", 20, 20, ""))).lifts()).to();
    double other = requireNonNull(drawing(skerrow(raised("free", raise, raise, ""))).lifts()).to();
    assertThat(other).isCloseTo(one, within(0.2));
  }

  /** Both axles raised alike do not rake the body, whatever the sheet does to the rear. */
  @Test
  void theLastLiftIsOfBothAxlesRaisedAlike() throws IOException {
    List<String> frame = List.of("caster-from: frame");
    List<String> ground = List.of("caster-from: ground");
    double alike =
        requireNonNull(
                drawing(
                        DemoSheet.altered(
                            folder, "skerrow", frame, ground, raised("free", 30, 30, "")))
                    .lifts())
            .to();
    double frontAlone =
        requireNonNull(
                drawing(
                        DemoSheet.altered(
                            folder, "skerrow", frame, ground, raised("free", 30, 0, "")))
                    .lifts())
            .to();
    assertThat(frontAlone).isCloseTo(alike, within(0.2));
  }

  /** Arms that want a lift miss the windows without one, and meet them with it. */
  @Test
  void armsThatNeedALiftHaveALastLiftToo() throws IOException {
    Build build = skerrow(raised("free", 55, 55, "  - { add: LB-UA-SK-S, at: front }\n"));
    Alignment wheel = alignment(build, Position.FRONT_LEFT);
    assertThat(wheel.camberReserve().value()).isPositive();
    assertThat(wheel.casterReserve().value()).isPositive();
    assertThat(requireNonNull(drawing(build).lifts()).to()).isGreaterThan(55);
  }

  @Test
  void bestAndUntouchedLieWhereTheWheelStands() throws IOException {
    WheelMap.Drawing drawing = drawing(skerrow(raised("free", 30, 30, "")));
    Alignment free = alignment(skerrow(raised("free", 30, 30, "")), Position.FRONT_LEFT);
    Alignment stuck = alignment(skerrow(raised("seized", 30, 30, "")), Position.FRONT_LEFT);
    assertThat(drawing.best().camber()).isCloseTo(free.camber().value(), within(1e-9));
    assertThat(drawing.best().caster()).isCloseTo(free.caster().value(), within(1e-9));
    assertThat(drawing.untouched().camber()).isCloseTo(stuck.camber().value(), within(1e-9));
    assertThat(drawing.untouched().caster()).isCloseTo(stuck.caster().value(), within(1e-9));
  }

  /** The curve at rest is the best setting; one step down is the sheet raised by as much more. */
  @Test
  void theCurveRunsThroughTheBestSetting() throws IOException {
    WheelMap.Drawing drawing = drawing(skerrow(raised("free", 30, 30, "")));
    WheelMap.CurvePoint rest =
        drawing.curve().stream().filter(p -> p.travel() == 0).findFirst().orElseThrow();
    assertThat(rest.camber()).isCloseTo(drawing.best().camber(), within(1e-6));
    assertThat(rest.caster()).isCloseTo(drawing.best().caster(), within(1e-6));
    assertThat(rest.toe()).isCloseTo(0.08, within(1e-9));
    assertThat(rest.halfTrack()).isCloseTo(0, within(1e-9));
    WheelMap.Drawing stuck = drawing(skerrow(raised("seized", 30, 30, "")));
    WheelMap.CurvePoint lower =
        stuck.curve().stream().filter(p -> p.travel() == -10).findFirst().orElseThrow();
    Alignment raisedBy40 = alignment(skerrow(raised("seized", 40, 40, "")), Position.FRONT_LEFT);
    // Toe set again turns the wheel by a few hundredths of a degree about an axis that leans by
    // 13°: the wheel's center, which travel is told by, rises by less than a hundredth of that.
    assertThat(lower.camber()).isCloseTo(raisedBy40.camber().value(), within(0.005));
    assertThat(lower.caster()).isCloseTo(raisedBy40.caster().value(), within(0.001));
  }
}
