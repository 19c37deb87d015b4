package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Comparator;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import trammel.designation.LoadIndex;
import trammel.designation.TireDesignation;
import trammel.physics.TireLoad.Standard;

class TireLoadTest {
  private static final double PSI = 6.894757; // NIST SP 811 (2008), appendix B

  /** A tire maker's chart for LT235/85R16 E, 3042 lb at 80 psi. */
  @ParameterizedTest(name = "{0} psi")
  @CsvFileSource(
      files = "shared/reference/load-inflation-lt235-85r16.csv",
      useHeadersInDisplayName = true)
  void ltLoadFollowsThePublishedChartWithinOnePercent(double psi, double single) {
    double ratedLoad = 3042;
    double referencePressure = 80 * PSI;
    assertThat(TireLoad.capacity(Standard.LT_METRIC, ratedLoad, referencePressure, psi * PSI))
        .isCloseTo(single, Percentage.withPercentage(1));
    assertThat(
            TireLoad.pressureFor(Standard.LT_METRIC, ratedLoad, referencePressure, single)
                .orElseThrow())
        .isCloseTo(psi * PSI, Percentage.withPercentage(1.5));
  }

  /** P235/75R15: 2183 lb at 280 kPa as extra load, 2028 lb at 240 kPa as standard load. */
  @Test
  void pMetricLoadFollowsTheSquareRootOfPressure() {
    assertThat(TireLoad.capacity(Standard.P_METRIC, 2183, 280, 240))
        .isCloseTo(2028, Percentage.withPercentage(0.5));
  }

  @ParameterizedTest(name = "{0} at {1} {2}")
  @CsvFileSource(
      files = "shared/reference/p-metric-design-load.csv",
      useHeadersInDisplayName = true)
  void pMetricDesignLoadIsThePublishedOne(
      String size, double pressure, String unit, double kilograms) {
    assertThat(designLoad(size, unit.equals("psi") ? pressure * PSI : pressure))
        .isCloseTo(kilograms, Percentage.withPercentage(0.5));
  }

  @ParameterizedTest(name = "{0} = {1}")
  @CsvFileSource(files = "shared/reference/p-metric-load-index.csv", useHeadersInDisplayName = true)
  void pMetricDesignLoadIsNearestToThePublishedIndex(String size, int index) {
    double load = designLoad(size, TireLoad.P_METRIC_STANDARD_PRESSURE);
    int nearest =
        IntStream.rangeClosed(60, 140)
            .boxed()
            .min(
                Comparator.comparingDouble(
                    i -> Math.abs(new LoadIndex(i).kilograms().orElseThrow() - load)))
            .orElseThrow();
    assertThat(nearest).isEqualTo(index);
  }

  private static double designLoad(String size, double pressure) {
    TireDesignation tire = TireDesignation.parse(size);
    return TireLoad.pMetricDesignLoad(
        tire.sectionWidthMillimeters(),
        tire.aspect().orElseThrow(),
        tire.rim().millimeters(),
        pressure);
  }

  /** 49 CFR 571.120, S5.1.2; 2650 lb to 2409 lb is printed on pages of the trade. */
  @Test
  void passengerTireOnALightTruckCountsForLess() {
    assertThat(TireLoad.passengerOnLightTruck(2650)).isCloseTo(2409, Offset.offset(0.5));
    double kilograms = LoadIndex.parse("111").kilograms().orElseThrow();
    assertThat(2 * TireLoad.passengerOnLightTruck(kilograms))
        .isCloseTo(1981.8, Offset.offset(0.05));
  }

  /** P-metric 35 and 41 psi, Euro-metric 36 and 42 psi, as the standards round them to ten kPa. */
  @Test
  void referencePressuresAreThoseOfTheStandards() {
    Offset<Double> rounding = Offset.offset(5.0);
    assertThat(TireLoad.P_METRIC_STANDARD_PRESSURE).isCloseTo(35 * PSI, rounding);
    assertThat(TireLoad.P_METRIC_EXTRA_PRESSURE).isCloseTo(41 * PSI, rounding);
    assertThat(TireLoad.EURO_METRIC_STANDARD_PRESSURE).isCloseTo(36 * PSI, rounding);
    assertThat(TireLoad.EURO_METRIC_EXTRA_PRESSURE).isCloseTo(42 * PSI, rounding);
  }

  @Property
  void pressureForALoadGivesThatCapacity(
      @ForAll Standard standard,
      @ForAll @DoubleRange(min = 400, max = 2000) double ratedLoad,
      @ForAll @DoubleRange(min = 200, max = 700) double reference,
      @ForAll @DoubleRange(min = 0.3, max = 0.99) double share) {
    double load = share * ratedLoad;
    double pressure = TireLoad.pressureFor(standard, ratedLoad, reference, load).orElseThrow();
    assertThat(pressure).isLessThan(reference);
    assertThat(TireLoad.capacity(standard, ratedLoad, reference, pressure))
        .isCloseTo(load, Percentage.withPercentage(1e-9));
    Partial.assertPartial(
        p -> TireLoad.capacity(standard, ratedLoad, reference, p),
        pressure * 0.99,
        TireLoad.capacityPerPressure(standard, ratedLoad, reference, pressure * 0.99));
    Partial.assertPartial(
        l -> TireLoad.pressureFor(standard, ratedLoad, reference, l).orElseThrow(),
        load * 0.99,
        TireLoad.pressurePerLoad(standard, ratedLoad, reference, load * 0.99).orElseThrow());
  }

  @Property
  void noPressureLetsATireCarryMoreThanItsRatedLoad(
      @ForAll Standard standard, @ForAll @DoubleRange(min = 0, max = 1000) double pressure) {
    assertThat(TireLoad.capacity(standard, 1000, 450, pressure)).isBetween(0.0, 1000.0);
    assertThat(TireLoad.capacityPerPressure(standard, 1000, 450, 450.1)).isZero();
    assertThat(TireLoad.pressureFor(standard, 1000, 450, 1000.1)).isEmpty();
    assertThat(TireLoad.pressurePerLoad(standard, 1000, 450, 1000.1)).isEmpty();
  }

  @Test
  void whatTheFormulasDoNotCoverIsRefused() {
    assertThatThrownBy(() -> TireLoad.pMetricDesignLoad(245, 45, 483, 240))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("aspect ratio; expected 50 to 100");
    assertThatThrownBy(() -> TireLoad.capacity(Standard.LT_METRIC, 1450, 0, 200))
        .hasMessageContaining("reference pressure");
    assertThatThrownBy(() -> TireLoad.capacity(Standard.LT_METRIC, 1450, 550, -1))
        .hasMessageContaining("pressure; expected 0 or more");
  }
}
