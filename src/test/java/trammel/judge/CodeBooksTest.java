package trammel.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.book.Asked;
import trammel.book.Book;
import trammel.book.Books;
import trammel.book.Case;
import trammel.book.CodeBooks;
import trammel.book.Demand;
import trammel.book.Interpreter;
import trammel.book.LawOutcome;
import trammel.book.Manifest;
import trammel.book.RuleKind;
import trammel.book.SheetRule;
import trammel.catalog.VehicleProfile;
import trammel.catalog.VehicleProfile.VehicleClass;
import trammel.fact.Fact;
import trammel.fact.LegalMeasures;
import trammel.read.Required;

/**
 * The books of the law, as they are packed in the program, do what the texts say. Figures: {@code
 * shared/reference/code-limits.csv}, whose rows name the statutes (grade A: the text was read).
 */
class CodeBooksTest {
  private static final List<Book> BOOKS = Books.read(CodeBooks.all(), Judge.knownRules());
  private static final Judges JUDGES = Judges.of(BOOKS);
  private static final String SECOND_HAND = "read at second hand";

  /** One row of the table of limits. */
  private record Row(
      String book,
      VehicleClass vehicle,
      String weighed,
      List<String> weights,
      String measure,
      String limit,
      String outcome) {

    static List<Row> all() throws IOException {
      return Files.readAllLines(Path.of("shared/reference/code-limits.csv")).stream()
          .skip(2)
          .map(line -> line.split(",", -1))
          .map(
              cells ->
                  new Row(
                      cells[0],
                      cells[1].equals("passenger-car")
                          ? VehicleClass.PASSENGER_CAR
                          : VehicleClass.LIGHT_TRUCK,
                      cells[2],
                      List.of(cells[3] + " lb", cells[4] + " lb"),
                      cells[5],
                      cells[6],
                      cells[7]))
          .toList();
    }

    LegalMeasures with(String weight, String value) {
      return Measures.of(vehicle, Map.of(weighed, weight, measure, value));
    }

    /** The limit and a twentieth of its unit, which no class or rounding reaches. */
    String beyond() {
      String[] parts = limit.split(" ", -1);
      return Double.parseDouble(parts[0]) + 0.05 + " " + parts[1];
    }
  }

  @AfterAll
  static void close() {
    JUDGES.close();
  }

  private static Manifest manifest(String book) {
    return BOOKS.stream()
        .map(Book::manifest)
        .filter(manifest -> manifest.name().equals(book))
        .findFirst()
        .orElseThrow();
  }

  /** Findings of the law that are certain, at a place. */
  private static List<Finding> certain(String place, Fact... facts) {
    return JUDGES.over("skerrow", place).judge(List.of(facts)).findings().stream()
        .filter(finding -> finding.kind() == Kind.LAW && !finding.possibly())
        .toList();
  }

  private static LawOutcome outcome(String place, Finding finding) {
    LawOutcome outcome = JUDGES.over("skerrow", place).rule(finding.rule()).orElseThrow().outcome();
    return outcome == null ? LawOutcome.NOT_JUDGED : outcome;
  }

  private static List<String> ids(List<Finding> findings) {
    return findings.stream().map(Finding::rule).toList();
  }

  @TestFactory
  Stream<DynamicTest> limitsAreThoseOfTheStatutes() throws IOException {
    return Row.all().stream()
        .flatMap(
            row ->
                row.weights().stream()
                    .map(
                        weight ->
                            DynamicTest.dynamicTest(
                                row.book() + ", " + weight + ", " + row.measure(),
                                () -> holdsRow(row, weight))));
  }

  private static void holdsRow(Row row, String weight) {
    String place = String.valueOf(manifest(row.book()).of());
    String own = row.book() + ".";
    assertThat(certain(place, row.with(weight, row.limit())))
        .filteredOn(finding -> finding.rule().startsWith(own))
        .filteredOn(finding -> outcome(place, finding) != LawOutcome.NOT_JUDGED)
        .as("just at %s", row.limit())
        .isEmpty();
    assertThat(certain(place, row.with(weight, row.beyond())))
        .filteredOn(finding -> finding.rule().startsWith(own))
        .filteredOn(finding -> outcome(place, finding) != LawOutcome.NOT_JUDGED)
        .as("beyond %s", row.limit())
        .singleElement()
        .satisfies(finding -> assertThat(outcome(place, finding)).hasToString(row.outcome()));
  }

