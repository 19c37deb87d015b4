package trammel.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What users may get wrong, and the commands that look things up. */
class MainTest {
  private static final String FITS = "catalog-demo/builds/cairnback-same-size.build.yaml";
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String line) {
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), line.split(" "));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          chek,                                              Did you mean check?
          check --fromat json x.yaml,                        Did you mean --format?
          check,                                             FILE
          check --format pdf x.yaml,                         text or json
          check --on 31.5.2026 x.yaml,                       year-month-day
          check no-such-folder/no-such.build.yaml,           no-such.build.yaml
          working FITS 1,                                    no findings
          rules show clearance.rear-mont,                    Did you mean clearance.rear-mount?
          catalog show cairnbak --catalog catalog-demo,      Did you mean cairnback?
          catalog list --kind spirng --catalog catalog-demo, Did you mean spring?
          catalog proofread /,                               catalog.yaml
          """)
  void aMistakeIsToldOnStandardErrorWithoutAStackTrace(String line, String told) {
    assertThat(run(line.replace("FITS", FITS))).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).contains(told).doesNotContain("\tat ", "Exception");
  }

  @Test
  void aSheetThatCannotBeReadHidesNoOther() {
    assertThat(run("check no-such.build.yaml " + FITS)).isEqualTo(2);
    assertThat(out.toString()).startsWith("FITS.");
    assertThat(err.toString()).contains("no-such.build.yaml");
  }

  @ParameterizedTest
  @CsvSource({"--help", "check --help", "working --help", "catalog --help", "rules --help"})
  void helpShowsAnExampleBeforeAnyOption(String line) {
    assertThat(run(line)).isZero();
    assertThat(out.toString()).contains("Example:");
    assertThat(out.toString().indexOf("Example:")).isLessThan(out.toString().indexOf("--help "));
    assertThat(out.toString().lines())
        .allSatisfy(row -> assertThat(row.length()).isLessThanOrEqualTo(80));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          catalog list vehicles --catalog catalog-demo,           cairnback
          catalog list parts --catalog catalog-demo,              HR-2656517
          catalog list --kind tire --catalog catalog-demo,        HR-2656517
          catalog show cairnback --catalog catalog-demo,          'wheelbase: 2790 mm'
          catalog show HR-2656517 --catalog catalog-demo,         265/65R17
          catalog proofread catalog-demo,                         nothing wrong
          rules list,                                             clearance.rear-mount
          rules show clearance.rear-mount,                        common practice
          """)
  void whatIsAskedForIsPrinted(String line, String shown) {
    assertThat(run(line)).isZero();
    assertThat(out.toString()).contains(shown);
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aListOfVehiclesHoldsNoPartsAndAKindHoldsNoOther() {
    run("catalog list vehicles --catalog catalog-demo");
    run("catalog list --kind wheel --catalog catalog-demo");
    assertThat(out.toString()).contains("cairnback", "TH-2201").doesNotContain("HR-2656517");
  }

  @ParameterizedTest
  @CsvSource({"0 3, 3", "3 4, 4", "4 6, 6", "6 5, 5", "5 2, 2", "2 1, 1", "'', 0"})
  void theWorstStatusIsTheGravestAndNotTheGreatest(String statuses, int worst) {
    List<Integer> all =
        statuses.isEmpty()
            ? List.of()
            : List.of(statuses.split(" ")).stream().map(Integer::valueOf).toList();
    assertThat(ExitStatus.worst(all)).isEqualTo(worst);
  }
}
