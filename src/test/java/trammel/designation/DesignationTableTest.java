package trammel.designation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The published tables of load index, speed symbol, rim code and load range, row by row. */
class DesignationTableTest {

  @ParameterizedTest(name = "{0} = {1} kg")
  @CsvFileSource(files = "shared/reference/load-index.csv", useHeadersInDisplayName = true)
  void loadIndexCarriesTheLoadOfTheOrderOf1994(String index, int kilograms) {
    assertThat(LoadIndex.parse(index).kilograms()).hasValue(kilograms);
    assertThat(LoadIndex.parse(index)).hasToString(index);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "59", "141", "152", "279"})
  void loadIndexOutsideTheTableHasNoLoadAndSaysWhy(String index) {
    assertThat(LoadIndex.parse(index).kilograms()).isEmpty();
    assertThat(LoadIndex.parse(index).whyNoLoad()).contains(index, "60 to 140", "sidewall");
  }

  @ParameterizedTest
  @ValueSource(strings = {"280", "1000", "12kg", "", "-1"})
  void whatIsNoLoadIndexIsRefused(String text) {
    assertThatThrownBy(() -> LoadIndex.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("as a load index; expected a whole number from 0 to 279");
  }

  @ParameterizedTest(name = "{0} = {1} km/h")
  @CsvFileSource(files = "shared/reference/speed-symbol.csv", useHeadersInDisplayName = true)
  void speedSymbolStandsForTheSpeedOfTheOrderOf1994(String symbol, int speed) {
    assertThat(SpeedSymbol.parse(symbol).kilometersPerHour()).isEqualTo(speed);
    assertThat(SpeedSymbol.parse(symbol)).hasToString(symbol);
  }

  @Test
  void speedSymbolsAreOrderedBySpeedSoThatHStandsBetweenUAndV() {
    List<SpeedSymbol> symbols = new ArrayList<>(Arrays.asList(SpeedSymbol.values()));
    assertThat(symbols)
        .hasSize(17)
        .isSortedAccordingTo(
            (a, b) -> Integer.compare(a.kilometersPerHour(), b.kilometersPerHour()));
    assertThat(SpeedSymbol.H).isGreaterThan(SpeedSymbol.U).isLessThan(SpeedSymbol.V);
  }

  @ParameterizedTest
  @ValueSource(strings = {"I", "O", "X", "Z", "HH", ""})
  void whatIsNoSpeedSymbolIsRefused(String text) {
    assertThatThrownBy(() -> SpeedSymbol.parse(text)).hasMessageContaining("as a speed symbol");
  }

  @ParameterizedTest(name = "{0} = {1} mm")
  @CsvFileSource(files = "shared/reference/rim-code.csv", useHeadersInDisplayName = true)
  void rimCodeRoundsHalvesUp(String code, int millimeters) {
    RimCode rim = RimCode.parse(code);
    assertThat(rim.millimeters()).isEqualTo(millimeters);
    assertThat(rim).hasToString(code);
    assertThat(RimCode.validCodes()).contains(rim);
  }

  @Test
  void theListOfRimCodesIsThatOfTheTable() {
    assertThat(RimCode.validCodes()).hasSize(25).isSortedAccordingTo(byCode());
    assertThat(RimCode.parse("17.5").exactMillimeters()).isEqualTo(444.5);
  }

  private static java.util.Comparator<RimCode> byCode() {
    return java.util.Comparator.comparingDouble(RimCode::code);
  }

  @ParameterizedTest
  @ValueSource(strings = {"9", "31", "18.5", "16.6", "R17", "406", ""})
  void whatIsNoRimCodeIsRefused(String text) {
    assertThatThrownBy(() -> RimCode.parse(text)).hasMessageContaining("as a rim code");
  }

  @ParameterizedTest(name = "{0} = {1} ply")
  @CsvFileSource(files = "shared/reference/load-range.csv", useHeadersInDisplayName = true)
  void loadRangeHasThePlyRatingAndPressureOfTheTables(
      String letter, int plyRating, @Nullable Double psi) {
    LoadRange range = LoadRange.parse(letter);
    assertThat(range.plyRating()).isEqualTo(plyRating);
    assertThat(LoadRange.parse(plyRating + "PR")).isEqualTo(range);
    assertThat(LoadRange.parse("load range " + letter)).isEqualTo(range);
    if (psi == null) {
      assertThat(range.ltReferencePressure()).isEmpty();
    } else {
      // NIST SP 811 (2008), appendix B: 1 psi = 6.894757 kPa.
      assertThat(range.ltReferencePressure().orElseThrow())
          .isCloseTo(psi * 6.894757, Offset.offset(1e-4));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"I", "K", "O", "7PR", "26PR", ""})
  void whatIsNoLoadRangeIsRefused(String text) {
    assertThatThrownBy(() -> LoadRange.parse(text)).hasMessageContaining("as a load range");
  }
}
