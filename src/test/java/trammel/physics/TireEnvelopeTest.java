package trammel.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import trammel.designation.TireDesignation;
import trammel.designation.TireSize;

/**
 * The largest tire of a size. The factors are from memory of UN R30 and UN R54; what makers and a
 * standard print of real sizes must lie inside.
 */
class TireEnvelopeTest {
  private static final double INCH = 25.4;

  /** What a maker's table rounds to (mm). */
  private static final double PRINT = 0.05 * INCH;

  /** Worked by hand: LT285/70R17 grows to 846.8 mm, in special use to 854.8 mm, and 303.3 mm. */
  @Test
  void heightAndWidthGrow() {
    double height = TireDimensions.sectionHeight(285, 70);
    assertThat(TireEnvelope.diameter(431.8, height, TireEnvelope.HEIGHT_GROWTH))
        .isCloseTo(846.76, within(0.005));
    assertThat(TireEnvelope.diameter(431.8, height, TireEnvelope.SPECIAL_HEIGHT_GROWTH))
        .isCloseTo(854.74, within(0.005));
    assertThat(TireEnvelope.width(291.6)).isCloseTo(303.264, within(1e-9));
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(files = "shared/reference/tire-sizes-inch.csv", useHeadersInDisplayName = true)
  void noTireOfAMakersTableInInchesIsLarger(ArgumentsAccessor row) {
    TireDesignation tire = TireDesignation.parse(row.getString(0));
    assertThat(row.getDouble(6) * INCH).isLessThanOrEqualTo(diameter(tire) + PRINT);
    assertThat(row.getDouble(7) * INCH)
        .isLessThanOrEqualTo(width(tire, row.getDouble(4) * INCH) + PRINT);
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(
      files = "shared/reference/tire-sizes-millimeter.csv",
      useHeadersInDisplayName = true)
  void noTireOfAMakersTableInMillimetersIsLarger(ArgumentsAccessor row) {
    TireDesignation tire = TireDesignation.parse(row.getString(0));
    assertThat(row.getDouble(6)).isLessThanOrEqualTo(diameter(tire));
    assertThat(row.getDouble(7)).isLessThanOrEqualTo(width(tire, row.getDouble(4) * INCH));
  }

  /** GOST allows 1 % more diameter than it prints, and the width as printed. */
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(files = "shared/reference/tire-sizes-gost.csv", useHeadersInDisplayName = true)
  void whatAStandardAllowsIsNoLarger(ArgumentsAccessor row) {
    TireDesignation tire = TireDesignation.parse(row.getString(0));
    if (tire.size() instanceof TireSize.Metric) {
      assertThat(row.getDouble(1) * 1.01).isLessThanOrEqualTo(diameter(tire));
      assertThat(row.getDouble(2))
          .isLessThanOrEqualTo(TireEnvelope.width(tire.sectionWidthMillimeters()));
    }
  }

  private static double diameter(TireDesignation tire) {
    double rim = tire.rim().millimeters();
    double overall =
        tire.overallDiameterInches().isPresent()
            ? TireDimensions.flotationDiameter(tire.overallDiameterInches().getAsDouble())
            : TireDimensions.overallDiameter(
                tire.sectionWidthMillimeters(), tire.aspect().orElseThrow(), rim);
    return TireEnvelope.diameter(rim, (overall - rim) / 2, TireEnvelope.HEIGHT_GROWTH);
  }

  private static double width(TireDesignation tire, double rimWidth) {
    double nominal = tire.sectionWidthMillimeters();
    double theoretical =
        tire.size() instanceof TireSize.Flotation
            ? TireDimensions.flotationTheoreticalRimWidth(nominal)
            : TireDimensions.theoreticalRimWidth(nominal, tire.aspect().orElseThrow());
    return TireEnvelope.width(TireDimensions.sectionWidth(nominal, theoretical, rimWidth));
  }
}
