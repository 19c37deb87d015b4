package trammel.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.MeasuredFile;
import trammel.compare.Agreement;
import trammel.compare.Deviation;
import trammel.compare.Explanation;
import trammel.compare.Pair;
import trammel.derive.Predictions;
import trammel.quantity.Absence;
import trammel.quantity.Input;

/**
 * A finished vehicle against its predictions, as data. Lengths in mm, angles in degrees, pressures
 * in kPa; every ± is an expanded uncertainty, k = 2.
 *
 * @param agrees whether something was compared and all of it agrees
 * @param explanations likeliest first
 * @param holes other holes of a bracket with which all would agree
 * @param unforetold what was measured and nothing foretells
 * @param assumed what rule books assume of the vehicle where nobody gives a value
 */
public record Comparisons(
    String sheet,
    String measured,
    String vehicle,
    LocalDate on,
    boolean agrees,
    List<Line> values,
    List<Cause> explanations,
    List<Hole> holes,
    List<Unforetold> unforetold,
    List<Assumed> assumed) {

  /**
   * One measured value.
   *
   * @param pose how the vehicle stood, where that matters; else empty
   * @param score the difference in units of its expanded uncertainty (E_n of ISO 13528)
   */
  public record Line(
      String kind,
      String subject,
      String pose,
      String unit,
      double measured,
      double measuredExpanded,
      double predicted,
      double predictedExpanded,
      double score,
      boolean agrees) {}

  /**
   * A value that would explain what deviates.
   *
   * @param stated as it was read
   * @param wanted what it would have to be
   * @param shift how far that is, in units of its own standard uncertainty
   */
  public record Cause(
      String input,
      String file,
      int line,
      String path,
      String unit,
      double stated,
      double wanted,
      double shift) {}

  /**
   * A hole in which the bar would stand as it was measured.
   *
   * @param stated the hole of the sheet; the best one where it names none
   * @param wanted the other one
   */
  public record Hole(
      String axle, String bracket, String stated, String wanted, String file, int line) {}

  /** A measured value without a prediction, and why. */
  public record Unforetold(
      String kind,
      String subject,
      String pose,
      String unit,
      double measured,
      double measuredExpanded,
      String why) {}

  /** The data of a comparison. */
  public static Comparisons of(Build build, MeasuredFile file, Agreement agreement) {
    return new Comparisons(
        build.title(),
        file.measured(),
        build.vehicle().words(),
        file.on(),
        agreement.agrees(),
        agreement.deviations().stream().map(Comparisons::line).toList(),
        agreement.explanations().stream().map(Comparisons::cause).toList(),
        agreement.holes().stream().map(Comparisons::hole).toList(),
        agreement.unforetold().stream().map(Comparisons::unforetold).toList(),
        Assumed.of(build));
  }

  private static Line line(Deviation deviation) {
    Pair pair = deviation.pair();
    return new Line(
        pair.kind().toString(),
        pair.subject().toString(),
        pair.pose(),
        pair.measured().dimension().unit().symbol(),
        rounded(pair.measured().value()),
        rounded(pair.measured().expanded()),
        rounded(pair.predicted().value()),
        rounded(pair.predicted().expanded()),
        rounded(deviation.score()),
        deviation.agrees());
  }

  private static Cause cause(Explanation explanation) {
    Input input = explanation.input().input();
    return new Cause(
        explanation.input().name(),
        input == null ? "" : input.file(),
        input == null ? 0 : input.line(),
        input == null ? "" : input.path(),
        explanation.input().dimension().unit().symbol(),
        rounded(explanation.input().value()),
        rounded(explanation.wanted()),
        rounded(explanation.shift()));
  }

  private static Hole hole(Predictions.OtherHole hole) {
    return new Hole(
        hole.axle().toString(),
        hole.bracket(),
        hole.stated(),
        hole.other(),
        hole.place().file(),
        hole.place().line());
  }

  private static Unforetold unforetold(Pair pair) {
    return new Unforetold(
        pair.kind().toString(),
        pair.subject().toString(),
        pair.pose(),
        pair.measured().dimension().unit().symbol(),
        rounded(pair.measured().value()),
        rounded(pair.measured().expanded()),
        why(pair));
  }

  static String why(Pair pair) {
    @Nullable Absence absence = pair.predicted().absence();
    return absence == null ? "" : absence.reason();
  }

  private static double rounded(double value) {
    return Math.round(value * 1e6) / 1e6;
  }

  /**
   * The values as comma-separated values with a head line, those that nothing foretells last, with
   * the reason; each row says what is assumed of the vehicle.
   */
  public String csv() {
    String assumptions = CsvText.words(Assumed.cell(assumed));
    return CsvText.of(
        List.of(
            "kind",
            "subject",
            "pose",
            "unit",
            "measured",
            "measured-expanded",
            "predicted",
            "predicted-expanded",
            "score",
            "agrees",
            "missing",
            "assumed"),
        Stream.concat(
                values.stream().map(value -> row(value, assumptions)),
                unforetold.stream().map(value -> row(value, assumptions)))
            .toList());
  }

  private static List<String> row(Line value, String assumptions) {
    return List.of(
        value.kind(),
        value.subject(),
        CsvText.words(value.pose()),
        value.unit(),
        digits(value.measured(), 4),
        digits(value.measuredExpanded(), 4),
        digits(value.predicted(), 4),
        digits(value.predictedExpanded(), 4),
        digits(value.score(), 3),
        value.agrees() ? "yes" : "no",
        "",
        assumptions);
  }

  private static List<String> row(Unforetold value, String assumptions) {
    return List.of(
        value.kind(),
        value.subject(),
        CsvText.words(value.pose()),
        value.unit(),
        digits(value.measured(), 4),
        digits(value.measuredExpanded(), 4),
        "",
        "",
        "",
        "",
        CsvText.words(value.why()),
        assumptions);
  }

  private static String digits(double number, int places) {
    return String.format(Locale.ROOT, "%." + places + "f", number);
  }
}
