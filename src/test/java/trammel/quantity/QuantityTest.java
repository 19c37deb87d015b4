package trammel.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class QuantityTest {
  private static final Formula SUM = new Formula("sum", "a + b", "definition");

  private static Quantity length(double value, double expanded) {
    Input input = new Input("car.build.yaml", "gap", 3, null, Instrument.TAPE);
    return Quantity.read("gap", Dimension.LENGTH, value, expanded, input);
  }

  private static Quantity missing(String what) {
    return Quantity.absent(
        Dimension.LENGTH, new Absence(what, "not stated", Instrument.TAPE, "measure it"));
  }

  @Test
  void twoInputsAddInSquares() {
    Quantity sum = SUM.linear(1, length(10, 3), 1, length(20, 4));
    assertThat(sum.value()).isEqualTo(30);
    assertThat(sum.expanded()).isEqualTo(5);
    assertThat(sum.uncertainInputs()).hasSize(2);
  }

  @Test
  void anInputUsedTwiceCountsOnce() {
    Quantity gap = length(10, 3);
    Quantity doubled = SUM.linear(1, gap, 1, gap);
    assertThat(doubled.expanded()).isEqualTo(6);
    assertThat(doubled.uncertainInputs()).hasSize(1);
  }

  @Test
  void aDifferenceOfTwoUsesCancels() {
    Quantity gap = length(10, 3);
    Quantity more = SUM.linear(1, gap, 1, length(5, 4));
    Quantity rest = SUM.linear(1, more, -1, gap);
    assertThat(rest.value()).isEqualTo(5);
    assertThat(rest.expanded()).isEqualTo(4);
  }

  /**
   * JCGM 100:2008, 5.2.2, example (from memory): ten resistors of 1000 Ω, all calibrated against
   * one standard of u = 100 mΩ, in series have u = 1 Ω, not the 0.32 Ω of independent ones.
   */
  @Test
  void oneSourceOfErrorInTenPlacesAddsUp() {
    Quantity one = length(1000, 0.1);
    Quantity[] ten = new Quantity[10];
    Arrays.fill(ten, one);
    double[] ones = new double[10];
    Arrays.fill(ones, 1);
    assertThat(SUM.linear(ones, ten).expanded()).isCloseTo(1, within(1e-12));
    Quantity[] independent =
        Stream.generate(() -> length(1000, 0.1)).limit(10).toArray(Quantity[]::new);
    assertThat(SUM.linear(ones, independent).expanded()).isCloseTo(0.32, within(0.005));
  }

  /**
   * JCGM 100:2008, H.1, table H.1 (from memory): contributions of 25, 9.7, 2.9 and 16.6 nm make a
   * combined standard uncertainty of 32 nm.
   */
  @Test
  void combinesTheBudgetOfTheEndGauge() {
    Quantity sum =
        SUM.linear(
            new double[] {1, 1, 1, 1},
            length(0, 25),
            length(0, 9.7),
            length(0, 2.9),
            length(0, 16.6));
    assertThat(sum.expanded()).isCloseTo(32, within(0.5));
  }

  /**
   * By hand, JCGM 100:2008, equation (10): k = F/d, F = 100 N ± 2 N, d = 20 mm ± 0.3 mm; the parts
   * are 2/20 = 0.1 and 100·0.3/20² = 0.075; U = √(0.1² + 0.075²) = 0.125 N/mm.
   */
  @Test
  void aQuotientFollowsTheLawOfPropagation() {
    Input scale = new Input("f", "force", 1, null, Instrument.WEIGHED);
    Input tape = new Input("f", "travel", 2, null, Instrument.TAPE);
    Quantity force = Quantity.read("force", Dimension.FORCE, 100, 2, scale);
    Quantity travel = Quantity.read("travel", Dimension.LENGTH, 20, 0.3, tape);
    Quantity rate =
        new Formula("rate", "F / d", "definition").quotient(Dimension.RATE, 1, force, travel);
    assertThat(rate.value()).isEqualTo(5);
    assertThat(rate.expanded()).isCloseTo(0.125, within(1e-15));
    assertThat(rate.contribution(scale)).isCloseTo(0.1, within(1e-15));
    assertThat(rate.contribution(tape)).isCloseTo(-0.075, within(1e-15));
  }

  /** By hand: 20·30 = 600; parts 30·0.2 = 6 and 20·0.4 = 8; U = 10. */
  @Test
  void aProductFollowsTheLawOfPropagation() {
    Quantity product =
        new Formula("area", "a·b", "definition")
            .product(Dimension.RATIO, 1, length(20, 0.2), length(30, 0.4));
    assertThat(product.value()).isEqualTo(600);
    assertThat(product.expanded()).isCloseTo(10, within(1e-12));
  }

  @Test
  void whatFollowsFromAnAbsentValueIsAbsentForTheSameReason() {
    Quantity sum = SUM.linear(1, length(10, 3), 1, missing("gap at lock"));
    assertThat(sum.isKnown()).isFalse();
    assertThat(sum.absence()).isNotNull().extracting(Absence::what).isEqualTo("gap at lock");
    assertThat(sum.operands()).hasSize(2);
    assertThatIllegalStateException().isThrownBy(sum::value).withMessageContaining("not stated");
  }

  @Test
  void aResultThatIsNoNumberIsAbsent() {
    Quantity quotient =
        new Formula("ratio", "a / b", "definition")
            .quotient(Dimension.RATIO, 1, length(1, 0), length(0, 0));
    assertThat(quotient.isKnown()).isFalse();
  }

  @Test
  void anExactNumberHasNoUncertainty() {
    Quantity limit = Constants.mm(8);
    assertThat(limit.expanded()).isZero();
    assertThat(SUM.linear(1, limit, 1, length(2, 0)).uncertainInputs()).isEmpty();
  }

  @Test
  void refusesWhatIsNoFiniteNumber() {
    assertThatIllegalArgumentException().isThrownBy(() -> length(Double.NaN, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> length(1, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> length(1, Double.NaN));
  }

  @Test
  void aNewNameKeepsTheWorking() {
    Quantity sum = SUM.linear(1, length(10, 3), 1, length(20, 4)).called("total");
    assertThat(sum.name()).isEqualTo("total");
    assertThat(sum.formula()).isEqualTo(SUM);
    assertThat(sum.expanded()).isEqualTo(5);
  }

  @Test
  void constantsAreInTheKeptUnit() {
    assertThat(Constants.percent(4).value()).isEqualTo(0.04);
    assertThat(Constants.years(2).value()).isEqualTo(730.5);
  }
}
