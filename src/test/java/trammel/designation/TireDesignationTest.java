package trammel.designation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Designations from registers, manuals and tables: {@code shared/reference/tire-designations.csv}.
 */
class TireDesignationTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(
      files = "shared/reference/tire-designations.csv",
      useHeadersInDisplayName = true,
      encoding = "UTF-8")
  void everyDesignationOfTheListMeansWhatItsSourceSays(ArgumentsAccessor row) {
    String text = row.getString(1);
    String refusal = row.getString(12);
    if (refusal != null) {
      assertThatThrownBy(() -> TireDesignation.parse(text))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining(text)
          .hasMessageContaining(refusal)
          .hasMessageContaining("; expected ");
      return;
    }
    TireDesignation tire = TireDesignation.parse(text);
    assertThat(tire.toString()).isEqualTo(row.getString(2));
    assertThat(TireDesignation.parse(tire.toString())).isEqualTo(tire);
    assertThat(tire.family().name()).isEqualTo(row.getString(3));
    assertThat(tire.sectionWidthMillimeters()).isEqualTo(row.getDouble(4));
    assertThat(tire.aspect()).isEqualTo(optional(row.getInteger(5)));
    assertThat(tire.rim().code()).isEqualTo(row.getDouble(6));
    assertThat(kilograms(tire.loadIndex())).isEqualTo(optional(row.getInteger(7)));
    assertThat(kilograms(tire.dualLoadIndex())).isEqualTo(optional(row.getInteger(8)));
    assertThat(tire.speedSymbol().map(SpeedSymbol::kilometersPerHour))
        .isEqualTo(Optional.ofNullable(row.getInteger(9)));
    assertThat(tire.loadRange().map(LoadRange::name))
        .isEqualTo(Optional.ofNullable(row.getString(10)));
    String warning = row.getString(11);
    if (warning == null) {
      assertThat(tire.warnings()).isEmpty();
    } else {
      assertThat(tire.warnings()).anyMatch(w -> w.contains(warning));
    }
  }

  private static OptionalInt optional(@Nullable Integer value) {
    return value == null ? OptionalInt.empty() : OptionalInt.of(value);
  }

  private static OptionalInt kilograms(Optional<LoadIndex> index) {
    return index.map(LoadIndex::kilograms).orElse(OptionalInt.empty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "lt285/70r17 lre 121/118q",
        "LT285/70R17/E 121/118Q",
        "LT285/70R17 121/118Q Load Range E",
        "LT285/70R17E 121/118 Q",
        "LT 285 / 70 R 17 10PR 121 / 118 Q"
      })
  void spellingsOfOneTireAreOneValue(String text) {
    assertThat(TireDesignation.parse(text))
        .isEqualTo(TireDesignation.parse("LT285/70R17 LRE 121/118Q"));
  }

  @Test
  void trailingCIsALoadRangeBehindLtAndFlotationAndCommercialOtherwise() {
    assertThat(TireDesignation.parse("LT235/85R16C").loadRange()).contains(LoadRange.C);
    assertThat(TireDesignation.parse("LT235/85R16C").suffix())
        .isEqualTo(TireDesignation.Suffix.NONE);
    assertThat(TireDesignation.parse("LT315/70R17/C").loadRange()).contains(LoadRange.C);
    assertThat(TireDesignation.parse("31x10.50R15C").loadRange()).contains(LoadRange.C);
    assertThat(TireDesignation.parse("215/65R16C").loadRange()).isEmpty();
    assertThat(TireDesignation.parse("215/65R16C").family())
        .isEqualTo(TireDesignation.Family.COMMERCIAL);
  }

  @Test
  void aLoneEBehindTheIndicesIsALoadRangeAndTheSymbolIsMissed() {
    TireDesignation tire = TireDesignation.parse("LT285/70R17 121/118 E");
    assertThat(tire.loadRange()).contains(LoadRange.E);
    assertThat(tire.speedSymbol()).isEmpty();
    assertThat(tire.warnings()).singleElement().asString().contains("without speed symbol");
  }

  @Test
  void prefixAndSuffixLtAreDifferentTires() {
    assertThat(TireDesignation.parse("315/70R17LT"))
        .isNotEqualTo(TireDesignation.parse("LT315/70R17"));
  }

  @Test
  void ltBeforeAnInchSizeSaysWhatLtBehindItSays() {
    assertThat(TireDesignation.parse("LT31X10.50R15"))
        .isEqualTo(TireDesignation.parse("31x10.50R15LT"));
  }

  @ParameterizedTest
  @CsvSource({
    "225/45ZR17 (94Y), 225/45ZR17 (94Y)",
    "225/45 ZR 17 94W, 225/45ZR17 94W",
    "265/70R17 115T m+s 3pmsf tl, 265/70R17 115T TL M+S 3PMSF",
    "265/70R17 115T Reinforced, 265/70R17 115T XL",
    "ST205/75R14 LRD 105/101M, ''",
    "ST205/75R14D, ST205/75R14 LRD",
    "7.50-16LT, 7.50-16LT",
    "12.00R20, 12.00R20",
  })
  void marksAreReadAndPrintedInOneOrder(String text, String canonical) {
    if (canonical.isEmpty()) {
      assertThatThrownBy(() -> TireDesignation.parse(text))
          .hasMessageContaining("two load indices");
    } else {
      assertThat(TireDesignation.parse(text)).hasToString(canonical);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "P215/65R16C, prefix P and suffix C",
    "265/70R17 121/118S, two load indices on 265/70",
    "265/70R17.5 121S, rim code 17.5 on a metric size",
    "195/70HR14 89T, speed letter H in the size and symbol T",
    "265/70R17 115T TL TT, both TL and TT",
    "265/70R17 115T XL SL, load classes XL and SL",
    "LT265/70R17 LRE 8PR, load ranges E and D",
    "LT265/70R17 7PR, '7PR' as a load range",
    "P31x10.50R15, prefix P before the inch size",
    "31x10.50R15LT 109Q 108Q, a service description twice",
    "265/70R17 115X, 'X' as a speed symbol",
    "405/70R17, section width 405",
    "265/20R17, aspect ratio 20",
    "33x12.50R34LT, '34' as a rim code",
    "22x8.00R22LT, overall diameter 22 on rim 22",
    "265/70R17 115T black letters, found 'BLACK LETTERS'",
    "'', found the end of the text",
  })
  void contradictionsAreRefusedByName(String text, String message) {
    assertThatThrownBy(() -> TireDesignation.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(message);
  }

  @ParameterizedTest
  @CsvSource({
    "267/70R17 116T, does not end in 5",
    "265/72R17 116T, no multiple of 5",
    "225/45ZR17 94V, ZR stands for more than 240",
    "265/70R17 LRE 116T, look for LT on the sidewall",
  })
  void whatIsUnusualIsWarnedOf(String text, String warning) {
    assertThat(TireDesignation.parse(text).warnings()).singleElement().asString().contains(warning);
  }
}
