package trammel.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.quantity.Absence;
import trammel.quantity.Dimension;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;

class QuantityWriterTest {
  private static Quantity quantity(Dimension dimension, double value, double expanded) {
    Input input = new Input("f", "p", 1, null, Instrument.READ);
    return Quantity.read("x", dimension, value, expanded, input);
  }

  /** JCGM 100:2008, 7.2.6: at most two significant digits, and the value to the same place. */
  @ParameterizedTest
  @CsvSource({
    "LENGTH, 6.2341, 3.3972, 6.2 ± 3.4 mm",
    "LENGTH, 815, 4, 815 ± 4 mm",
    "LENGTH, 815.04, 3.4, 815.0 ± 3.4 mm",
    "LENGTH, 71.56, 0.1, 71.6 ± 0.1 mm",
    "LENGTH, 71.56, 0.02, 71.6 ± 0.1 mm",
    "LENGTH, 1234.4, 34.4, 1234 ± 34 mm",
    "LENGTH, 1234.4, 341, 1230 ± 340 mm",
    "LENGTH, -0.04, 3, 0 ± 3 mm",
    "LENGTH, 12.34, 0, 12.3 mm",
    "PRESSURE, 241.32, 4.83, 241 ± 5 kPa",
    "ANGLE, 2.25, 0.25, 2.25 ± 0.25°",
    "RATIO, 1.0414, 0.0104, 1.041 ± 0.010",
    "TORQUE, 110, 0, 110 N m"
  })
  void showsDigitsAsTheUncertaintyAllows(
      Dimension dimension, double value, double expanded, String expected) {
    assertThat(QuantityWriter.uncertain(quantity(dimension, value, expanded))).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "LENGTH, 815, 4, 815 mm (32.1 in)",
    "LENGTH, 815, 0, 815 mm (32.09 in)",
    "LENGTH, 71.56, 0.1, 71.6 mm (2.82 in)",
    "LENGTH, -0.04, 0, 0 mm (0 in)",
    "PRESSURE, 241.31650526, 4.83, 241 kPa (35 psi)",
    "MASS, 2100, 42, 2100 kg (4630 lb)",
    "SPEED, 96.56064, 0, 96.6 km/h (60 mph)",
    "ANGLE, 2.25, 0.25, 2.25°",
    "RATIO, 1.04, 0, 1.04"
  })
  void showsBothUnitsWhereTheTradeUsesBoth(
      Dimension dimension, double value, double expanded, String expected) {
    assertThat(QuantityWriter.both(quantity(dimension, value, expanded))).isEqualTo(expected);
  }

  @Test
  void saysThatAValueIsNotKnown() {
    Quantity absent =
        Quantity.absent(
            Dimension.LENGTH, new Absence("gap", "not stated", Instrument.TAPE, "measure it"));
    assertThat(QuantityWriter.value(absent)).isEqualTo("not known (not stated)");
    assertThat(QuantityWriter.both(absent)).isEqualTo("not known (not stated)");
    assertThat(QuantityWriter.uncertain(absent)).isEqualTo("not known (not stated)");
    assertThatIllegalStateException().isThrownBy(() -> QuantityWriter.exact(absent));
  }

  @Test
  void writesEveryDigitForReadingBack() {
    assertThat(QuantityWriter.exact(quantity(Dimension.LENGTH, 815.25, 4)))
        .isEqualTo("815.25 mm ± 4 mm");
    assertThat(QuantityWriter.exact(quantity(Dimension.ANGLE, -2.5, 1e-7)))
        .isEqualTo("-2.5° ± 0.0000001°");
    assertThat(QuantityWriter.exact(quantity(Dimension.RATIO, 1.04, 0))).isEqualTo("1.04 ± 0");
  }

  @Property
  void whatIsWrittenReadsBackTheSame(
      @ForAll Dimension dimension,
      @ForAll @DoubleRange(min = -1e9, max = 1e9) double value,
      @ForAll @DoubleRange(min = 0, max = 1e6) double expanded) {
    String text = QuantityWriter.exact(quantity(dimension, value, expanded));
    Reading reading = QuantityReader.parse(text, dimension);
    assertThat(reading.value()).isCloseTo(value, within(1e-9 * Math.abs(value)));
    assertThat(reading.expanded().orElseThrow()).isCloseTo(expanded, within(1e-9 * expanded));
  }

  @Property
  void whatIsShownIsWithinItsUncertaintyOfTheValue(
      @ForAll Dimension dimension,
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double value,
      @ForAll @DoubleRange(min = 1, max = 1e5) double expanded) {
    String shown = QuantityWriter.value(quantity(dimension, value, expanded));
    assertThat(QuantityReader.parse(shown, dimension).value())
        .isCloseTo(value, within(0.5 * expanded));
  }

  @Test
  void doesNotDependOnTheLanguageOfTheMachine() {
    Locale before = Locale.getDefault();
    try {
      for (String tag : new String[] {"tr-TR", "de-DE", "ar-EG-u-nu-arab"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(QuantityWriter.uncertain(quantity(Dimension.LENGTH, 1234.5, 3.4)))
            .isEqualTo("1234.5 ± 3.4 mm");
      }
    } finally {
      Locale.setDefault(before);
    }
  }
}
