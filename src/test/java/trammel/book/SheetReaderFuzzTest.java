package trammel.book;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import trammel.read.Problem;
import trammel.read.Problems;
import trammel.read.UnreadableFile;

/**
 * Whatever bytes a sheet holds, it is read or refused with places; nothing else comes out of the
 * reader, and what was read can be tried. The build replays the inputs beside this class; the notes
 * for contributors say how to search for others.
 */
class SheetReaderFuzzTest {
  private static final byte[] MANIFEST =
      """
      book: any
      title: Any
      version: 9.0
      author: nobody
      license: CC0-1.0
      kind: shop
      vocabulary: 0.3
      """
          .getBytes(StandardCharsets.UTF_8);

  @FuzzTest(maxDuration = "10m")
  void anySheetIsReadOrRefused(byte[] sheet) {
    try {
      for (Book book : Books.read(List.of(new Bytes(sheet)), List.of())) {
        book.rules().forEach(rule -> assertThat(Tried.all(rule)).hasSameSizeAs(rule.cases()));
        book.tables().forEach(table -> assertThat(Tried.all(table)).isNotEmpty());
      }
    } catch (UnreadableFile refused) {
      assertThat(refused.problems()).isNotEmpty();
      for (Problem problem : refused.problems()) {
        assertThat(problem.place().file()).startsWith("any/");
        assertThat(problem.what()).isNotBlank();
        assertThat(problem.advice()).isNotBlank();
      }
    }
  }

  /** A book of one sheet. */
  private static final class Bytes implements BookFolder {
    private final byte[] sheet;

    private Bytes(byte[] sheet) {
      this.sheet = sheet;
    }

    @Override
    public String shownAs() {
      return "any";
    }

    @Override
    public List<String> names(Problems problems) {
      return List.of("any.rules.yaml", "book.yaml");
    }

    @Override
    public Optional<byte[]> read(String name, long most, Problems problems) {
      return Optional.of(name.equals("book.yaml") ? MANIFEST : sheet);
    }
  }
}
