package trammel.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.catalog.AssumedValue;
import trammel.quantity.Input;

/** What a default of a book may be. */
class DefaultReaderTest {
  private static String entry(String key, String value) {
    return "  - value: "
        + key
        + "\n    is: "
        + value
        + "\n    because: seen so\n    source: our own\n";
  }

  private static TestBook book(String... entries) {
    return TestBook.shop("hillside-shop", "defaults:\n" + String.join("", entries));
  }

  @Test
  void itBearsItsBookAndItsWords() {
    List<AssumedValue> read =
        TestBook.read(book(entry("front.support.stop-crush", "18 mm ± 4 mm"))).get(0).defaults();
    assertThat(read).hasSize(1);
    AssumedValue value = read.get(0);
    assertThat(value.whose()).isEqualTo("book hillside-shop 1.2");
    assertThat(value.keys()).containsExactly("front", "support", "stop-crush");
    assertThat(value.is().value()).isEqualTo(18);
    assertThat(value.is().expanded()).isEqualTo(4);
    Input input = value.is().input();
    assertThat(input).isNotNull();
    assertThat(input.source()).isEqualTo("assumed by book hillside-shop 1.2: our own");
  }

  /** A tape's own ± is 3 mm (Instrument). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "front.support.stop-crush | 18 mm | expected ± of at least 3.0 mm",
        "front.support.stop-crush | 18 mm ± 2 mm | expected ± of at least 3.0 mm",
        "front.support.stop-crush | 180 mm ± 4 mm | expected 0.0 to 120.0",
        "front.support.stop-crush | 18 kg ± 4 kg | kg",
        "front.rating | 1200 kg | expected ± of at least something",
        "front.support.stop-crash | 18 mm ± 4 mm | Did you mean stop-crush?",
        "front.support | 18 mm ± 4 mm | leads to no quantity",
        "front.layout | 18 mm ± 4 mm | leads to no quantity"
      })
  void whatCannotBeAssumedIsRefusedWithItsPlace(String key, String value, String says) {
    List<String> problems = TestBook.problems(book(entry(key, value)));
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0)).contains("seen.rules.yaml:2:").contains(says);
  }

  @Test
  void aBookAssumesAValueOnce() {
    List<String> problems =
        TestBook.problems(
            book(
                entry("front.support.stop-crush", "18 mm ± 4 mm"),
                entry("front.support.stop-crush", "18 mm ± 4 mm")));
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0))
        .contains("seen.rules.yaml:6:", "a second default of \"front.support.stop-crush\"")
        .contains("seen.rules.yaml:2:");
  }
}
