package trammel.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Books from the command line: in force, written, tried, read out and printed. */
class RulesTest {
  private static final String SHOP = "rules/shop-example";
  private static final String RUBS = "catalog-demo/builds/skerrow-rub-at-lock.build.yaml";

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
  }

  private String shown() {
    assertThat(out.toString().lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    return out.toString();
  }

  private Path started() {
    Path book = folder.resolve("own");
    assertThat(run("rules", "new", "skerrow", "--into", book.toString())).isZero();
    return book;
  }

  private void change(Path book, String from, String to) throws IOException {
    Path sheet = book.resolve("seen.rules.yaml");
    String text = Files.readString(sheet);
    assertThat(text).contains(from);
    Files.writeString(sheet, text.replace(from, to));
  }

  @Test
  void aBookThatIsNamedJudgesAndIsToldWithItsVersion() {
    run("check", RUBS);
    assertThat(shown()).doesNotContain("shop-example");
    run("check", "--book", SHOP, RUBS);
    assertThat(shown())
        .contains("book shop-example 1.3, 17 rules", "shop-example is stricter here");
  }

  @Test
  void aBookOfOtherVehiclesDoesNot() {
    run("check", "--book", SHOP, "catalog-demo/builds/cairnback-same-size.build.yaml");
    assertThat(shown()).startsWith("FITS.").doesNotContain("shop-example");
  }

  @Test
  void aBookThatCannotBeReadMeansNoVerdict() throws IOException {
    Path book = started();
    change(book, "at-least: 12 mm", "at-least: 12 °");
    assertThat(run("check", "--book", book.toString(), RUBS)).isEqualTo(2);
    assertThat(shown()).isEmpty();
    assertThat(err.toString()).contains("seen.rules.yaml:18:", "own");
    assertThat(run("check", "--book", folder.resolve("none").toString(), RUBS)).isEqualTo(2);
    assertThat(shown()).isEmpty();
  }

  @Test
  void aBookThatWasBegunHoldsAsItIs() {
    String book = started().toString();
    assertThat(run("rules", "try", book)).isZero();
    assertThat(shown()).contains("5 cases come out as expected.", "8 ± 2 mm, 4 mm outside");
    assertThat(run("rules", "proofread", book)).isZero();
    assertThat(shown()).contains("Nothing wrong");
    assertThat(run("rules", "new", "skerrow", "--into", book)).isEqualTo(2);
    assertThat(err.toString()).contains("is there already", "Nothing was written");
  }

  @Test
  void whatIsBegunIsPrintedToo() {
    assertThat(run("rules", "new", "stonecrop")).isZero();
    assertThat(shown()).contains("vehicles: [stonecrop]", "rule: clearance.mud-behind-front");
  }

  @Test
  void aCaseThatComesOutOtherwiseEndsWithFive() throws IOException {
    Path book = started();
    change(book, "gap: 14.5 mm ± 2 mm", "gap: 13.5 mm ± 2 mm");
    assertThat(run("rules", "try", book.toString())).isEqualTo(5);
    assertThat(shown())
        .contains("possibly caution. The sheet expects nothing", "4 cases come out as expected, 1");
    assertThat(run("rules", "proofread", book.toString())).isEqualTo(2);
    change(book, "case: just enough is left", "case: just enough is left\n        known-gap: soon");
    assertThat(run("rules", "try", book.toString())).isZero();
    assertThat(shown()).contains("4 cases come out as expected, 1 is a known gap.");
  }

  /** By hand: 14.5 − 2 lets the limit rise by 0.5 mm to 12.5; 8 + 2 lets it fall to 10. */
  @Test
  void howFarALimitCouldMove() {
    assertThat(run("rules", "gaps", started().toString())).isZero();
    assertThat(shown()).contains("Gap at least 12 mm: down by 2 mm; up by 0.5 mm.");
    assertThat(run("rules", "gaps", SHOP)).isZero();
    assertThat(shown())
        .contains("of 8 rows are met by some case", "The row at rules/shop-example/seen.csv:9:1:");
  }

  @ParameterizedTest
  @ValueSource(strings = {"clearance.mud-behind-front", "clearance.skerrow-seen"})
  void aSheetsRuleIsReadOutConditionByCondition(String id) {
    assertThat(run("rules", "read", "--book", SHOP, id, RUBS)).isZero();
    assertThat(shown())
        .contains("On Skerrow on wheels that stand far out:", "speaks, ", "silent", "not hold");
  }

  @Test
  void aRuleOfTheBaseBookIsReadOutWithWhatItFound() {
    assertThat(run("rules", "read", "clearance.rear-mount", RUBS)).isZero();
    assertThat(shown())
        .contains("front-left:rear-mount: speaks, conflict", "outside")
        .contains("  Examples:\n    - 8 mm into it: conflict\n");
    assertThat(run("rules", "read", "clearance.rear-mont", RUBS)).isEqualTo(2);
    assertThat(err.toString()).contains("Did you mean clearance.rear-mount?");
  }

  @Test
  void aRuleIsFoundByItsEarlierId() {
    assertThat(run("rules", "show", "--book", SHOP, "wheel.spacer-check")).isZero();
    assertThat(out.toString()).startsWith("wheel.retorque-spacers");
    assertThat(run("rules", "list", "--book", SHOP)).isZero();
    assertThat(out.toString()).contains("clearance.skerrow-seen");
  }

  @Test
  void factsAreShownByTheNamesThatRulesUse() {
    assertThat(run("rules", "facts", RUBS, "clearance")).isZero();
    assertThat(shown()).contains("clearance (front-left:rear-mount)", "  gap ", "mm");
    assertThat(run("rules", "facts", RUBS, "clearence")).isEqualTo(2);
    assertThat(err.toString()).contains("Did you mean clearance?");
  }

  /** The words are those of the sheet, which holds two. */
  @ParameterizedTest
  @CsvSource({"html, <h2>, <h3>, <p>", "markdown, '## ', '### ', ''"})
  void theDefaultsOfABookArePrintedWithAllItSaysOfThem(
      String form, String book, String value, String line) {
    assertThat(run("rules", "print", "--format", form, "--book", SHOP)).isZero();
    assertThat(out.toString())
        .containsSubsequence(
            book + "Book shop-example 1.3, defaults",
            line + "For skerrow, stonecrop: assumed where neither the profile nor an overlay",
            value + "Frame end front 500 ± 40 mm (20 in)",
            line + "Because: the frame",
            line + "By: our own: five Skerrows and four Stonecrops, unladen, on book tires",
            "outline.frame-end-front",
            value + "Frame end rear 515 ± 40 mm",
            line + "By: our own: the same nine vehicles",
            "outline.frame-end-rear");
    assertThat(run("rules", "print", "--format", form)).isZero();
    assertThat(out.toString()).isNotEmpty().doesNotContain("defaults");
  }

  @Test
  void aBookWithDefaultsIsHeldAgainstACatalogOrSaysThatItIsNot() throws IOException {
    assertThat(run("rules", "proofread", SHOP, "--on", "2026-11-25")).isZero();
    assertThat(shown()).contains("2 defaults read.", "was not looked at: name a");
    assertThat(run("rules", "proofread", SHOP, "--catalog", "catalog-demo")).isZero();
    assertThat(shown()).contains("Nothing wrong").doesNotContain("was not looked at");
    assertThat(run("rules", "proofread", started().toString())).isZero();
    assertThat(shown()).doesNotContain("was not looked at");
  }

  @Test
  void thePrintedPageTakesNothingFromElsewhereAndNoTextOfABookAsMarks() throws IOException {
    Path book = started();
    change(
        book,
        "reason: Packed mud rubs",
        "reason: <script>alert(1)</script> & [x](http://a.b) Packed mud rubs");
    assertThat(run("rules", "print", "--book", book.toString())).isZero();
    assertThat(out.toString())
        .contains("default-src 'none'", "&lt;script&gt;alert(1)&lt;/script&gt; &amp;")
        .contains("clearance.mud-behind-front", "wheel.bore-loose", "just enough is left: nothing")
        .contains("<li>clear by just what is known: nothing</li>")
        .doesNotContain("<script", "href", "src=", "url(", "@import", "unsafe-inline");
    assertThat(run("rules", "print", "--format", "markdown", "--book", book.toString())).isZero();
    assertThat(out.toString())
        .contains("\\[x\\](http://a.b)", "&lt;script\\>", "### A hub-centered wheel")
        .doesNotContain("<script");
  }
}
