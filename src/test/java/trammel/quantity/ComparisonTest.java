package trammel.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 14253-1: conformity and non-conformity are proven only outside the uncertainty. */
class ComparisonTest {
  private static Quantity length(double value, double expanded) {
    Input input = new Input("f", "p", 1, null, Instrument.TAPE);
    return Quantity.read("gap", Dimension.LENGTH, value, expanded, input);
  }

  private static Decision decide(Comparison.Sense sense, Quantity quantity, Quantity limit) {
    return switch (sense) {
      case AT_LEAST -> quantity.atLeast(limit).decision();
      case AT_MOST -> quantity.atMost(limit).decision();
      case ABOVE -> quantity.above(limit).decision();
      case BELOW -> quantity.below(limit).decision();
    };
  }

  /** The limit is 10 mm in every row. */
  @ParameterizedTest
  @CsvSource({
    "AT_LEAST, 13, 3, MET",
    "AT_LEAST, 12.999, 3, UNDECIDED",
    "AT_LEAST, 10, 3, UNDECIDED",
    "AT_LEAST, 7.001, 3, UNDECIDED",
    "AT_LEAST, 7, 3, NOT_MET",
    "AT_LEAST, 10, 0, MET",
    "AT_LEAST, 9.999, 0, NOT_MET",
    "AT_MOST, 7, 3, MET",
    "AT_MOST, 7.001, 3, UNDECIDED",
    "AT_MOST, 13, 3, NOT_MET",
    "AT_MOST, 12.999, 3, UNDECIDED",
    "AT_MOST, 10, 0, MET",
    "AT_MOST, 10.001, 0, NOT_MET",
    "ABOVE, 13, 3, MET",
    "ABOVE, 10, 3, UNDECIDED",
    "ABOVE, 10, 0, NOT_MET",
    "ABOVE, 10.001, 0, MET",
    "BELOW, 7, 3, MET",
    "BELOW, 10, 3, UNDECIDED",
    "BELOW, 10, 0, NOT_MET",
    "BELOW, 9.999, 0, MET"
  })
  void decidesByMarginAndUncertainty(
      Comparison.Sense sense, double value, double expanded, Decision expected) {
    assertThat(decide(sense, length(value, expanded), Constants.mm(10))).isEqualTo(expected);
  }

  @Test
  void countsTheUncertaintyOfTheLimitToo() {
    Comparison comparison = length(15, 3).atLeast(length(10, 4));
    assertThat(comparison.margin().value()).isEqualTo(5);
    assertThat(comparison.margin().expanded()).isEqualTo(5);
    assertThat(comparison.isMet()).isTrue();
    assertThat(length(14.9, 3).atLeast(length(10, 4)).decision()).isEqualTo(Decision.UNDECIDED);
  }

  @Test
  void theMarginIsPositiveOnTheGoodSide() {
    assertThat(length(12, 0).atLeast(Constants.mm(10)).margin().value()).isEqualTo(2);
    assertThat(length(12, 0).atMost(Constants.mm(10)).margin().value()).isEqualTo(-2);
  }

  @Test
  void anAbsentValueIsNeverAPass() {
    Quantity missing =
        Quantity.absent(
            Dimension.LENGTH, new Absence("gap", "not stated", Instrument.TAPE, "measure it"));
    for (Comparison.Sense sense : Comparison.Sense.values()) {
      assertThat(decide(sense, missing, Constants.mm(10))).isEqualTo(Decision.ABSENT);
      assertThat(decide(sense, Constants.mm(10), missing)).isEqualTo(Decision.ABSENT);
    }
    Comparison comparison = missing.atLeast(Constants.mm(1));
    assertThat(comparison.isPossiblyViolated()).isTrue();
    assertThat(comparison.isBroken()).isFalse();
  }

  @Test
  void refusesToCompareDifferentDimensions() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> length(1, 0).atLeast(Constants.kg(1)))
        .withMessageContaining("length")
        .withMessageContaining("mass");
  }

  @Property
  void wideningAnUncertaintyProvesNothing(
      @ForAll Comparison.Sense sense,
      @ForAll @DoubleRange(min = -1000, max = 1000) double value,
      @ForAll @DoubleRange(min = -1000, max = 1000) double limit,
      @ForAll @DoubleRange(min = 0, max = 500) double expanded,
      @ForAll @DoubleRange(min = 0, max = 500) double wider) {
    Decision before = decide(sense, length(value, expanded), Constants.mm(limit));
    Decision after = decide(sense, length(value, expanded + wider), Constants.mm(limit));
    assertThat(after).isIn(before, Decision.UNDECIDED);
  }

  @Property
  void theOtherSideOfAStrictLimitIsItsNegation(
      @ForAll @DoubleRange(min = -10, max = 10) double value,
      @ForAll @DoubleRange(min = 0, max = 5) double expanded) {
    Quantity quantity = length(value, expanded);
    Decision above = quantity.above(Constants.mm(0)).decision();
    Decision atMost = quantity.atMost(Constants.mm(0)).decision();
    assertThat(atMost).isEqualTo(above.not());
  }
}
