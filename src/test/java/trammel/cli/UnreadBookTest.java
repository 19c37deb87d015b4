package trammel.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import trammel.book.StartingBook;
import trammel.schema.Schemas;

/** A book of the user's that cannot be read is refused by name, and nothing else is disturbed. */
class UnreadBookTest {
  /** It fits, with everything in force that can be read. */
  private static final String FITS = "catalog-demo/builds/skerrow-raised-mildly.build.yaml";

  private static final String OTHER = "catalog-demo/builds/cairnback-same-size.build.yaml";
  private static final String RUBS = "catalog-demo/builds/skerrow-rub-at-lock.build.yaml";

  private static final String NOT_READ =
      "Book seen was not read: none of its rules counts, and nothing that it assumes:";

  /** Where this build's tests have the user's configuration. */
  private static final Path BOOKS =
      Path.of(String.valueOf(System.getenv("XDG_CONFIG_HOME")), "trammel", "books");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void begin() throws IOException {
    clear();
    Files.createDirectories(BOOKS);
  }

  @AfterEach
  void clear() throws IOException {
    if (Files.exists(BOOKS)) {
      try (Stream<Path> files = Files.walk(BOOKS)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  private int run(String... arguments) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
  }

  private int check(String... more) {
    String[] arguments = new String[more.length + 3];
    arguments[0] = "check";
    arguments[1] = "--on";
    arguments[2] = "2026-11-25";
    System.arraycopy(more, 0, arguments, 3, more.length);
    return run(arguments);
  }

  private String shown() {
    return out.toString().replaceAll("\\s+", " ");
  }

  /** A book as it is begun, for one vehicle, with something in one of its files changed. */
  private static Path book(String name, String vehicle, String file, String from, String to)
      throws IOException {
    Path folder = Files.createDirectory(BOOKS.resolve(name));
    StartingBook.files(vehicle)
        .forEach(
            (one, text) -> {
              String own =
                  text.replaceFirst("(?m)^book: .*$", "book: " + name)
                      .replace("clearance.mud-behind-front", "clearance." + name);
              String changed = one.equals(file) ? own.replace(from, to) : own;
              assertThat(one.equals(file) && changed.equals(own)).as("nothing to change").isFalse();
              write(folder.resolve(one), changed);
            });
    return folder;
  }

  private static void write(Path file, String text) {
    try {
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path broken(String name, String vehicle) throws IOException {
    return book(name, vehicle, "seen.rules.yaml", "at-least: 12 mm", "at-least: 12 °");
  }

  private static Path sound(String name, String vehicle) throws IOException {
    return book(name, vehicle, "seen.rules.yaml", "at-least: 12 mm", "at-least: 12.0 mm");
  }

  @Test
  void withoutItTheSheetFits() throws IOException {
    assertThat(check(FITS)).isZero();
    sound("heard", "skerrow");
    assertThat(check(FITS)).isZero();
    assertThat(shown()).contains("book heard").doesNotContain("ot read");
  }

  @Test
  void aBookForThisVehicleLeavesItNotProvenAndTheOthersJudge() throws IOException {
    sound("heard", "skerrow");
    broken("seen", "skerrow");
    assertThat(check(FITS)).isEqualTo(4);
    assertThat(err.toString()).isEmpty();
    assertThat(shown())
        .startsWith(
            "NOT PROVEN. Book seen was not read: what its rules demand is not judged. Not read, so"
                + " that none of its rules judged: book seen. "
                + BOOKS.resolve("seen").resolve("seen.rules.yaml")
                + ":18:")
        .contains("book heard 1.0, 1 rule")
        .doesNotContain("book seen 1.0");
    // What is worse stays worse, and says why first.
    assertThat(check(RUBS)).isEqualTo(5);
    assertThat(shown()).startsWith("DOES NOT FIT. Front left").contains("book seen. ");
  }

  @Test
  void aBookForOtherVehiclesIsMentionedAndNoMore() throws IOException {
    broken("seen", "skerrow");
    assertThat(check(OTHER)).isZero();
    assertThat(shown())
        .startsWith("FITS. Nothing was found")
        .contains("Not read, and not for this vehicle and place: - book seen, " + BOOKS);
  }

  @ParameterizedTest
  @CsvSource({"kind: shop, kind: shoppe", "vehicles: [skerrow], 'vehicles: [skerrow'"})
  void whereItsManifestCannotBeReadItMayBeForAnyVehicle(String from, String to) throws IOException {
    book("seen", "skerrow", "book.yaml", from, to);
    assertThat(check(OTHER)).isEqualTo(4);
    assertThat(shown())
        .startsWith("NOT PROVEN. Book " + BOOKS.resolve("seen") + " was not read")
        .contains("book.yaml:");
  }

  @Test
  void aLooseSheetAndAnEmptyFolderMayBeForAnyVehicleToo() throws IOException {
    Files.writeString(BOOKS.resolve("loose.rules.yaml"), "rules: []\n");
    assertThat(check(OTHER)).isEqualTo(4);
    assertThat(shown()).contains("loose.rules.yaml: a file among the folders of books");
    Files.delete(BOOKS.resolve("loose.rules.yaml"));
    Files.createDirectory(BOOKS.resolve("empty"));
    assertThat(check(OTHER)).isEqualTo(4);
    assertThat(shown()).contains("no book.yaml in this folder");
  }

  @Test
  void ofTwoThatClashTheLaterIsLeftOut() throws IOException {
    sound("first", "skerrow");
    book("second", "skerrow", "seen.rules.yaml", "clearance.second", "clearance.first");
    assertThat(check(FITS)).isEqualTo(4);
    assertThat(shown())
        .contains("book second. ", "a second rule called clearance.first", "book first 1.0");
  }

  @Test
  void whatTightensARuleOfAnUnreadBookIsLeftOutWithIt() throws IOException {
    broken("seen", "skerrow");
    sound("heard", "skerrow");
    book(
        "stricter",
        "skerrow",
        "seen.rules.yaml",
        "about: clearance ",
        "stricter-than: clearance.seen\n    about: clearance ");
    assertThat(check(FITS)).isEqualTo(4);
    assertThat(shown())
        .contains("book seen. ", "book stricter. ", "which is no rule in force", "book heard 1.0");
  }

  @Test
  void oneThatIsNamedIsAnErrorWhereverItLies() throws IOException {
    Path seen = broken("seen", "skerrow");
    assertThat(check("--book", seen.toString(), OTHER)).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).contains("seen.rules.yaml:18:");
  }

  @Test
  void dataSayItToo() throws IOException {
    broken("seen", "skerrow");
    assertThat(check("--format", "json", FITS)).isEqualTo(4);
    assertThat(Schemas.complaints("report", out.toString())).isEmpty();
    JsonNode unread = new ObjectMapper().readTree(out.toString()).get("not-read").get(0);
    assertThat(unread.get("book").asString()).isEqualTo("seen");
    assertThat(unread.get("folder").asString()).isEqualTo(BOOKS.resolve("seen").toString());
    assertThat(unread.get("may-concern").asBoolean()).isTrue();
    assertThat(unread.get("problems").get(0).asString()).contains("seen.rules.yaml:18:");
  }

  /** Its place's law may be in it, so that nobody can say that no limit is passed. */
  @Test
  void theLawIsNotJudgedWhereAnUnreadBookMayHoldIt() throws IOException {
    book("road", "skerrow", "book.yaml", "kind: shop", "kind: lawe");
    Path sheet =
        Files.writeString(
            BOOKS.resolve("sheet.txt"),
            Files.readString(Path.of(FITS))
                    .replace("\nas-found:", "\nas-found:\n  registered-at: California")
                + "catalog: "
                + Path.of("catalog-demo").toAbsolutePath()
                + "\n");
    check(sheet.toString());
    assertThat(shown())
        .startsWith("NOT PROVEN; LAW NOT JUDGED.")
        .contains("A book that may hold more of its law was not read.");
  }

  @Test
  void otherCommandsGoOnAndSaySo() throws IOException {
    broken("seen", "skerrow");
    sound("heard", "skerrow");
    for (List<String> command :
        List.of(
            List.of("rules", "list"),
            List.of("rules", "print"),
            List.of("rules", "read", "clearance.heard", FITS))) {
      assertThat(run(command.toArray(String[]::new))).as("%s", command).isZero();
      assertThat(out.toString()).contains("clearance.heard").doesNotContain("clearance.seen");
      assertThat(err.toString()).contains(NOT_READ, "rules.yaml:18:");
    }
  }

  /** What a sheet's commands print may rest on what a book assumes, or not, for want of it. */
  @ParameterizedTest
  @ValueSource(strings = {"heights", "heights --csv", "align", "align --curves", "limits"})
  void commandsOfASheetGoOnAndSaySo(String command) throws IOException {
    broken("seen", "skerrow");
    List<String> words = new ArrayList<>(List.of(command.split(" ")));
    words.add(FITS);
    assertThat(run(words.toArray(String[]::new))).isZero();
    assertThat(out.toString()).isNotEmpty();
    assertThat(err.toString()).contains(NOT_READ, "rules.yaml:18:");
  }

  @Test
  void aFindingsWorkingSaysSo() throws IOException {
    broken("seen", "skerrow");
    assertThat(run("working", "--on", "2026-11-25", RUBS, "1")).isZero();
    assertThat(err.toString()).contains(NOT_READ);
  }

  @Test
  void aComparisonSaysSo() throws IOException {
    broken("seen", "skerrow");
    run("compare", FITS, "catalog-demo/measured/skerrow-raised-mildly.measured.yaml");
    assertThat(out.toString()).isNotEmpty();
    assertThat(err.toString()).contains(NOT_READ);
  }
}
