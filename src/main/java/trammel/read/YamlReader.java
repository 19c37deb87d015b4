package trammel.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.core.JacksonException;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * From a YAML file to a tree of values that know their places.
 *
 * <p>A small YAML: one document, no anchors, aliases, merge keys or tags, no duplicate keys, no
 * hidden characters; every scalar is text, and what it means is for {@link Binder} to say.
 */
public final class YamlReader {
  /** The largest file that is read (bytes): a thousand times a long build sheet. */
  public static final long LARGEST = 4_000_000;

  private static final double MEGABYTE = 1e6;

  /** Made on first use, so that a run that reads no YAML does not pay for it. */
  private static final class Yaml {
    static final YAMLFactory FACTORY =
        YAMLFactory.builder()
            .loadSettings(
                LoadSettings.builder()
                    .setCodePointLimit((int) LARGEST + 1)
                    .setAllowDuplicateKeys(true) // TreeBuilder tells of them, all at once
                    .build())
            .build();
  }

  private YamlReader() {}

  /**
   * Reads a file; a symbolic link is followed.
   *
   * @param shownAs the file's name in messages
   * @param problems takes everything that is wrong
   * @return the tree; empty if the file could not be followed to its end, never without a problem.
   *     A tree may come with problems, so that its values can be looked at too: see {@link
   *     Problems#refuseIfAny()}.
   */
  public static Optional<Node> read(Path shownAs, Path file, Problems problems) {
    String name = shownAs.toString();
    Place whole = Place.of(name);
    if (Files.isDirectory(file)) {
      problems.add(whole, "this is a folder; expected a file", "Name a file in it.");
      return Optional.empty();
    }
    if (!Files.exists(file)) {
      problems.add(
          whole,
          "there is no such file; expected a file of this name",
          "Check the name and the current folder.");
      return Optional.empty();
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      long size = Files.size(file);
      if (size <= LARGEST) {
        bytes = in.readNBytes((int) LARGEST + 1);
        size = bytes.length;
      } else {
        bytes = new byte[0];
      }
      if (size > LARGEST) {
        problems.add(whole, tooLarge(size), "Split it, or check that it is the file you mean.");
        return Optional.empty();
      }
    } catch (IOException e) {
      problems.add(whole, "this file cannot be opened", "Check that you may read it.");
      return Optional.empty();
    }
    return parse(name, bytes, problems);
  }

  private static String tooLarge(long size) {
    return String.format(
        Locale.ROOT,
        "this file has %.1f MB; expected at most %.0f MB",
        size / MEGABYTE,
        LARGEST / MEGABYTE);
  }

  /**
   * Reads what is already in memory, such as standard input or a file packed in the program.
   *
   * @param shownAs the name in messages
   */
  public static Optional<Node> parse(String shownAs, byte[] bytes, Problems problems) {
    return Source.of(shownAs, bytes, problems).flatMap(source -> parse(source, problems));
  }

  private static Optional<Node> parse(Source source, Problems problems) {
    try (YAMLParser parser =
        (YAMLParser) Yaml.FACTORY.createParser(ObjectReadContext.empty(), source.text())) {
      return new TreeBuilder(parser, source, problems).document();
    } catch (JacksonException e) {
      problems.add(Malformed.problem(source, e));
      return Optional.empty();
    }
  }
}
