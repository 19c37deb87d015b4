package trammel.judge;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A book of a thousand rules, each with its four cases: the size that loading is measured with.
 * Needs nothing but Java: {@code java ThousandRules.java FOLDER} writes it.
 */
final class ThousandRules {
  private static final int RULES = 1000;
  private static final int LIMITS = 50;
  private static final List<String> STATIONS = List.of("arch", "liner", "rear-mount", "frame-rail");
  private static final String MANIFEST =
      """
      book: thousand
      title: A thousand rules to measure loading with
      version: 1.0
      author: A. Fitter (invented)
      license: CC0-1.0
      kind: shop
      vocabulary: 0.3
      """;
  private static final String RULE =
      """
        - rule: shop.room-%1$d
          title: Some room stays
          kind: caution
          says: "{value} is left at the {station}."
          reason: Mud packs.
          source: common practice
          since: 1.0
          about: clearance
          where: { value: clearance.station, is: %2$s }
          demands: { value: clearance.gap, at-least: %3$d mm }
          cases:
            - { case: too little, clearance: { station: %2$s, gap: %4$d mm }, expects: caution }
            - { case: far, clearance: { station: %2$s, gap: 999 mm }, expects: nothing }
            - case: about
              clearance: { station: %2$s, gap: %3$d mm ± 9 mm }
              expects: possibly caution
            - { case: absent, clearance: { station: %2$s }, expects: possibly caution }
      """;

  private ThousandRules() {}

  /**
   * The book's one sheet.
   *
   * @param least the lowest of the fifty limits (mm): far below zero no rule speaks, at zero many
   */
  static String sheet(int least) {
    return IntStream.range(0, RULES)
        .mapToObj(i -> rule(i, STATIONS.get(i % STATIONS.size()), least + i % LIMITS))
        .collect(Collectors.joining("", "rules:\n", ""));
  }

  private static String rule(int number, String station, int limit) {
    return String.format(Locale.ROOT, RULE, number, station, limit, limit - 1);
  }

  /** Writes the book into a folder, made where it is not there; few of its rules ever speak. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    Files.writeString(folder.resolve("book.yaml"), MANIFEST);
    Files.writeString(folder.resolve("seen.rules.yaml"), sheet(-200));
  }
}
