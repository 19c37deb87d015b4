package trammel.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import trammel.build.Build;
import trammel.build.MeasuredFile;
import trammel.compare.Agreement;
import trammel.compare.Deviation;
import trammel.compare.Explanation;
import trammel.compare.Kind;
import trammel.compare.Pair;
import trammel.derive.Predictions;
import trammel.quantity.Input;
import trammel.quantity.Quantity;
import trammel.read.QuantityWriter;
import trammel.read.Words;

/** A finished vehicle against its predictions, as text. */
public final class ComparisonPage {
  private final Page page = new Page();

  private ComparisonPage() {}

  /** The comparison as text that ends with a line break. */
  public static String text(Build build, MeasuredFile file, Agreement agreement) {
    ComparisonPage page = new ComparisonPage();
    page.write(build, file, agreement);
    return page.page.toString();
  }

  private void write(Build build, MeasuredFile file, Agreement agreement) {
    page.paragraph("", "", lead(agreement));
    page.gap();
    page.paragraph(
        "",
        "",
        build.title()
            + " on the "
            + build.vehicle().words()
            + ": what was predicted, and what \""
            + file.measured()
            + "\" has of "
            + file.on()
            + ".");
    for (Kind kind : Kind.values()) {
      List<Deviation> deviations =
          agreement.deviations().stream().filter(each -> each.pair().kind() == kind).toList();
      if (!deviations.isEmpty()) {
        scale(kind, deviations);
      }
    }
    if (!agreement.deviations().isEmpty()) {
      page.gap();
      page.paragraph(
          "",
          "",
          "o is what was measured, told from + what was predicted; ( ) is the prediction's ±. The "
              + "number at the end is the difference in units of its own ± (E_n of ISO 13528): up "
              + "to 1 either way agrees.");
    }
    List<Deviation> failed =
        agreement.deviations().stream().filter(each -> !each.agrees()).toList();
    if (!failed.isEmpty()) {
      page.heading("What does not agree:");
      failed.forEach(each -> page.paragraph("  ", "    ", sentence(each)));
      explanations(agreement);
    }
    unforetold(agreement.unforetold());
    Assumed.write(Assumed.of(build), page);
    page.gap();
    page.paragraph("", "", "Local law and a licensed mechanic or engineer have the last word.");
  }

  private static String lead(Agreement agreement) {
    int all = agreement.deviations().size();
    long failed = agreement.deviations().stream().filter(each -> !each.agrees()).count();
    if (all == 0) {
      return "NOTHING COMPARED.  None of what was measured is predicted.";
    }
    if (failed > 0) {
      return "DOES NOT AGREE.  "
          + failed
          + " of "
          + all
          + (failed == 1 ? " measured values lies" : " measured values lie")
          + " farther from what was predicted than is known of both.";
    }
    return "AGREES.  "
        + (all == 1 ? "The one measured value lies" : "All " + all + " measured values lie")
        + " where predicted, within what is known of both.";
  }

  private void scale(Kind kind, List<Deviation> deviations) {
    RuledScale scale = RuledScale.of(deviations);
    String unit = deviations.get(0).pair().measured().dimension().unit().symbol();
    page.heading(kind.words() + " (" + unit + ")");
    page.line(" ".repeat(LABEL) + scale.numbers());
    for (Deviation deviation : deviations) {
      page.line(
          label(deviation.pair())
              + "  "
              + scale.line(deviation)
              + String.format(Locale.ROOT, " %6s", score(deviation.score())));
    }
  }

  private static String score(double score) {
    return String.format(Locale.ROOT, Math.abs(score) < 10 ? "%.2f" : "%.0f", score);
  }

  /** Columns before the axis: where, and what was measured. */
  private static final int LABEL = 28;

  private static String label(Pair pair) {
    String where = pair.subject().where();
    String detail = pair.subject().detail();
    String place =
        Sentences.upperFirst(
            (detail.startsWith(where) ? detail : where + " " + detail).strip().replace('-', ' '));
    String value = QuantityWriter.value(pair.measured()).replaceFirst("(?<=[0-9]) ?[^0-9]+$", "");
    int room = LABEL - 3 - value.length();
    String cut = place.length() > room ? place.substring(0, room) : place;
    return "  " + cut + " ".repeat(room - cut.length() + 1) + value;
  }

