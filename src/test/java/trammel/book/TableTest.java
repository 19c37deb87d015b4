package trammel.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Tables by the hit policies of OMG DMN 1.x (section on hit policies; from memory). */
class TableTest {
  private static final String TABLE =
      """
      tables:
        - table: clearance.seen
          title: What we have seen
          kind: conflict
          says: "It rubs; trim the {trimming}."
          reason: Seen on ours.
          source: "common practice: nine vehicles"
          since: 1.0
          about: clearance
          columns:
            - { value: clearance.change, reads: READS }
            - { value: clearance.station, reads: equal }
          results: [outcome, trimming]
          hit: HIT
          ROWS
          cases:
            - { case: one, clearance: { station: arch, change: CHANGE }, expects: nothing }
            - { case: two, clearance: { station: arch }, expects: nothing }
            - { case: three, clearance: { station: arch }, expects: nothing }
            - { case: four, clearance: { station: arch }, expects: nothing }
      """;

  private static String sheet(String reads, String hit, String rows, String change) {
    return TABLE
        .replace("READS", reads)
        .replace("HIT", hit)
        .replace("ROWS", rows)
        .replace("CHANGE", change);
  }

  private static TableRuling ruling(String reads, String hit, String rows, String change) {
    TestBook book = TestBook.shop("seen", sheet(reads, hit, "rows: [" + rows + "]", change));
    Table table = TestBook.read(book).get(0).tables().get(0);
    return Interpreter.judge(table, table.rule().cases().get(0).facts()).get(0);
  }

  static Stream<Arguments> policies() {
    String low = "[0 mm..10 mm, arch, fits, none]";
    String high = "[8 mm..20 mm, arch, conflict, lip]";
    String other = "[8 mm..20 mm, any, caution, flare]";
    return Stream.of(
        arguments("first", low + ", " + high, "9 mm", "nothing"),
        arguments("first", high + ", " + low, "9 mm", "conflict"),
        arguments("first", low + ", " + high, "9 mm ± 2 mm", "unproven"),
        arguments("first", low + ", " + high, "15 mm", "conflict"),
        arguments("first", low + ", " + high, "25 mm", "nothing"),
        arguments("first", low + ", " + high, "absent", "unproven"),
        arguments("unique", low + ", " + high, "5 mm", "nothing"),
        arguments("unique", low + ", " + high, "9 mm", "unproven"),
        arguments("any", low + ", " + high, "9 mm", "unproven"),
        arguments("any", high + ", [9 mm..9 mm, any, conflict, lip]", "9 mm", "conflict"),
        arguments("collect", high + ", " + other, "9 mm", "conflict"),
        arguments("collect", other + ", " + low, "9 mm", "caution"),
        arguments("collect", high + ", " + other, "8 mm ± 1 mm", "unproven"),
        arguments("first", "['[0 mm..10 mm)', arch, conflict, lip]", "10 mm", "nothing"),
        arguments("first", "['[0 mm..10 mm]', arch, conflict, lip]", "10 mm", "conflict"));
  }

  @ParameterizedTest
  @MethodSource("policies")
  void theHitPolicySaysWhichRowCounts(String hit, String rows, String change, String result) {
    assertThat(ruling("range", hit, rows, change).result()).isEqualTo(result);
  }

  /** What fitted at 30 mm covers what takes less; what rubbed at 30 mm covers what takes more. */
  @ParameterizedTest
  @CsvSource({
    "fits, larger, 29 mm, true",
    "fits, larger, 30 mm, true",
    "fits, larger, 31 mm, false",
    "conflict, larger, 29 mm, false",
    "conflict, larger, 30 mm, true",
    "conflict, larger, 31 mm, true",
    "fits, smaller, 29 mm, false",
    "fits, smaller, 31 mm, true",
    "conflict, smaller, 29 mm, true",
    "conflict, smaller, 31 mm, false"
  })
  void evidenceReachesOneWayOnly(String outcome, String worse, String change, boolean reaches) {
    String rows = "[30 mm, arch, " + outcome + ", lip]";
    TableRuling ruling = ruling("no-worse-than, worse: " + worse, "first", rows, change);
    assertThat(!ruling.rows().isEmpty()).isEqualTo(reaches);
    assertThat(ruling.result()).isEqualTo(reaches && !outcome.equals("fits") ? outcome : "nothing");
  }

  @Test
  void aRowTellsWhatElseItKnows() {
    TableRuling ruling = ruling("range", "first", "[0 mm..10 mm, arch, conflict, liner]", "5 mm");
    assertThat(ruling.results()).containsEntry("trimming", "liner");
  }

  @Test
  void rowsMayStandInAFileBesideTheSheet() {
    String csv =
        """
        clearance.change,clearance.station,outcome,trimming
        0 mm..10 mm,-,conflict,"lip, seam"
        """;
    TestBook book =
        TestBook.shop("seen", sheet("range", "first", "csv: seen.csv", "5 mm"))
            .with("seen.csv", csv);
    Table table = TestBook.read(book).get(0).tables().get(0);
    assertThat(table.rows())
        .singleElement()
        .satisfies(row -> assertThat(row.results()).containsEntry("trimming", "lip, seam"))
        .satisfies(row -> assertThat(row.place()).hasToString("seen/seen.csv:2:1"));
  }

  static Stream<Arguments> mistakes() {
    String head = "clearance.change,clearance.station,outcome,trimming\n";
    return Stream.of(
        arguments(head + "0 mm..10 mm,arch,fine,lip\n", "expected fits, conflict"),
        arguments(head + "10 mm..0 mm,arch,fits,lip\n", "ends before it begins"),
        arguments(head + "10 kg..20 kg,arch,fits,lip\n", "is a mass; expected a length"),
        arguments(head + "0 mm..10 mm,arhc,fits,lip\n", "Did you mean arch?"),
        arguments(head + "0 mm..10 mm,arch,fits\n", "cannot be followed"),
        arguments(
            head + "0 mm..10 mm,arch,fits,lip\n0 mm..10 mm,arch,conflict,lip\n",
            "a second row for the same values"),
        arguments(head + "0 mm..10 mm,arch,fits,\"=1+1\"\n", "is a formula to a spreadsheet"),
        arguments(head + "0 mm..10 mm,arch,fits,@sum\n", "is a formula to a spreadsheet"),
        arguments(
            "change,station,outcome,trimming\n", "expected clearance.change,clearance.station"));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void aMistakeInAFileIsToldByLine(String csv, String said) {
    TestBook book =
        TestBook.shop("seen", sheet("range", "first", "csv: seen.csv", "5 mm"))
            .with("seen.csv", csv);
    assertThat(TestBook.problems(book))
        .anySatisfy(problem -> assertThat(problem).contains(said).startsWith("seen/seen.csv:"));
  }

  @ParameterizedTest
  @CsvSource({"../seen.csv", "/etc/seen.csv", "a/b.csv", "missing.csv", "seen.txt"})
  void aFileIsNamedPlainly(String name) {
    TestBook book = TestBook.shop("seen", sheet("range", "first", "csv: " + name, "5 mm"));
    assertThat(TestBook.problems(book))
        .anyMatch(problem -> problem.contains("expected a plain name"));
  }

  @Test
  void whatIsMeasuredCannotBeNamed() {
    List<String> problems =
        TestBook.problems(
            TestBook.shop(
                "seen", sheet("no-worse-than", "first", "rows: [[1 mm, arch, fits, x]]", "5 mm")));
    assertThat(problems).anyMatch(problem -> problem.contains("does not say which way is worse"));
  }
}
