package trammel.report;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Text no wider than 80 columns. */
class PageTest {
  @Property
  void noLineIsWiderThanThePageAndNoLetterIsLost(
      @ForAll @Size(max = 40) java.util.List<@IntRange(min = 1, max = 200) Integer> lengths) {
    String words = String.join(" ", lengths.stream().map("±"::repeat).toList());
    String text = new Page().paragraph("1. ", "   ", words).toString();
    assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    assertThat(text.replaceAll("[^±]", "")).isEqualTo(words.replace(" ", ""));
  }

  @Test
  void aLineIsBrokenBetweenWordsAndIndentedAfterTheFirst() {
    String text =
        new Page().paragraph("1. ", "   ", "a".repeat(50) + " " + "b".repeat(50)).toString();
    assertThat(text).isEqualTo("1. " + "a".repeat(50) + "\n   " + "b".repeat(50) + "\n");
  }

  @Test
  void gapsNeverDouble() {
    assertThat(new Page().gap().paragraph("", "", "a").gap().gap().paragraph("", "", "b"))
        .hasToString("a\n\nb\n");
  }
}
