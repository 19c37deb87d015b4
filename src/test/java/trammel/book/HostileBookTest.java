package trammel.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.read.UnreadableFile;

/** What a sheet might hold to do harm is refused at its place, and soon. */
class HostileBookTest {
  private static final Duration SOON = Duration.ofSeconds(60);
  private static final String RULE =
      """
      rule: clearance.room
      title: Room
      kind: caution
      says: Close.
      reason: Mud.
      source: common practice
      since: 1.0
      about: clearance
      demands: DEMAND
      """
          + TestBook.cases("clearance: { station: arch }");
  private static final String LEAF = "{ value: clearance.gap, at-least: 12 mm }";

  @TempDir Path folder;

  private static List<String> problems(TestBook book) {
    return Assertions.assertTimeoutPreemptively(SOON, () -> TestBook.problems(book));
  }

  private static List<String> demanding(String demand) {
    return problems(TestBook.ofRule(RULE.replace("DEMAND", demand)));
  }

  @Test
  void theRuleItselfIsHarmless() {
    assertThat(demanding(LEAF)).isEmpty();
  }

  @Test
  void aMegabyteOfBracketsIsRefused() {
    assertThat(demanding("{ all: ".repeat(140_000)))
        .singleElement()
        .asString()
        .contains("nested more than 50 deep");
    assertThat(problems(TestBook.shop("deep", "[".repeat(1_000_000))))
        .singleElement()
        .asString()
        .contains("nested more than 50 deep");
  }

  @Test
  void conditionsAreBoundedInDepthAndNumber() {
    assertThat(demanding("{ all: [".repeat(12) + LEAF + "] }".repeat(12)))
        .singleElement()
        .asString()
        .contains("nested more than 10 deep");
    String many = IntStream.range(0, 300).mapToObj(i -> LEAF).collect(Collectors.joining(", "));
    assertThat(demanding("{ all: [" + many + "] }"))
        .singleElement()
        .asString()
        .contains("more than 200 conditions in one rule");
    String joined =
        IntStream.range(0, 4)
            .mapToObj(i -> "{ value: ride-height.lift, of: same-wheel, at-least: " + i + " mm }")
            .collect(Collectors.joining(", "));
    assertThat(demanding("{ all: [" + joined + "] }"))
        .singleElement()
        .asString()
        .contains("more than 3 conditions on other facts");
  }

  @Test
  void aHundredThousandRulesAreTooMany() {
    String few = "  - { rule: a.b }\n".repeat(1);
    TestBook book = TestBook.shop("many", "rules:\n" + few.repeat(100_000));
    assertThat(problems(book)).isNotEmpty().allMatch(p -> p.startsWith("many/seen.rules.yaml"));
    TestBook spread = TestBook.shop("spread", "rules: []\n");
    String sheet =
        TestBook.sheet(
            IntStream.range(0, 600)
                .mapToObj(
                    i ->
                        RULE.replace("DEMAND", LEAF)
                            .replace("clearance.room", "clearance.room-FILE-" + i))
                .toArray(String[]::new));
    for (int i = 0; i < 20; i++) {
      spread.with("sheet-" + i + ".rules.yaml", sheet.replace("FILE", "f" + i));
    }
    assertThat(problems(spread))
        .singleElement()
        .asString()
        .contains("more than 10000 rules in one book");
  }

  @Test
  void anAliasBombIsRefused() {
    assertThat(
            problems(
                TestBook.shop(
                    "bomb", "a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\nrules: [*c, *c]\n")))
        .anyMatch(p -> p.contains("the anchor \"&a\""))
        .anyMatch(p -> p.contains("the alias \"*c\""));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "clearance.r\u043Eom", // Cyrillic small letter o
        "cl\u0435arance.room", // Cyrillic small letter ie
        "clearance.roo\uFF4D", // fullwidth small letter m
        "clearance.r\u00F3om",
        "Clearance.room",
        "clearance.room.more",
        "clearance",
        "clearance.room;drop",
        "../clearance.room"
      })
  void anIdIsPlain(String id) {
    assertThat(
            problems(TestBook.ofRule(RULE.replace("clearance.room", id).replace("DEMAND", LEAF))))
        .singleElement()
        .asString()
        .contains("is no name for a rule")
        .startsWith("hillside-shop/seen.rules.yaml:2:5");
  }

  @Test
  void whatTurnsTheTextAroundIsRefused() {
    String turned = RULE.replace("clearance.room", "clearance.\u202Emoor").replace("DEMAND", LEAF);
    assertThat(problems(TestBook.ofRule(turned)))
        .singleElement()
        .asString()
        .contains("U+202E (right-to-left override)");
  }

  @Test
  void markupInATextIsText() {
    String marked =
        RULE.replace("Close.", "\"<script>alert(1)</script> & {gap}\"").replace("DEMAND", LEAF);
    SheetRule rule = TestBook.read(TestBook.ofRule(marked)).get(0).rules().get(0);
    assertThat(rule.says()).isEqualTo("<script>alert(1)</script> & {gap}");
  }

  @Test
  void textsAreNotEndless() {
    assertThat(
            problems(
                TestBook.ofRule(RULE.replace("Mud.", "m".repeat(2001)).replace("DEMAND", LEAF))))
        .singleElement()
        .asString()
        .contains("reason: a text of 2001 characters; expected at most 2000");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"eval(1)", "=1+1", "${jndi:x}", "T(java.lang.Runtime)", "12 mm; rm", "1e999 mm"})
  void aLimitIsAQuantityAndNothingElse(String limit) {
    assertThat(demanding("{ value: clearance.gap, at-least: \"" + limit + "\" }")).hasSize(1);
  }

  private List<Book> readFolder() {
    return Books.read(List.of(new DiskFolder(folder)), List.of());
  }

  private void write(TestBook book) throws IOException {
    trammel.read.Problems none = new trammel.read.Problems();
    for (String name : book.names(none)) {
      Files.write(folder.resolve(name), book.read(name, Long.MAX_VALUE, none).orElseThrow());
    }
  }

  @Test
  void aFolderIsReadFromDisk() throws IOException {
    write(TestBook.ofRule(RULE.replace("DEMAND", LEAF)));
    assertThat(readFolder()).singleElement().extracting(Book::name).isEqualTo("hillside-shop");
  }

  @Test
  void aLinkOutOfTheFolderIsNotFollowed(@TempDir Path elsewhere) throws IOException {
    write(TestBook.ofRule(RULE.replace("DEMAND", LEAF)));
    Path secret = Files.writeString(elsewhere.resolve("secret.rules.yaml"), "rules: []\n");
    Files.createSymbolicLink(folder.resolve("link.rules.yaml"), secret);
    assertThatThrownBy(this::readFolder)
        .isInstanceOf(UnreadableFile.class)
        .hasMessageContaining("link.rules.yaml")
        .hasMessageContaining("a link that leads out of its book's folder");
  }

  @Test
  void aLargeFileIsRefusedBeforeItIsRead() throws IOException {
    write(TestBook.ofRule(RULE.replace("DEMAND", LEAF)));
    Files.write(folder.resolve("large.rules.yaml"), new byte[4_000_000]);
    assertThatThrownBy(this::readFolder)
        .isInstanceOf(UnreadableFile.class)
        .hasMessageContaining("large.rules.yaml: this file has more than 3 MB");
  }

  @Test
  void aFolderWithoutAManifestIsNoBook() {
    assertThatThrownBy(this::readFolder).hasMessageContaining("no book.yaml in this folder");
  }
}