  @TestFactory
  Stream<DynamicTest> everyRuleDoesInItsCasesWhatTheyExpect() {
    return BOOKS.stream()
        .flatMap(
            book ->
                book.rules().stream()
                    .map(rule -> DynamicTest.dynamicTest(rule.id(), () -> holdsCases(book, rule))));
  }

  private static void holdsCases(Book book, SheetRule rule) {
    try (Judge judge = Judge.of(List.of(book))) {
      for (Case one : rule.cases()) {
        assertThat(Interpreter.judge(rule, one.facts()).get(0).result())
            .as("%s: %s, plainly", rule.id(), one.name())
            .isEqualTo(one.expects());
        List<String> found =
            judge.judge(one.facts()).findings().stream()
                .filter(finding -> finding.rule().equals(rule.id()))
                .map(finding -> (finding.possibly() ? Case.POSSIBLY : "") + finding.kind())
                .toList();
        assertThat(found)
            .as("%s: %s, in the engine", rule.id(), one.name())
            .isEqualTo(one.expects().equals(Case.NOTHING) ? List.of() : List.of(one.expects()));
      }
    }
  }

  @Test
  void everyRuleHasItsFourCases() {
    assertThat(BOOKS.stream().flatMap(book -> book.rules().stream()))
        .isNotEmpty()
        .allSatisfy(
            rule -> {
              List<String> expected = rule.cases().stream().map(Case::expects).toList();
              assertThat(expected).as(rule.id()).hasSizeGreaterThanOrEqualTo(4);
              assertThat(expected).as(rule.id()).contains(rule.kind().toString(), Case.NOTHING);
              assertThat(expected.stream().distinct().count() == 3 || onTokensAlone(rule))
                  .as("%s is shown undecided or absent", rule.id())
                  .isTrue();
            });
  }

  /**
   * Rules that only tell, and ask of nothing but the class that a vehicle is registered in: no
   * profile is read without it, so that they are never undecided and miss no value.
   */
  private static boolean onTokensAlone(SheetRule rule) {
    return rule.demand().form() == Demand.Form.TELLS
        && Asked.of(rule.where()).stream()
            .allMatch(asked -> asked.name().equals("legal-measures.vehicle-class"));
  }

  @Test
  void theClassOfAVehicleIsNeverUnknown() {
    assertThat(VehicleProfile.class.getRecordComponents())
        .filteredOn(component -> component.getType() == VehicleClass.class)
        .singleElement()
        .satisfies(component -> assertThat(component.isAnnotationPresent(Required.class)).isTrue());
    assertThat(BOOKS.stream().flatMap(book -> book.rules().stream()))
        .filteredOn(CodeBooksTest::onTokensAlone)
        .extracting(SheetRule::id)
        .containsExactlyInAnyOrder(
            "maine.cars",
            "utah.cars",
            "virginia.trucks",
            "south-australia.off-road",
            "western-australia.off-road");
  }

  @Test
  void aRuleReadAtSecondHandIsACautionAndNoOtherIs() {
    assertThat(BOOKS.stream().flatMap(book -> book.rules().stream()))
        .allSatisfy(
            rule ->
                assertThat(rule.source().contains(SECOND_HAND))
                    .as(rule.id())
                    .isEqualTo(rule.kind() == RuleKind.CAUTION));
  }

  @Test
  void everyBookSaysWhatItIs() {
    assertThat(BOOKS).hasSizeGreaterThanOrEqualTo(12);
    assertThat(BOOKS)
        .allSatisfy(
            book -> {
              Manifest manifest = book.manifest();
              assertThat(manifest.kind()).isEqualTo(Manifest.Kind.LAW);
              assertThat(manifest.readOn()).isEqualTo(LocalDate.of(2026, 11, 25));
              assertThat(manifest.authority()).isNotBlank();
              assertThat(book.rules())
                  .allSatisfy(rule -> assertThat(rule.group()).isEqualTo(book.name()));
            });
  }

