package trammel.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trammel.subject.Position.FRONT_LEFT;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.book.Books;
import trammel.book.TestBook;
import trammel.build.BuildFiles;
import trammel.fact.Fact;
import trammel.fact.Standing;
import trammel.judge.Judge;
import trammel.read.UnreadableFile;

/**
 * Every waiver with every rule: the sheets are checked for 2026-05-31. A shop's book tightens two
 * rules of the base book, one of them safety-critical, and has a rule under a new name.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WaiverCombinationsTest {
  private static final String BOOK =
      """
      rules:
        - rule: shop.room
          title: Twelve millimeters stay free
          kind: conflict
          says: "{value} is left."
          reason: Mud packs.
          source: our own
          since: 1.0
          stricter-than: clearance.rear-mount
          about: clearance
          demands: { value: clearance.gap, at-least: 12 mm }
          CASES
        - rule: shop.codes
          title: The rim codes agree
          kind: conflict
          says: They do not.
          reason: It comes off.
          source: our own
          since: 1.0
          stricter-than: tire.rim-code
          about: tire-on-rim
          demands: { value: tire-on-rim.rim-code-agrees, is: yes }
          TIRES
        - rule: shop.new-name
          title: Less than a meter is free
          kind: conflict
          says: "{value} is left."
          reason: Something is amiss.
          source: our own
          since: 1.0
          replaces: [shop.old-name, shop.older-name]
          about: clearance
          demands: { value: clearance.gap, at-most: 1 m }
          CASES
        - rule: shop.new-critical
          title: Less than two meters are free
          kind: conflict
          says: "{value} is left."
          reason: Something is amiss.
          source: our own
          since: 1.0
          safety-critical: yes
          replaces: [shop.old-critical]
          about: clearance
          demands: { value: clearance.gap, at-most: 2 m }
          CASES
      """;

  private final Judge judge = Judge.of(Books.read(List.of(book()), Judge.knownRules()));

  private static TestBook book() {
    return TestBook.shop(
        "shop",
        BOOK.replace("CASES", cases("clearance: { station: arch, gap: 500 mm }"))
            .replace("TIRES", cases("tire-on-rim: { rim-code-agrees: yes }")));
  }

  private static String cases(String fact) {
    String one = "\n      - { case: so, " + fact + ", expects: nothing }";
    return "cases:" + one.repeat(4);
  }

  @AfterAll
  void close() {
    judge.close();
  }

  private static Fact fact(String found) {
    return switch (found) {
      case "short" -> Sheet.gap(FRONT_LEFT, Standing.WORSE_OR_NEW, -6, 2);
      case "tight" -> Sheet.gap(FRONT_LEFT, Standing.WORSE_OR_NEW, 9, 2);
      case "sound" -> Sheet.gap(FRONT_LEFT, Standing.WORSE_OR_NEW, 30, 2);
      case "far" -> Sheet.gap(FRONT_LEFT, Standing.WORSE_OR_NEW, 1500, 2);
      case "farther" -> Sheet.gap(FRONT_LEFT, Standing.WORSE_OR_NEW, 2500, 2);
      case "rim" -> Sheet.mismatchedRim(FRONT_LEFT);
      default -> throw new IllegalArgumentException(found);
    };
  }

  @ParameterizedTest(name = "{0} {1} {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # found  | waived                                        | last day   | counts | told
          short    | clearance.rear-mount@front-left:rear-mount    | 2026-06-01 | yes |
          short    | clearance.rear-mount@front-left:rear-mount    | 2026-05-31 | yes |
          short    | clearance.rear-mount@front-left:rear-mount    | 2026-05-30 | no  | its last day was 2026-05-30
          tight    | clearance.rear-mount@front-left:rear-mount    | 2026-06-01 | yes |
          tight    | clearance.rear-mount@front-left:rear-mount    | 2026-05-30 | no  | its last day was 2026-05-30
          sound    | clearance.rear-mount@front-left:rear-mount    | 2026-06-01 | no  | is not needed
          sound    | clearance.rear-mount@front-left:rear-mount    | 2026-05-30 | no  | its last day was 2026-05-30
          short    | clearance.rear-mount@front-right:rear-mount   | 2026-06-01 | no  | is not needed
          short    | clearance.rear-mount@front-left:arch          | 2026-06-01 | no  | is not needed
          short    | clearance.rear-mount                          | 2026-06-01 | no  | is not needed
          tight    | shop.room@front-left:rear-mount               | 2026-06-01 | no  | Waive that one
          short    | shop.room@front-left:rear-mount               | 2026-05-30 | no  | its last day was 2026-05-30
          rim      | tire.rim-code@front-left:tire                 | 2026-06-01 | no  | is refused: the rule is safety-critical
          rim      | tire.rim-code@front-left:tire                 | 2026-05-30 | no  | is refused: the rule is safety-critical
          rim      | tire.rim-code@rear-left:tire                  | 2026-06-01 | no  | is refused: the rule is safety-critical
          rim      | shop.codes@front-left:tire                    | 2026-06-01 | no  | Waive that one
          sound    | tire.rim-code@front-left:tire                 | 2026-06-01 | no  | is refused: the rule is safety-critical
          far      | shop.new-name@front-left:rear-mount           | 2026-06-01 | yes |
          far      | shop.old-name@front-left:rear-mount           | 2026-06-01 | yes | counts for shop.new-name@front-left:rear-mount
          far      | shop.older-name@front-left:rear-mount         | 2026-06-01 | yes | counts for shop.new-name@front-left:rear-mount
          far      | shop.old-name@front-left:rear-mount           | 2026-05-30 | no  | its last day was 2026-05-30
          far      | shop.old-name@front-right:rear-mount          | 2026-06-01 | no  | is not needed
          sound    | shop.old-name@front-left:rear-mount           | 2026-06-01 | no  | is not needed
          farther  | shop.new-critical@front-left:rear-mount       | 2026-06-01 | no  | is refused: the rule is safety-critical
          farther  | shop.old-critical@front-left:rear-mount       | 2026-06-01 | no  | is refused: the rule is safety-critical
          short    | clearance.rear-mont@front-left:rear-mount     | 2026-06-01 | no  | Did you mean clearance.rear-mount?
          short    | nothing.like-it@front-left:rear-mount         | 2026-06-01 | no  | names no rule in force
          """)
  void aWaiver(String found, String waived, LocalDate lastDay, String counts, String told) {
    Report report = new Sheet().waiving(waived, lastDay).report(judge, fact(found));
    boolean any = report.items().anyMatch(item -> item.waived() != null);
    assertThat(any).isEqualTo(counts.equals("yes"));
    assertThat(report.notices()).hasSize(told == null ? 0 : 1);
    String text = TextReport.of(report).replaceAll("\\s+", " ");
    assertThat(text).contains(told == null ? "" : told);
    assertThat(text).contains(any ? "WAIVED by the workshop until " + lastDay : waived);
  }

  @ParameterizedTest
  @ValueSource(strings = {"finding", "reason", "decided-by", "last-day"})
  void aWaiverWithoutOneOfItsFieldsIsNoWaiver(String missing, @TempDir Path folder)
      throws IOException {
    String whole =
        """
        build: Test
        vehicle: cairnback
        changes:
          - { add: HR-2857017, at: all }
        waivers:
          - finding: clearance.liner@front-left:liner
            reason: seen
            decided-by: the owner
            last-day: 2027-03-31
        """;
    Path file = folder.resolve("s.build.yaml");
    Files.writeString(file, whole);
    assertThat(BuildFiles.read(file, Sheet.CATALOG).waivers()).hasSize(1);
    Files.writeString(file, whole.replaceFirst("(- )?" + missing + ": .*\n *", "$1"));
    assertThatThrownBy(() -> BuildFiles.read(file, Sheet.CATALOG))
        .isInstanceOf(UnreadableFile.class)
        .hasMessageContaining(missing)
        .hasMessageContaining("s.build.yaml:6");
  }
}