  private static String words(Kind kind) {
    return kind.toString().replace('-', ' ');
  }

  private static String sentence(Deviation deviation) {
    Pair pair = deviation.pair();
    Quantity measured = pair.measured();
    String pose = pair.pose().isEmpty() ? "" : " (" + pair.pose() + ")";
    String way = deviation.difference() < 0 ? "lower" : "higher";
    return pair.subject().words()
        + ", "
        + words(pair.kind())
        + pose
        + ": measured "
        + QuantityWriter.uncertain(measured)
        + " where "
        + QuantityWriter.uncertain(pair.predicted())
        + " was predicted: "
        + number(measured, Math.abs(deviation.difference()), 2)
        + " "
        + way
        + ".";
  }

  /** A number in a quantity's unit to so many significant digits. */
  private static String number(Quantity like, double value, int digits) {
    return QuantityWriter.shortest(
        like.dimension(), Double.parseDouble(Figures.rounded(value, digits)));
  }

  private void explanations(Agreement agreement) {
    if (!agreement.holes().isEmpty()) {
      page.heading("All of it agrees with the bar in another hole:");
      agreement.holes().forEach(hole -> page.paragraph("  ", "    ", sentence(hole)));
      if (agreement.explanations().isEmpty()) {
        return;
      }
    }
    if (agreement.explanations().isEmpty()) {
      page.heading("What would explain it:");
      page.paragraph(
          "  ",
          "  ",
          "No single value on the sheet, moved by up to three of its own standard uncertainties, "
              + "explains all of it. Look at the "
              + agreement.deviations().stream()
                  .filter(each -> !each.agrees())
                  .map(each -> each.pair().subject().where().replace('-', ' '))
                  .distinct()
                  .collect(Collectors.joining(" and the "))
              + " for something that is not on the sheet: a wrong part, one that is not seated, a "
              + "spring that has sagged, a seized bush.");
      return;
    }
    page.heading("What would explain all of it, likeliest first:");
    int number = 1;
    for (Explanation explanation : agreement.explanations()) {
      page.paragraph("  " + number++ + ". ", "     ", sentence(explanation));
    }
  }

  private static String sentence(Predictions.OtherHole hole) {
    return "The "
        + hole.axle()
        + " panhard bar would have to be in the hole "
        + Words.quoted(hole.other())
        + " of the bracket "
        + hole.bracket()
        + " instead of "
        + Words.quoted(hole.stated())
        + ": "
        + hole.place()
        + ".";
  }

  private static String sentence(Explanation explanation) {
    Quantity stated = explanation.input();
    Input input = stated.input();
    double change = explanation.wanted() - stated.value();
    String way = change < 0 ? "lower" : "higher";
    String by =
        stated.value() == 0
            ? ""
            : String.format(
                Locale.ROOT, " (%.0f %% %s)", Math.abs(change / stated.value()) * 100, way);
    return "The "
        + stated.name()
        + " would have to be "
        + number(stated, explanation.wanted(), 3)
        + " instead of "
        + number(stated, stated.value(), 3)
        + by
        + ", "
        + String.format(Locale.ROOT, "%.1f", Math.abs(explanation.shift()))
        + " of its own standard uncertainties off: "
        + (input == null ? "" : input.place())
        + ".";
  }

  private void unforetold(List<Pair> pairs) {
    if (pairs.isEmpty()) {
      return;
    }
    page.heading("Measured, and not predicted:");
    pairs.stream()
        .collect(
            Collectors.groupingBy(
                pair -> words(pair.kind()) + ": " + Comparisons.why(pair),
                java.util.LinkedHashMap::new,
                Collectors.mapping(
                    pair -> pair.subject().words().toLowerCase(Locale.ROOT),
                    Collectors.joining(", "))))
        .forEach(
            (why, where) ->
                page.paragraph("  ", "    ", Sentences.upperFirst(where) + ", " + why + "."));
  }
}