  @Test
  void theListOfFilesIsTheFolder() throws IOException {
    Path root = Path.of("rules/codes");
    List<String> there = new ArrayList<>();
    try (Stream<Path> files = Files.walk(root)) {
      files
          .filter(file -> file.toString().endsWith(".yaml"))
          .map(file -> root.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .forEach(there::add);
    }
    assertThat(Files.readAllLines(root.resolve("files.txt"))).isEqualTo(there);
  }

  @ParameterizedTest
  @CsvSource({
    "California, california",
    "' CALIFORNIA ', california",
    "us-ca, california",
    "State of California, california",
    "Deutschland, european-union germany",
    "DE, european-union germany",
    "EU, european-union",
    "AU-QLD, queensland",
    "Illinois, illinois",
    "'Chicago, Illinois', chicago illinois",
    "Californi, ''",
    "Lower Fenwick, ''"
  })
  void aPlaceIsKnownByItsNames(String named, String books) {
    Set<String> law =
        JUDGES.over("skerrow", named).manifests().stream()
            .map(Manifest::name)
            .collect(Collectors.toSet());
    assertThat(law).isEqualTo(books.isEmpty() ? Set.of() : Set.of(books.split(" ", -1)));
    assertThat(CodeBooks.at(named)).hasSize(law.size());
  }

  @ParameterizedTest
  @CsvSource({"4500 lb", "7500 lb", "10000 lb"})
  void betweenTwoClassesIllinoisIsNotJudged(String rating) {
    LegalMeasures measures =
        Measures.of(
            VehicleClass.LIGHT_TRUCK,
            Map.of("gross-rating", rating, "frame-height", "40 in", "body-lift", "0 mm"));
    List<Finding> found = certain("Illinois", measures);
    assertThat(ids(found)).containsExactly("illinois.frame-hole");
    assertThat(outcome("Illinois", found.get(0))).isEqualTo(LawOutcome.NOT_JUDGED);
  }

  @Test
  void whereTwoClassesOverlapFloridaIsNotJudgedBetweenThem() {
    Map<String, String> between =
        Map.of(
            "net-mass", "3000 lb", "bumper-bottom-front", "27.5 in", "bumper-bottom-rear", "29 in");
    List<Finding> found = certain("Florida", Measures.of(VehicleClass.LIGHT_TRUCK, between));
    assertThat(ids(found)).containsExactly("florida.truck-overlap");
    assertThat(outcome("Florida", found.get(0))).isEqualTo(LawOutcome.NOT_JUDGED);
  }

  /**
   * Queensland's own stacks, as told by others (grade B): 50 + 25 = 75 without and 75 + 25 + 50 =
   * 150 with a certificate, a tire of 50 mm more diameter being 25 mm of lift.
   */
  @ParameterizedTest
  @CsvSource({
    "50, 0, 25, 75, ''",
    "75, 50, 25, 150, 'queensland.body queensland.suspension queensland.total'",
    "76, 50, 25, 151, 'queensland.body queensland.certified-suspension queensland.certified-total"
        + " queensland.suspension queensland.total'",
    "50, 0, 26, 76, 'queensland.tire queensland.total'"
  })
  void queenslandsStacksAreCautions(
      int suspension, int body, int tire, int total, String expected) {
    LegalMeasures measures =
        Measures.of(
            VehicleClass.LIGHT_TRUCK,
            Map.of(
                "lift-front", suspension + " mm",
                "lift-rear", suspension + " mm",
                "body-lift", body + " mm",
                "tire-lift", tire + " mm",
                "total-raise", total + " mm"));
    List<String> cautions =
        JUDGES.over("skerrow", "Queensland").judge(List.of(measures)).findings().stream()
            .filter(finding -> finding.kind() == Kind.CAUTION && !finding.possibly())
            .map(Finding::rule)
            .toList();
    assertThat(cautions)
        .containsExactlyElementsOf(
            expected.isEmpty() ? List.of() : List.of(expected.split(" ", -1)));
  }

  /** North Carolina's limit is strict: four inches are too many. */
  @ParameterizedTest
  @CsvSource({"3.9 in, 0", "4 in, 1", "4.1 in, 1"})
  void northCarolinaCountsFromFourInchesOn(String difference, int found) {
    LegalMeasures measures =
        Measures.of(VehicleClass.PASSENGER_CAR, Map.of("fender-difference", difference));
    assertThat(certain("North Carolina", measures)).hasSize(found);
  }
}
