package trammel.schema;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.quantity.Dimension;
import trammel.read.QuantityReader;

/** The pattern of a quantity takes the texts that the reader takes. */
class QuantityFormTest {
  private static boolean isRead(String text, Dimension dimension) {
    try {
      QuantityReader.parse(text, dimension);
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private static boolean isMatched(String text, Dimension dimension) {
    return text.matches(QuantityForm.pattern(dimension));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "33.5 in           | LENGTH   | true",
        "1/2 in            | LENGTH   | true",
        "2 1/2\"           | LENGTH   | true",
        "2½ in             | LENGTH   | true",
        "6 ft 2 in         | LENGTH   | true",
        "−12 mm ± .5       | LENGTH   | true",
        "815 mm +/- 4 mm   | LENGTH   | true",
        "815 mm +- 1 %     | LENGTH   | true",
        "2° 15'            | ANGLE    | true",
        "4.5 MPa           | PRESSURE | true",
        "26 lbf/in         | RATE     | true",
        "90 lbf  ft        | TORQUE   | true",
        "3.91              | RATIO    | true",
        "4 % ± 1 %         | RATIO    | true",
        "815               | LENGTH   | false",
        "815 kg            | LENGTH   | false",
        "33,5 in           | LENGTH   | false",
        "1/0 in            | LENGTH   | false",
        "815 mm ±          | LENGTH   | false",
        "6 in 2 ft         | LENGTH   | false",
        "about 3 mm        | LENGTH   | false",
        "3 mm or so        | LENGTH   | false"
      })
  void patternAndReaderAgreeOnUsualForms(String text, Dimension dimension, boolean read) {
    assertThat(isRead(text, dimension)).as("read").isEqualTo(read);
    assertThat(isMatched(text, dimension)).as("matched").isEqualTo(read);
  }

  @Provide
  Arbitrary<String> pieces() {
    return Arbitraries.of(
            "1", "12", "1.5", ".5", "1/2", "½", " ", " ", "mm", "in", "\"", "ft", "°", "'", "%",
            "±", "+-", "+/-", "-", "+", "−", ",", "\u00a0", "kPa", "bar", "N m", "N", "lbf/in")
        .list()
        .ofMinSize(1)
        .ofMaxSize(7)
        .map(pieces -> String.join("", pieces));
  }

  @Provide
  Arbitrary<String> nearlyRight() {
    Arbitrary<String> blank = Arbitraries.of("", " ", "\u00a0");
    Arbitrary<String> number = Arbitraries.of("1", "12", "1.5", ".5", "1/2", "½", "2½", "2 1/2");
    Arbitrary<String> unit = Arbitraries.of("mm", "in", "ft", "°", "'", "%", "", "kPa", "N m");
    Arbitrary<String> then = Arbitraries.of("", " ± ", "±", "+-", " +/- ", " ", "−", " +−", "+");
    Arbitrary<String> sign = Arbitraries.of("", "-", "+", "−");
    return Combinators.combine(sign, number, blank, unit, then, number, unit)
        .as((s, n, b, u, t, m, v) -> s + n + b + u + t + (t.isEmpty() ? "" : m + b + v));
  }

  @Property(tries = 3000)
  void patternAndReaderAgreeOnWhateverIsPutTogether(
      @ForAll("pieces") String text, @ForAll Dimension dimension) {
    assertThat(isMatched(text, dimension)).as(text).isEqualTo(isRead(text, dimension));
  }

  @Property(tries = 6000)
  void patternAndReaderAgreeOnWhatLooksRight(
      @ForAll("nearlyRight") String text, @ForAll Dimension dimension) {
    Statistics.label("read")
        .collect(isRead(text, dimension))
        .coverage(found -> found.check(true).percentage(share -> share > 1));
    assertThat(isMatched(text, dimension)).as(text).isEqualTo(isRead(text, dimension));
  }
}
