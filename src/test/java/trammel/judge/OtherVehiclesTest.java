package trammel.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.book.Book;
import trammel.book.TestBook;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.catalog.CatalogFiles;
import trammel.derive.Derivation;
import trammel.fact.Fact;

/** Rules that name other vehicles as their condition are left out of the engine, and of nothing. */
class OtherVehiclesTest {
  private static final String RULE =
      """
      rules:
        - rule: shop.room
          title: A meter stays free
          kind: caution
          says: "{value} is left."
          reason: Mud packs.
          source: common practice
          since: 1.0
          about: clearance
          where: WHERE
          demands: { value: clearance.gap, at-least: 1000 mm }
          cases:
            - { case: a, clearance: { station: arch, gap: 1 mm }, expects: nothing }
            - { case: b, clearance: { station: arch, gap: 1 mm }, expects: nothing }
            - { case: c, clearance: { station: arch, gap: 1 mm }, expects: nothing }
            - { case: d, clearance: { station: arch, gap: 1 mm }, expects: nothing }
      """;

  private static final List<Fact> FACTS = facts();

  private static List<Fact> facts() {
    Build build =
        BuildFiles.read(
            Path.of("catalog-demo/builds/cairnback-too-wide.build.yaml"),
            CatalogFiles.read(Path.of("catalog-demo")));
    return Derivation.facts(build, LocalDate.of(2026, 11, 25));
  }

  /** What speaks is the same whether or not the engine holds it: only its size differs. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          { value: vehicle.vehicle, of: vehicle, is: cairnback }                     | true  | true
          { value: vehicle.vehicle, of: vehicle, is: skerrow }                       | false | false
          { value: vehicle.vehicle, of: vehicle, is-one-of: [skerrow, cairnback] }   | true  | true
          { value: vehicle.vehicle, of: vehicle, is-not: skerrow }                   | true  | true
          { value: vehicle.vehicle, of: vehicle, is-not: cairnback }                 | false | false
          { all: [ { value: clearance.station, is: arch }, { value: vehicle.vehicle, of: vehicle, is: skerrow } ] } | false | false
          { any: [ { value: clearance.station, is: arch }, { value: vehicle.vehicle, of: vehicle, is: skerrow } ] } | true  | true
          { none: [ { value: vehicle.vehicle, of: vehicle, is: skerrow } ] }         | true  | true
          { none: [ { value: vehicle.vehicle, of: vehicle, is: cairnback } ] }       | true  | false
          """)
  void namesOfVehiclesDecide(String where, boolean engaged, boolean speaks) {
    List<Book> books = TestBook.read(TestBook.shop("shop", RULE.replace("WHERE", where)));
    assertThat(books.get(0).over("cairnback").rules()).hasSize(engaged ? 1 : 0);
    try (Judge whole = Judge.of(books);
        Judge over = Judge.over("cairnback", books)) {
      Judgement expected = whole.judge(FACTS);
      assertThat(expected.findings().stream().anyMatch(found -> found.rule().equals("shop.room")))
          .isEqualTo(speaks);
      assertThat(found(over.judge(FACTS))).isNotEmpty().isEqualTo(found(expected));
      assertThat(over.rules()).extracting(Rule::id).contains("shop.room");
    }
  }

  private static List<String> found(Judgement judgement) {
    return judgement.findings().stream()
        .map(finding -> finding.identity() + " " + finding.kind() + " " + finding.decision())
        .toList();
  }

  /** A rule that names no vehicle is in the engine for every one of them. */
  @Test
  void whatNamesNoVehicleStays() {
    List<Book> books =
        TestBook.read(
            TestBook.shop("shop", RULE.replace("WHERE", "{ value: clearance.station, is: arch }")));
    assertThat(books.get(0).over("cairnback")).isEqualTo(books.get(0));
  }
}
