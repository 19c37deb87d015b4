package trammel.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.quantity.Dimension;
import trammel.quantity.Unit;

class QuantityReaderTest {
  /**
   * By hand, with 25.4 mm to the inch, 6.894757 kPa to the psi and 4.4482216 N to the lbf (NIST SP
   * 811, B.8).
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "LENGTH   | 33.5 in      | 850.9",
        "LENGTH   | 33.5\"       | 850.9",
        "LENGTH   | 1/2 in       | 12.7",
        "LENGTH   | 2 1/2 in     | 63.5",
        "LENGTH   | 2½ in        | 63.5",
        "LENGTH   | ½ in         | 12.7",
        "LENGTH   | 2 1⁄2 in     | 63.5",
        "LENGTH   | -2 1/2 in    | -63.5",
        "LENGTH   | 6 ft 2 in    | 1879.6",
        "LENGTH   | .5 m         | 500",
        "LENGTH   | -12 mm       | -12",
        "LENGTH   | −12 mm       | -12",
        "LENGTH   | +38 mm       | 38",
        "LENGTH   | 815\u00A0mm  | 815",
        "LENGTH   | 815\u202Fmm  | 815",
        "LENGTH   | 815mm        | 815",
        "LENGTH   | 81.5 cm      | 815",
        "LENGTH   | 0 mm         | 0",
        "PRESSURE | 4.5 MPa      | 4500",
        "PRESSURE | 2.4 bar      | 240",
        "PRESSURE | 100 psi      | 689.4757",
        "ANGLE    | 2° 15'       | 2.25",
        "ANGLE    | 2°15′        | 2.25",
        "ANGLE    | -0° 30'      | -0.5",
        "ANGLE    | 15'          | 0.25",
        "ANGLE    | 2.25 deg     | 2.25",
        "MASS     | 100 lb       | 45.359237",
        "MASS     | 2.1 t        | 2100",
        "TORQUE   | 110 N m      | 110",
        "TORQUE   | 110 N·m      | 110",
        "TORQUE   | 100  lbf  ft | 135.5818",
        "RATE     | 200 lb/in    | 35.025367",
        "SPEED    | 60 mph       | 96.56064",
        "RATIO    | 1.04         | 1.04",
        "RATIO    | 4 %          | 0.04",
        "RATIO    | 3/4          | 0.75",
        "TIME     | 6 years      | 2191.5",
        "VOLUME   | 3.2 l        | 3.2"
      })
  void readsWhatPeopleWrite(Dimension dimension, String text, double expected) {
    Reading reading = QuantityReader.parse(text, dimension);
    assertThat(reading.value()).isCloseTo(expected, within(1e-7 * Math.abs(expected)));
    assertThat(reading.expanded()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "LENGTH   | 815 mm ± 4 mm     | 815    | 4",
        "LENGTH   | 815 mm ± 4        | 815    | 4",
        "LENGTH   | 815 mm +- 4 mm    | 815    | 4",
        "LENGTH   | 815 mm +/- 0.4 cm | 815    | 4",
        "LENGTH   | 815mm±4mm         | 815    | 4",
        "LENGTH   | 33 in ± 1/8       | 838.2  | 3.175",
        "LENGTH   | -40 mm ± 10 %     | -40    | 4",
        "LENGTH   | 815 mm ± 0 mm     | 815    | 0",
        "ANGLE    | 2° 15' ± 6'       | 2.25   | 0.1",
        "PRESSURE | 100 kPa ± 1 %     | 100    | 1",
        "RATIO    | 1.04 ± 0.01       | 1.04   | 0.01",
        "RATIO    | 1.04 ± 1 %        | 1.04   | 0.0104",
        "RATIO    | 4 % ± 1 %         | 0.04   | 0.01",
        "RATIO    | 4 % ± 1           | 0.04   | 0.01"
      })
  void readsUncertainties(Dimension dimension, String text, double value, double expanded) {
    Reading reading = QuantityReader.parse(text, dimension);
    assertThat(reading.value()).isCloseTo(value, within(1e-12 * Math.abs(value)));
    assertThat(reading.expanded().orElseThrow()).isCloseTo(expanded, within(1e-12));
  }

  @Test
  void tellsTheUnitItWasWrittenIn() {
    assertThat(QuantityReader.parse("33 in ± 4 mm", Dimension.LENGTH).unit()).isEqualTo(Unit.INCH);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "mm",
        "±",
        "± 4 mm",
        "12",
        "12 mm 4",
        "12 mm ±",
        "12 mm ± -4 mm",
        "12 mm ± 4 mm ± 1",
        "12 mm ± 1 in 2 mm",
        "1e3 mm",
        "12. mm",
        "--12 mm",
        "+-12 mm",
        "12 mm - 4 mm",
        "12,5 mm",
        "1,200 mm",
        "1 200 mm",
        "1'200 mm",
        "1_200 mm",
        "1.200.000 mm",
        "1/0 mm",
        "1/ mm",
        "12 kg",
        "12 Mm",
        "12 mm/s",
        "12-14 mm",
        "2 in 3 ft",
        "6 mm 2 in",
        "5' 10\"",
        "Infinity mm",
        "NaN mm",
        "0x1F mm",
        "١٢ mm",
        "12 %",
        "12 mm ± 4 kPa",
        "12 ± 4 mm"
      })
  void refusesEverythingElse(String text) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> QuantityReader.parse(text, Dimension.LENGTH))
        .satisfies(
            e -> assertThat(e.getMessage()).matches("[^\\n]*expected [^\\n]+\\n[^\\n]+[.?]"));
  }

  @Test
  void aNumberTooLargeToHoldIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> QuantityReader.parse("9".repeat(400) + " mm", Dimension.LENGTH));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> QuantityReader.parse("1 mm ± " + "9".repeat(400), Dimension.LENGTH));
  }

  @Test
  void doesNotDependOnTheLanguageOfTheMachine() {
    Locale before = Locale.getDefault();
    try {
      for (String tag : new String[] {"tr-TR", "de-DE", "ar-EG-u-nu-arab"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(QuantityReader.parse("33.5 in", Dimension.LENGTH).value()).isEqualTo(850.9);
        assertThat(Words.kebab("WIDTH_INSIDE")).isEqualTo("width-inside");
        assertThatIllegalArgumentException()
            .isThrownBy(() -> QuantityReader.parse("12 IN", Dimension.LENGTH))
            .withMessageContaining("Did you mean in?");
      }
    } finally {
      Locale.setDefault(before);
    }
  }
}
