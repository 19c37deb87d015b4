package trammel.cli;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * What books assume, on a Stonecrop whose profile does not say how far its front bump stop crushes.
 * A safety-critical rule asks of it (height.damper-bottoms), and one that is not
 * (height.stop-lowered).
 */
class DefaultsTest {
  private static final Path DEMO = Path.of("catalog-demo");
  private static final String CRUSH = "18 mm ± 4 mm";
  private static final String CRITICAL = "height.damper-bottoms@front-left";
  private static final String ORDINARY = "height.stop-lowered@front-left";
  private static final String REFUSED =
      "Stop crush is only assumed, 18 ± 4 mm (0.7 in) by book seen 1.1, which a safety-critical"
          + " rule does not accept: measure it.";
  private static final String HEADING =
      "Assumed, since nobody gives it (no safety-critical rule accepts it):";

  @TempDir private Path folder;
  private Path catalog = Path.of("");
  private String sheet = "";
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void copy() throws IOException {
    catalog = folder.resolve("catalog");
    try (Stream<Path> files = Files.walk(DEMO)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path target = catalog.resolve(DEMO.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
      }
    }
    Path profile = catalog.resolve("vehicles/stonecrop.vehicle.yaml");
    String text = Files.readString(profile);
    assertThat(text).contains("    stop-crush: 18 mm\n");
    Files.writeString(profile, text.replace("    stop-crush: 18 mm\n", ""));
    sheet = catalog.resolve("builds/stonecrop-raised.build.yaml").toString();
  }

