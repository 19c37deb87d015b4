package trammel.report;

import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import trammel.build.Build;
import trammel.catalog.AssumedValue;
import trammel.quantity.Input;

/**
 * A value that a rule book assumes where nobody gives one, as reports show it.
 *
 * @param key the keys that lead to it in a vehicle's profile
 * @param what the value's name, as a fitter would say it
 * @param is the value with its expanded uncertainty (k = 2), in words
 * @param value the number
 * @param uncertainty its expanded uncertainty (k = 2)
 * @param unit the unit of both
 * @param book the book that assumes it
 * @param version the book's version
 * @param because why it may be taken
 * @param source who says so
 * @param place where the book has it
 */
public record Assumed(
    String key,
    String what,
    String is,
    double value,
    double uncertainty,
    String unit,
    String book,
    String version,
    String because,
    String source,
    String place) {
  private static final String HEADING =
      "Assumed, since nobody gives it (no safety-critical rule accepts it):";

  /** Everything that is assumed of the vehicle of a build. */
  static List<Assumed> of(Build build) {
    return of(build, input -> true);
  }

  /** What is assumed of the vehicle of a build and was read as one of some inputs. */
  static List<Assumed> of(Build build, Predicate<Input> which) {
    return build.assumed().stream()
        .filter(value -> which.test(Objects.requireNonNull(value.is().input())))
        .map(Assumed::of)
        .toList();
  }

  /** What a book gives, whether or not some vehicle wants it. */
  static Assumed of(AssumedValue value) {
    return new Assumed(
        value.key(),
        value.is().name(),
        Figures.text(value.is()),
        value.is().value(),
        value.is().expanded(),
        value.is().dimension().unit().symbol(),
        value.book(),
        value.version(),
        value.because(),
        value.source(),
        value.place().toString());
  }

  /**
   * All of them in one cell, which every row of a table bears: any of its values may rest on them,
   * and a row that was sorted or filtered still says so. Empty where nothing is assumed.
   */
  static String cell(List<Assumed> assumed) {
    return assumed.stream()
        .map(
            one ->
                one.what
                    + " "
                    + one.is
                    + " ("
                    + one.key
                    + ") by book "
                    + one.book
                    + " "
                    + one.version)
        .collect(Collectors.joining("; "));
  }

  /** All of them below a heading; nothing where nothing is assumed. */
  static void write(List<Assumed> assumed, Page page) {
    if (assumed.isEmpty()) {
      return;
    }
    page.heading(HEADING);
    for (Assumed one : assumed) {
      page.paragraph(
          "  - ",
          "    ",
          Sentences.upperFirst(one.what)
              + " "
              + one.is
              + " ("
              + one.key
              + "), by book "
              + one.book
              + " "
              + one.version
              + ". Because: "
              + one.because
              + ". Source: "
              + one.source
              + ". "
              + one.place);
    }
  }
}
