package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import trammel.designation.TireDesignation;

/**
 * Tire dimensions against a tire maker's size tables of 2024 and GOST R 52899-2007. A row that its
 * table says departs from the formulas must really depart, so that no exception outlives its
 * reason.
 */
class TireDimensionsTest {
  private static final double INCH = 25.4;

  /** Half of the last printed digit; the last term is what binary fractions add. */
  private static final double INCH_PRINT = 0.05 + 1e-9;

  private static final double MILLIMETER_PRINT = 0.5 + 1e-9;

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(files = "shared/reference/tire-sizes-inch.csv", useHeadersInDisplayName = true)
  void inchTableIsMetWithinItsPrintRounding(ArgumentsAccessor row) {
    TireDesignation tire = TireDesignation.parse(row.getString(0));
    hold(diameter(tire) / INCH, row.getDouble(6), INCH_PRINT, row.getString(8));
    hold(width(tire, row.getDouble(4)) / INCH, row.getDouble(7), INCH_PRINT, row.getString(9));
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(
      files = "shared/reference/tire-sizes-millimeter.csv",
      useHeadersInDisplayName = true)
  void millimeterTableIsMetWithinItsPrintRounding(ArgumentsAccessor row) {
    TireDesignation tire = TireDesignation.parse(row.getString(0));
    double name = tire.overallDiameterInches().orElseThrow();
    hold(
        TireDimensions.flotationDiameterInMetricTables(name),
        row.getDouble(6),
        MILLIMETER_PRINT,
        row.getString(8));
    hold(width(tire, row.getDouble(4)), row.getDouble(7), MILLIMETER_PRINT, row.getString(9));
  }

  private static void hold(
      double computed, double printed, double rounding, @Nullable String departs) {
    if (departs == null) {
      assertThat(computed).isCloseTo(printed, Offset.offset(rounding));
    } else {
      assertThat(computed).as(departs).isNotCloseTo(printed, Offset.offset(rounding));
    }
  }

  private static double diameter(TireDesignation tire) {
    return tire.overallDiameterInches().isPresent()
        ? TireDimensions.flotationDiameter(tire.overallDiameterInches().getAsDouble())
        : TireDimensions.overallDiameter(
            tire.sectionWidthMillimeters(),
            tire.aspect().orElseThrow(),
            tire.rim().exactMillimeters());
  }

  private static double width(TireDesignation tire, double rimInches) {
    double nominal = tire.sectionWidthMillimeters();
    OptionalInt aspect = tire.aspect();
    double theoretical =
        aspect.isPresent()
            ? TireDimensions.theoreticalRimWidth(nominal, aspect.getAsInt())
            : TireDimensions.flotationTheoreticalRimWidth(nominal);
    return TireDimensions.sectionWidth(nominal, theoretical, rimInches * INCH);
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(files = "shared/reference/tire-sizes-inch.csv", useHeadersInDisplayName = true)
  void measuringRimAndRimRangeAreThoseOfTheInchTable(ArgumentsAccessor row) {
    TireDesignation tire = TireDesignation.parse(row.getString(0));
    double nominal = tire.sectionWidthMillimeters();
    tire.aspect()
        .ifPresent(
            aspect ->
                assertThat(TireDimensions.measuringRimWidth(nominal, aspect))
                    .isCloseTo(row.getDouble(4) * INCH, Offset.offset(1e-9)));
    RimWidthRatio band =
        tire.aspect().isPresent()
            ? RimWidthRatio.published(tire.aspect().getAsInt())
            : RimWidthRatio.FLOTATION;
    boolean held =
        band.holds(RimWidthRatio.of(row.getDouble(3) * INCH, nominal))
            && band.holds(RimWidthRatio.of(row.getDouble(5) * INCH, nominal));
    assertThat(held).isEqualTo(row.getString(10) == null);
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(
      files = "shared/reference/rim-widths-80-series.csv",
      useHeadersInDisplayName = true)
  void rimRangeOf80SeriesTiresIsHeld(String size, double smallest, double largest) {
    TireDesignation tire = TireDesignation.parse(size);
    RimWidthRatio band = RimWidthRatio.published(tire.aspect().orElseThrow());
    assertThat(band.holds(RimWidthRatio.of(smallest * INCH, tire.sectionWidthMillimeters())))
        .isTrue();
    assertThat(band.holds(RimWidthRatio.of(largest * INCH, tire.sectionWidthMillimeters())))
        .isTrue();
    assertThat(band.holds(0.60)).isFalse();
    assertThat(band.holds(0.90)).isFalse();
  }

  /** The table's own tolerance: outer diameter within 1.0 %. */
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(files = "shared/reference/tire-sizes-gost.csv", useHeadersInDisplayName = true)
  void diameterOfGostTableIsMetWithinItsTolerance(String size, double diameter) {
    TireDesignation tire = TireDesignation.parse(size);
    if (tire.aspect().isPresent()) {
      assertThat(
              TireDimensions.roundedOverallDiameter(
                  tire.sectionWidthMillimeters(),
                  tire.aspect().getAsInt(),
                  tire.rim().millimeters()))
          .isCloseTo(diameter, Offset.offset(diameter * 0.01));
    } else {
      assertThat(tire.overallDiameterInches()).isEmpty();
    }
  }

  /** GOST R 52899-2007, table A.1: 225/75R16C is printed 744 mm, 406 + 2 x 169. */
  @Test
  void roundedDiameterIsThatOfTheGostRow() {
    assertThat(TireDimensions.roundedOverallDiameter(225, 75, 16 * INCH)).isEqualTo(744);
  }

  /** GOST R 52899-2007, table A.1: radial rows hold 0.909 to 0.940 at rated load. */
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(files = "shared/reference/tire-sizes-gost.csv", useHeadersInDisplayName = true)
  void loadedRadiusAtRatedLoadIsThatOfTheGostRow(
      String size, double diameter, double width, double staticRadius) {
    double ratio = staticRadius / (diameter / 2);
    assertThat(TireDimensions.loadedRadius(diameter / 2, ratio, 1))
        .isCloseTo(staticRadius, Offset.offset(1e-9));
    if (size.contains("R")) {
      assertThat(ratio)
          .isBetween(
              TireDimensions.LOWEST_RATED_RADIUS_RATIO - 0.0005,
              TireDimensions.HIGHEST_RATED_RADIUS_RATIO + 0.0005);
      // The circumference from the diameter alone (ETRTO, from memory) is good to 1 %.
      assertThat(TireDimensions.rollingCircumference(diameter))
          .isCloseTo(
              TireDimensions.rollingCircumference(diameter, staticRadius),
              Offset.offset(0.01 * 3.05 * diameter));
    }
  }

  /** GOST row 225/75R16C, 744 mm and static radius 338 mm: circumference 3.046 diameters. */
  @Test
  void rollingRatioIsThatOfTheGostRow() {
    assertThat(TireDimensions.rollingCircumference(744, 338) / 744)
        .isCloseTo(3.046, Offset.offset(0.0005));
    assertThat(TireDimensions.turnsPerMile(1_609_344)).isEqualTo(1);
    assertThat(TireDimensions.turnsPerKilometer(2500)).isEqualTo(400);
  }

  /**
   * A vehicle at curb load, about half of the rated load, stands at 0.95 to 0.97: common practice.
   */
  @Test
  void loadedRadiusAtCurbLoadIsThatOfPractice() {
    double ratio =
        TireDimensions.loadedRadius(400, TireDimensions.USUAL_RATED_RADIUS_RATIO, 0.5) / 400;
    assertThat(ratio).isBetween(0.95, 0.97);
  }

  @Property
  void loadedRadiusFallsEvenlyFromFreeToRatedAndBeyond(
      @ForAll @DoubleRange(min = 300, max = 500) double free,
      @ForAll @DoubleRange(min = 0.90, max = 0.95) double rated,
      @ForAll @DoubleRange(min = 0, max = 1.2) double load) {
    double radius = TireDimensions.loadedRadius(free, rated, load);
    assertThat(TireDimensions.loadedRadius(free, rated, 0)).isEqualTo(free);
    assertThat(TireDimensions.loadedRadius(free, rated, load + 0.01)).isLessThan(radius);
    Partial.assertPartial(
        l -> TireDimensions.loadedRadius(free, rated, l),
        load + 0.1,
        TireDimensions.loadedRadiusPerLoadRatio(free, rated));
    Partial.assertPartial(
        r -> TireDimensions.loadedRadius(free, r, load),
        rated,
        TireDimensions.loadedRadiusPerRatedRadiusRatio(free, load));
    Partial.assertPartial(
        f -> TireDimensions.loadedRadius(f, rated, load),
        free,
        TireDimensions.loadedRadiusPerFreeRadius(rated, load));
  }

  /** A tire maker's data page: the section width changes 5 mm per half inch of rim. */
  @Test
  void sectionWidthChangesFiveMillimetersPerHalfInch() {
    double narrow = TireDimensions.sectionWidth(285, 199.5, 8 * INCH);
    double wide = TireDimensions.sectionWidth(285, 199.5, 8.5 * INCH);
    assertThat(wide - narrow).isCloseTo(5, Offset.offset(0.5));
  }

  @Test
  void impossibleDimensionsAreRefused() {
    assertThatThrownBy(() -> TireDimensions.overallDiameter(-285, 70, 431.8))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("found -285.0 as section width; expected a number above 0");
    assertThatThrownBy(() -> TireDimensions.overallDiameter(285, Double.NaN, 431.8))
        .hasMessageContaining("aspect ratio");
    assertThatThrownBy(() -> TireDimensions.loadedRadius(400, 1.0, 1))
        .hasMessageContaining("static over free radius");
    assertThatThrownBy(() -> new RimWidthRatio(0.9, 0.8)).hasMessageContaining("highest ratio");
  }
}