  private int run(List<String> books, String... command) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    List<String> all = new ArrayList<>(Arrays.asList(command));
    books.forEach(book -> all.addAll(List.of("--book", book)));
    all.addAll(List.of("--on", "2026-11-25"));
    return Main.run(
        new PrintWriter(out, true), new PrintWriter(err, true), all.toArray(String[]::new));
  }

  /** What was printed, in one line. */
  private String words() {
    return out.toString().replaceAll("\\s+", " ");
  }

  private String book(String name, String vehicle, String sheetText) throws IOException {
    Path book = Files.createDirectories(folder.resolve(name));
    Files.writeString(
        book.resolve("book.yaml"),
        "book: "
            + name
            + "\ntitle: Seen here\nversion: 1.1\nauthor: A. Fitter (invented)\nlicense: CC0-1.0\n"
            + "kind: shop\nvocabulary: 0.3\n"
            + (vehicle.isEmpty() ? "" : "vehicles: [" + vehicle + "]\n"));
    Files.writeString(book.resolve("seen.rules.yaml"), sheetText);
    return book.toString();
  }

  private static String assumes(String key, String value) {
    return "defaults:\n  - value: "
        + key
        + "\n    is: "
        + value
        + "\n    because: twelve of them crushed alike\n    source: our own press\n";
  }

  private String crush(String name, String vehicle, String value) throws IOException {
    return book(name, vehicle, assumes("front.support.stop-crush", value));
  }

  private JsonNode report(String... books) {
    run(List.of(books), "check", "--format", "json", sheet);
    return new ObjectMapper().readTree(out.toString());
  }

  private static String kind(JsonNode report, String id) {
    for (String part : List.of("findings", "possible", "background")) {
      for (JsonNode item : report.get(part)) {
        if (item.get("id").asString().equals(id)) {
          return item.get("kind").asString();
        }
      }
    }
    return "silent";
  }

  /** A book's vehicle; what each rule then says; how many values are shown as assumed. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "no book; unproven; unproven; 0",
        "stonecrop; unproven; silent; 1",
        "''; unproven; silent; 1",
        "skerrow; unproven; unproven; 0"
      })
  void aDefaultCountsForItsVehiclesAndForNoSafetyCriticalRule(
      String vehicle, String critical, String ordinary, int shown) throws IOException {
    JsonNode report = vehicle.equals("no book") ? report() : report(crush("seen", vehicle, CRUSH));
    assertThat(kind(report, CRITICAL)).isEqualTo(critical);
    assertThat(kind(report, ORDINARY)).isEqualTo(ordinary);
    assertThat(report.get("assumed").size()).isEqualTo(shown);
  }

  @Test
  void whatIsGivenOutranksItAndDecides() throws IOException {
    String book = crush("seen", "stonecrop", "60 mm ± 20 mm");
    sheet = DEMO.resolve("builds/stonecrop-raised.build.yaml").toString();
    JsonNode plain = report();
    JsonNode report = report(book);
    assertThat(report.get("assumed").size()).isZero();
    assertThat(report.get("findings")).isEqualTo(plain.get("findings"));
    assertThat(kind(report, CRITICAL)).isEqualTo("silent");
  }

  /** The sheet fits; without the length of the front studs nobody knows how far a nut screws on. */
  @Test
  void aSheetThatWantsItForSafetyIsNotProven() throws IOException {
    sheet = catalog.resolve("builds/skerrow-cast-wheels-right-nuts.build.yaml").toString();
    assertThat(run(List.of(), "check", sheet)).isZero();
    Path profile = catalog.resolve("vehicles/skerrow.vehicle.yaml");
    Files.writeString(
        profile, Files.readString(profile).replaceFirst("    stud-length: 46 mm\n", ""));
    String book = book("seen", "skerrow", assumes("front.hub.stud-length", "46 mm ± 1 mm"));
    assertThat(run(List.of(book), "check", sheet)).isEqualTo(4);
    assertThat(words())
        .startsWith("NOT PROVEN.")
        .contains("Stud length is only assumed, 46 ± 1 mm (1.81 in) by book seen 1.1");
    Files.writeString(
        profile,
        Files.readString(profile)
            .replaceFirst("    thread: M14x1.5\n", "$0    stud-length: 46 mm\n"));
    assertThat(run(List.of(book), "check", sheet)).isZero();
    assertThat(words()).doesNotContain(HEADING);
  }

  @Test
  void itIsShownWithAllThatABookSaysOfIt() throws IOException {
    String book = crush("seen", "stonecrop", CRUSH);
    JsonNode shown = report(book).get("assumed").get(0);
    assertThat(shown.get("key").asString()).isEqualTo("front.support.stop-crush");
    assertThat(shown.get("value").asDouble()).isEqualTo(18);
    assertThat(shown.get("uncertainty").asDouble()).isEqualTo(4);
    assertThat(shown.get("unit").asString()).isEqualTo("mm");
    assertThat(shown.get("book").asString()).isEqualTo("seen");
    assertThat(shown.get("version").asString()).isEqualTo("1.1");
    assertThat(shown.get("because").asString()).isEqualTo("twelve of them crushed alike");
    assertThat(shown.get("source").asString()).isEqualTo("our own press");
    run(List.of(book), "check", sheet);
    assertThat(words())
        .contains(
            REFUSED,
            HEADING
                + " - Stop crush 18 ± 4 mm (0.7 in) (front.support.stop-crush), by book seen 1.1."
                + " Because: twelve of them crushed alike. Source: our own press.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"heights", "align", "limits", "rules facts", "check"})
  void everyPageThatRestsOnItShowsIt(String command) throws IOException {
    String book = crush("seen", "stonecrop", CRUSH);
    run(
        List.of(book),
        Stream.concat(Stream.of(command.split(" ")), Stream.of(sheet)).toArray(String[]::new));
    assertThat(words()).contains(HEADING, "by book seen 1.1");
    run(
        List.of(),
        Stream.concat(Stream.of(command.split(" ")), Stream.of(sheet)).toArray(String[]::new));
    assertThat(words()).isNotEmpty().doesNotContain(HEADING);
  }

  private List<CsvRecord> rows() {
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .extraFieldStrategy(FieldMismatchStrategy.STRICT)
            .missingFieldStrategy(FieldMismatchStrategy.STRICT)
            .ofCsvRecord(out.toString())) {
      return reader.stream().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whichever rows are kept by a spreadsheet's filter, they say what they may rest on. */
  @ParameterizedTest
  @ValueSource(strings = {"heights --csv", "align --curves"})
  void everyRowOfATableShowsIt(String command) throws IOException {
    String book = crush("seen", "stonecrop", CRUSH);
    String[] whole =
        Stream.concat(Stream.of(command.split(" ")), Stream.of(sheet)).toArray(String[]::new);
    run(List.of(book), whole);
    List<CsvRecord> with = rows();
    run(List.of(), whole);
    List<CsvRecord> without = rows();
    assertThat(with).hasSameSizeAs(without).hasSizeGreaterThan(10);
    int last = with.get(0).getFieldCount() - 1;
    assertThat(with.get(0).getField(last)).isEqualTo("assumed");
    assertThat(with.subList(1, with.size()))
        .allSatisfy(
            row ->
                assertThat(row.getField(last))
                    .isEqualTo(
                        "stop crush 18 ± 4 mm (0.7 in) (front.support.stop-crush) by book seen 1.1"));
    assertThat(without.get(0)).hasToString(with.get(0).toString());
    assertThat(without.subList(1, without.size()))
        .allSatisfy(row -> assertThat(row.getField(last)).isEmpty());
  }

  /** Without the ratio nobody knows what a spacer on the spring gives; assumed, all is known. */
  @Test
  void aRowOfATableSaysWhyAValueIsMissing() throws IOException {
    Path profile = catalog.resolve("vehicles/stonecrop.vehicle.yaml");
    Files.writeString(
        profile, Files.readString(profile).replace("  spring-motion-ratio: 0.9\n", ""));
    run(List.of(), "heights", "--csv", sheet);
    assertThat(out.toString())
        .contains("front-left,height,it stands at,mm,520.0000,5.0000,,,not stated in " + profile)
        .contains(" at front.spring-motion-ratio,\n");
    String book = book("seen", "stonecrop", assumes("front.spring-motion-ratio", "0.8 ± 0.1"));
    run(List.of(book), "heights", "--csv", sheet);
    assertThat(out.toString())
        .contains(" at front.support.stop-crush,")
        .doesNotContain(" at front.spring-motion-ratio,");
  }

  @Test
  void everyRowOfAComparisonAsTableShowsWhatItsPredictionsMayRestOn() {
    run(
        List.of("rules/shop-example"),
        "compare",
        "--csv",
        DEMO.resolve("builds/skerrow-raised-mildly.build.yaml").toString(),
        DEMO.resolve("measured/skerrow-raised-mildly.measured.yaml").toString());
    List<CsvRecord> rows = rows();
    assertThat(rows).hasSizeGreaterThan(3);
    assertThat(rows.subList(1, rows.size()))
        .allSatisfy(
            row ->
                assertThat(row.getField(11))
                    .contains("(outline.frame-end-front) by book shop-example", "; ")
                    .contains("(outline.frame-end-rear) by book shop-example"));
  }

  @Test
  void aComparisonShowsWhatItsPredictionsMayRestOn() {
    run(
        List.of("rules/shop-example"),
        "compare",
        DEMO.resolve("builds/skerrow-raised-mildly.build.yaml").toString(),
        DEMO.resolve("measured/skerrow-raised-mildly.measured.yaml").toString());
    assertThat(words()).contains(HEADING, "(outline.frame-end-front), by book shop-example");
  }

  @Test
  void theWorkingShowsWhatItRestsOn() throws IOException {
    String book = crush("seen", "stonecrop", CRUSH);
    run(List.of(book), "working", sheet, CRITICAL);
    assertThat(words()).contains(REFUSED).doesNotContain(HEADING);
    book = book("seen", "stonecrop", assumes("front.bump-travel", "95 mm ± 10 mm"));
    Path profile = catalog.resolve("vehicles/stonecrop.vehicle.yaml");
    Files.writeString(
        profile,
        Files.readString(profile)
            .replace("  bump-travel: 95 mm\n", "")
            .replace(
                "    unsprung: 190 kg ± 10 %\n",
                "    unsprung: 190 kg ± 10 %\n    stop-crush: 18 mm\n"));
    run(List.of(book), "working", sheet, "clearance.liner-close@front-left:liner");
    assertThat(words()).contains(HEADING);
  }

  @Test
  void aRuleOfASheetThatIsSafetyCriticalDoesNotAcceptItEither() throws IOException {
    String rule =
        """
        rules:
          - rule: height.damper-%s
            title: The damper is not pushed in by more than it has
            kind: conflict
            says: "{closed-room} is left."
            reason: It bottoms.
            source: common practice
            since: 1.0
            safety-critical: %s
            about: damper-reach
            demands: { value: damper-reach.closed-room, at-least: -300 mm }
            cases:
              - { case: bottoms, damper-reach: { closed-room: -400 mm }, expects: conflict }
              - { case: just has room, damper-reach: { closed-room: -299 mm }, expects: nothing }
              - { case: close, damper-reach: { closed-room: -300 mm ± 5 mm }, expects: unproven }
              - { case: not known, damper-reach: { closed-room: absent }, expects: unproven }
        """;
    String plain = rule.formatted("plain", "no");
    String critical = rule.formatted("critical", "yes").replace("rules:\n", "");
    String both = plain + critical + assumes("front.support.stop-crush", CRUSH);
    JsonNode report = report(book("seen", "stonecrop", both));
    assertThat(err.toString()).isEmpty();
    assertThat(kind(report, "height.damper-plain@front-left")).isEqualTo("silent");
    assertThat(kind(report, "height.damper-critical@front-left")).isEqualTo("unproven");
    run(
        List.of(folder.resolve("seen").toString()),
        "rules",
        "read",
        "height.damper-critical",
        sheet);
    assertThat(words())
        .contains("front-left, front-right: speaks, unproven")
        .doesNotContain(HEADING);
    run(List.of(folder.resolve("seen").toString()), "rules", "read", "height.damper-plain", sheet);
    assertThat(words()).contains("front-left, front-right: silent", HEADING);
  }

  @Test
  void booksThatContradictEachOtherMeanNoVerdict() throws IOException {
    String one = crush("seen", "stonecrop", CRUSH);
    assertThat(run(List.of(one, crush("heard", "", "25 mm ± 4 mm")), "check", sheet)).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString())
        .contains(
            "heard/seen.rules.yaml:2:",
            "book heard 1.1 assumes 25 ± 4 mm, and book seen 1.1",
            "seen/seen.rules.yaml:2:",
            "assumes 18 ± 4 mm");
    assertThat(run(List.of(one, crush("heard", "", CRUSH)), "check", sheet)).isEqualTo(5);
    assertThat(words()).contains("by book seen 1.1").doesNotContain("by book heard");
    sheet = DEMO.resolve("builds/stonecrop-raised.build.yaml").toString();
    assertThat(run(List.of(one, crush("heard", "", "25 mm ± 4 mm")), "check", sheet))
        .isNotEqualTo(2);
  }

  /** At book height the damper would be longer than it is pulled out. */
  @Test
  void whatTheVehicleCannotHaveIsRefusedWithItsPlace() throws IOException {
    Path profile = catalog.resolve("vehicles/stonecrop.vehicle.yaml");
    String text = Files.readString(profile);
    assertThat(text).contains(", length: 490.4 mm }");
    Files.writeString(profile, text.replace(", length: 490.4 mm }", " }"));
    String book =
        book("seen", "stonecrop", assumes("front.support.damper.length", "900 mm ± 4 mm"));
    assertThat(run(List.of(book), "check", sheet)).isEqualTo(2);
    assertThat(err.toString())
        .contains("seen/seen.rules.yaml:2:", "assumes 900 ± 4 mm, which this vehicle cannot have");
    book = book("seen", "stonecrop", assumes("front.support.damper.length", "490 mm ± 4 mm"));
    assertThat(report(book).get("assumed").size()).isEqualTo(1);
  }

  @Test
  void whatAVehicleDoesNotHaveAtAllLacksNoValue() throws IOException {
    String book =
        book("seen", "stonecrop", assumes("front.support.fluid.diameter", "30 mm ± 1 mm"));
    assertThat(report(book).get("assumed").size()).isZero();
  }

  @Test
  void whatAnOverlayTeachesOutranksIt() throws IOException {
    Path profile = catalog.resolve("vehicles/stonecrop.vehicle.yaml");
    Files.writeString(
        profile, Files.readString(profile).replace("  spring-motion-ratio: 0.9\n", ""));
    String book = book("seen", "stonecrop", assumes("front.spring-motion-ratio", "0.8 ± 0.1"));
    assertThat(report(book).get("assumed").size()).isEqualTo(1);
    Path own = Path.of(sheet);
    Files.writeString(
        own.resolveSibling("mine.overlay.yaml"),
        "overlay: mine\nvehicle: stonecrop\non: 2026-11-20\nsprings:\n  - { at: front, motion-ratio: 0.9 }\n");
    Files.writeString(
        own, Files.readString(own).replace("changes:", "overlay: mine.overlay.yaml\nchanges:"));
    assertThat(report(book).get("assumed").size()).isZero();
  }
}
