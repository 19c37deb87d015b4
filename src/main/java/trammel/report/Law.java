package trammel.report;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import trammel.book.LawOutcome;
import trammel.book.Manifest;
import trammel.judge.Judge;
import trammel.judge.Kind;

/**
 * What is said of the law; it stands beside the verdict and never mends it.
 *
 * @param standing the worst that is certain; where nothing certain is amiss, whether it was judged
 * @param place the place whose law applies, as the sheet names it
 * @param words the standing in words
 * @param says what it rests on, and who decides
 * @param texts the books of the law that judged
 */
public record Law(
    LegalStanding standing, String place, String words, String says, List<Text> texts) {

  /**
   * A book of the law that judged.
   *
   * @param readOn the day its texts were read
   * @param authority who decides there
   */
  public record Text(
      String book, String version, String title, LocalDate readOn, String authority) {}

  /**
   * What the findings come to.
   *
   * @param judge whose books judged, of the law and others
   * @param unread whether a book that may hold law of this place could not be read
   */
  static Law of(String place, Judge judge, List<Outcome> outcomes, boolean unread) {
    List<Text> texts =
        judge.manifests().stream()
            .filter(book -> book.kind() == Manifest.Kind.LAW)
            .map(
                book ->
                    new Text(
                        book.name(),
                        book.version().toString(),
                        book.title(),
                        Objects.requireNonNull(book.readOn()),
                        Objects.requireNonNull(book.authority())))
            .toList();
    if (texts.isEmpty()) {
      return new Law(
          LegalStanding.NOT_JUDGED,
          place,
          LegalStanding.NOT_JUDGED.at(place),
          "No book at hand holds the law of " + place + "; ask the local authority.",
          texts);
    }
    String decides = decides(texts);
    if (judge.rules().stream().noneMatch(rule -> rule.kind() == Kind.LAW)) {
      return new Law(
          LegalStanding.NOT_JUDGED,
          place,
          LegalStanding.NOT_JUDGED.at(place),
          "What is on file of its law was read at second hand and is told as cautions. " + decides,
          texts);
    }
    List<Outcome> law =
        outcomes.stream()
            .filter(outcome -> outcome.finding().kind() == Kind.LAW && outcome.waived().isEmpty())
            .toList();
    Optional<Outcome> gravest =
        law.stream()
            .filter(outcome -> !outcome.finding().possibly())
            .min(Comparator.comparing(Law::standing));
    Optional<Outcome> open =
        law.stream().filter(outcome -> outcome.finding().possibly()).findFirst();
    LegalStanding standing =
        gravest
            .map(Law::standing)
            .orElse(
                open.isPresent() || unread
                    ? LegalStanding.NOT_JUDGED
                    : LegalStanding.WITHIN_LIMITS);
    StringBuilder says = new StringBuilder();
    gravest.or(() -> open).ifPresent(outcome -> says.append(sentence(outcome)).append(' '));
    if (gravest.isPresent() && open.isPresent() && standing != LegalStanding.NOT_JUDGED) {
      says.append("Other limits could not be judged. ");
    }
    if (unread) {
      says.append("A book that may hold more of its law was not read. ");
    }
    if (standing == LegalStanding.WITHIN_LIMITS) {
      says.append("A book holds some limits of a place and never all of its law. ");
    }
    return new Law(standing, place, standing.at(place), says + decides, texts);
  }

  private static String decides(List<Text> texts) {
    return texts.stream()
        .map(Text::authority)
        .distinct()
        .collect(Collectors.joining(" and ", "The local authority decides: ", "."));
  }

  private static String sentence(Outcome outcome) {
    return new Sentences(outcome.finding(), outcome.words()).sentence();
  }

  private static LegalStanding standing(Outcome outcome) {
    LawOutcome written = outcome.words().outcome();
    return LegalStanding.of(written == null ? LawOutcome.NOT_JUDGED : written);
  }
}
