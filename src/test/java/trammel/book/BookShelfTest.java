package trammel.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where books are found; variables as the XDG Base Directory Specification has them. */
class BookShelfTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          false, XDG_CONFIG_HOME, /c,       /home/a, /c/trammel/books
          false, XDG_CONFIG_HOME, relative, /home/a, /home/a/.config/trammel/books
          false, XDG_CONFIG_HOME, ' ',      /home/a, /home/a/.config/trammel/books
          false, APPDATA,         /d,       /home/a, /home/a/.config/trammel/books
          false, NONE,            /c,       home,
          true,  APPDATA,         /d,       /home/a, /d/trammel/books
          true,  APPDATA,         relative, /home/a,
          true,  XDG_CONFIG_HOME, /c,       /home/a,
          """)
  void theUsersFolder(boolean windows, String variable, String value, String home, Path expected) {
    assertThat(BookShelf.usual(Map.of(variable, value), windows, home)).isEqualTo(expected);
  }

  @Test
  void eachFolderInItIsABookAndOneThatIsNamedTwiceIsReadOnce() throws IOException {
    Path usual = Files.createDirectories(folder.resolve("books"));
    Path own = Files.createDirectory(usual.resolve("own"));
    Path another = Files.createDirectory(usual.resolve("another"));
    Files.createDirectory(usual.resolve(".hidden"));
    Files.writeString(usual.resolve("notes.txt"), "mine");
    Path given = Files.createDirectory(folder.resolve("given"));
    BookShelf shelf = BookShelf.of(usual, List.of(given, usual.resolve("../books/own"), own));
    assertThat(shelf.own()).extracting(BookFolder::shownAs).containsExactly(another.toString());
    assertThat(shelf.named())
        .extracting(BookFolder::shownAs)
        .containsExactly(given.toString(), usual.resolve("../books/own").toString());
    assertThat(shelf.unread()).isEmpty();
  }

  @Test
  void aFolderThatIsNotThereHoldsNoBooks() {
    BookShelf nothing = new BookShelf(List.of(), List.of(), List.of());
    assertThat(BookShelf.of(folder.resolve("none"), List.of())).isEqualTo(nothing);
    assertThat(BookShelf.of(null, List.of())).isEqualTo(nothing);
  }

  @Test
  void aSheetThatLiesLooseIsNotPassedOverInSilence() throws IOException {
    Path usual = Files.createDirectories(folder.resolve("books"));
    Files.writeString(usual.resolve("seen.rules.yaml"), "rules: []");
    Files.createSymbolicLink(usual.resolve("lost"), folder.resolve("nowhere"));
    BookShelf shelf = BookShelf.of(usual, List.of());
    assertThat(shelf.own()).isEmpty();
    assertThat(shelf.unread())
        .allSatisfy(book -> assertThat(book.mayJudge("skerrow", "")).isTrue())
        .extracting(book -> book.problems().get(0).toString())
        .satisfiesExactly(
            lost -> assertThat(lost).contains("lost: a link that leads nowhere"),
            loose ->
                assertThat(loose)
                    .contains("seen.rules.yaml", "expected it in the folder of its book"));
  }
}
