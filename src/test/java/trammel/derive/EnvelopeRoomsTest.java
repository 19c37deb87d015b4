package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.build.Build;
import trammel.fact.Clearance;
import trammel.fact.EnvelopeRoom;
import trammel.subject.Position;
import trammel.subject.Station;

/**
 * Room for the largest tire of a size. The factors of UN R30 and UN R54 are from memory; expected
 * values are worked by hand from them and from the demo's invented figures (own derivation).
 */
class EnvelopeRoomsTest {
  private static final String REGISTERED = "as-found: { registered-at: Germany }\n";

  @TempDir private Path folder;

  private Build build(String vehicle, String found, String... parts) throws IOException {
    StringBuilder text = new StringBuilder(found).append("changes:\n");
    for (String part : parts) {
      text.append("  - { add: ").append(part).append(", at: all }\n");
    }
    return DemoSheet.of(folder, vehicle, text.toString());
  }

  private static EnvelopeRoom rearMount(Build build) {
    return DemoSheet.facts(build, EnvelopeRoom.class).stream()
        .filter(room -> room.subject().toString().equals("front-left:rear-mount"))
        .findFirst()
        .orElseThrow();
  }

  /**
   * 285/70R17: 432 + 2 · 200 · 1.04 = 848. With LT before it nobody knows whether the height may
   * grow by 4 or 6 %: 432 + 400 · 1.05 = 852 ± 4. 265/70R17: 186 for 185.5 mm of height. On a rim
   * of 8 in, 203.2 mm, for a theoretical one of 0.7 · 285 = 199.5 mm: 1.04 · (285 + 0.4 · 3.7) =
   * 297.939; 265: 1.04 · (265 + 0.4 · 17.7) = 282.963. 31x10.50R15 is listed with 31 in or a
   * quarter less, 784.225 ± 3.175: 381 + 403.225 · 1.05 = 804.386, ± √(3.33375² + 4.03225²), and
   * 1.04 · (266.7 + 0.4 · (177.8 − 213.36)) = 262.575 wide on 7 in.
   */
  @ParameterizedTest
  @CsvSource({
    "HR-2857017P, HU-1780-35D, 848, 0, 297.939",
    "HR-2857017, HU-1780-35D, 852, 4, 297.939",
    "HR-2657017P, HU-1780-35D, 818.88, 0, 282.963",
    "HR-3110515, HU-1570-M06G, 804.38625, 5.232, 262.575"
  })
  void theLargestTireOfASize(
      String tire, String wheel, double diameter, double unsure, double width) throws IOException {
    EnvelopeRoom room = rearMount(build("stonecrop", REGISTERED, tire, wheel));
    assertThat(room.tire()).isEqualTo(tire);
    assertThat(room.diameter().value()).isCloseTo(diameter, within(1e-6));
    assertThat(room.diameter().expanded()).isCloseTo(unsure, within(1e-3));
    assertThat(room.width().value()).isCloseTo(width, within(1e-3));
  }

  /** What the tire lacks of the largest, times the coefficients of the station. */
  @Test
  void whatTheLargestTireTakesIsTakenFromTheGap() throws IOException {
    Build build = build("stonecrop", REGISTERED, "HR-2857017P", "HU-1780-35D");
    WheelEnd end = new Derivation(build, DemoSheet.DAY).after(Position.FRONT_LEFT);
    double edge = (297.939 - end.width.value()) / 2;
    double radius = (848 - end.diameter.value()) / 2;
    List<Clearance> gaps = DemoSheet.facts(build, Clearance.class);
    List<EnvelopeRoom> rooms = DemoSheet.facts(build, EnvelopeRoom.class);
    assertThat(rooms).hasSameSizeAs(gaps).isNotEmpty();
    for (int i = 0; i < gaps.size(); i++) {
      Clearance gap = gaps.get(i);
      EnvelopeRoom room = rooms.get(i);
      assertThat(room.subject()).isEqualTo(gap.subject());
      assertThat(room.standing()).isEqualTo(gap.standing());
      if (gap.gap().isKnown()) {
        // The crown has no edge; the table of coefficients says so with a zero.
        assertThat(room.room().value())
            .as("%s", gap.subject())
            .isCloseTo(
                gap.gap().value() - gap.perEdge().value() * edge - gap.perRadius().value() * radius,
                within(1e-3));
        assertThat(room.room().expanded()).isGreaterThan(gap.gap().expanded());
      } else {
        assertThat(room.room().isKnown()).isFalse();
      }
    }
  }

  @Test
  void aSurveyedStationIsCarriedOverByItsCoefficientsToo() throws IOException {
    Build build = build("skerrow", REGISTERED, "HR-2757017", "HU-1785-15C", "WN-1415-C");
    Clearance gap =
        DemoSheet.facts(build, Clearance.class).stream()
            .filter(one -> one.subject().toString().equals("front-left:rear-mount"))
            .findFirst()
            .orElseThrow();
    EnvelopeRoom room = rearMount(build);
    StationModel model = StationModel.of(Station.REAR_MOUNT);
    WheelEnd end = new Derivation(build, DemoSheet.DAY).after(Position.FRONT_LEFT);
    assertThat(gap.gap().value() - room.room().value())
        .isCloseTo(
            model.perEdge() * (room.width().value() - end.width.value()) / 2
                + model.perRadius() * (room.diameter().value() - end.diameter.value()) / 2,
            within(1e-9));
  }

  @Test
  void whereNoPlaceIsNamedNothingIsWorkedOut() throws IOException {
    assertThat(DemoSheet.facts(build("stonecrop", "", "HR-2857017P"), EnvelopeRoom.class))
        .isEmpty();
  }

  @Test
  void aSizeWithoutAFormulaIsOpen() throws IOException {
    EnvelopeRoom room = rearMount(build("cairnback", REGISTERED, "CD-7501600"));
    assertThat(room.diameter().isKnown()).isFalse();
    assertThat(room.room().isKnown()).isFalse();
  }
}
