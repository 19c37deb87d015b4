package trammel.report;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trammel.catalog.PartKind;
import trammel.fact.Fact;
import trammel.judge.Finding;
import trammel.judge.Kind;
import trammel.judge.Rule;
import trammel.quantity.Absence;
import trammel.quantity.Comparison;
import trammel.quantity.Decision;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.read.Words;

/** What a finding says, in words a parts counter reads. */
final class Sentences {
  private static final Pattern NAME = Pattern.compile("\\{([a-z-]+)(%?)}");
  private static final String NOT_STATED = "not stated";
  private static final Formula SHORT = new Formula("short by", "−margin", "definition");

  private final Finding finding;
  private final Rule rule;

  Sentences(Finding finding, Rule rule) {
    this.finding = finding;
    this.rule = rule;
  }

  /** The finding in one sentence, without its place; in another, what was not accepted for it. */
  String sentence() {
    return found() + notAccepted();
  }

  /** What a book assumes, where this rule waits for the value to be given. */
  private String notAccepted() {
    return finding.told().notAccepted().stream()
        .map(
            value ->
                " "
                    + upperFirst(value.is().name())
                    + " is only assumed, "
                    + Figures.text(value.is())
                    + " by "
                    + value.whose()
                    + ", which a safety-critical rule does not accept: measure it.")
        .distinct()
        .collect(Collectors.joining());
  }

  private String found() {
    if (finding.decision() == Decision.ABSENT && !rule.open().isEmpty()) {
      return upperFirst(filled(rule.open()));
    }
    if (finding.kind() == Kind.UNPROVEN || finding.decision() == Decision.ABSENT) {
      return "It is open whether " + lowerFirst(rule.title()) + ": " + whyOpen() + ".";
    }
    String said = upperFirst(filled(rule.says()));
    return finding.possibly() ? "Possibly: " + said : said;
  }

  /** The value against its limit, where the sentence does not already say it. */
  String figures() {
    Comparison comparison = finding.comparison();
    boolean said = finding.kind() == Kind.UNPROVEN || finding.decision() == Decision.ABSENT;
    return comparison == null || said
        ? ""
        : Figures.against(comparison, sentence(), quantity -> text(quantity, inPercent()));
  }

  /** Whether the rule speaks of shares, which are shown in percent. */
  private boolean inPercent() {
    return rule.says().contains("%}");
  }

  private String whyOpen() {
    Comparison comparison = finding.comparison();
    if (comparison == null || !comparison.decision().isOpen()) {
      return "a mark or name that decides it is not known";
    }
    if (comparison.decision() == Decision.ABSENT) {
      List<Absence> missing = Absences.behind(comparison.margin());
      return missing.stream()
          .map(absence -> absence.what() + " is not known (" + absence.reason() + ")")
          .distinct()
          .collect(Collectors.joining("; "));
    }
    return Figures.named(comparison.quantity())
        + " is "
        + text(comparison.quantity(), inPercent())
        + " against "
        + comparison.sense().words()
        + " "
        + text(comparison.limit(), inPercent())
        + ", closer than it is known";
  }

  /**
   * A template with its names filled in.
   *
   * @throws IllegalStateException if it names what the fact does not have
   */
  String filled(String template) {
    return NAME.matcher(template)
        .replaceAll(
            found ->
                java.util.regex.Matcher.quoteReplacement(
                    value(found.group(1), !found.group(2).isEmpty(), template)));
  }

  private String value(String name, boolean percent, String template) {
    Comparison comparison = finding.comparison();
    if (comparison != null && name.equals("short")) {
      return text(SHORT.linear(-1, comparison.margin()), percent);
    }
    if (comparison != null && name.equals("value")) {
      return text(comparison.quantity(), percent);
    }
    if (finding.need() != null && name.equals("need")) {
      return finding.need().kind().words();
    }
    String result = finding.told().results().get(name);
    if (result != null) {
      return result.isBlank() ? NOT_STATED : result;
    }
    Optional<String> component = component(finding.fact(), name, percent);
    if (component.isEmpty() && comparison != null && name.equals("limit")) {
      return text(comparison.limit(), percent);
    }
    return component.orElseThrow(
        () ->
            new IllegalStateException(
                rule.id() + " names {" + name + "}, which its fact does not have: " + template));
  }

  private static Optional<String> component(Fact fact, String name, boolean percent) {
    for (RecordComponent component : fact.getClass().getRecordComponents()) {
      if (Words.kebab(component.getName()).equals(name)) {
        try {
          return Optional.of(text(component.getAccessor().invoke(fact), percent));
        } catch (ReflectiveOperationException e) {
          throw new IllegalStateException("cannot read " + name + " of " + fact, e);
        }
      }
    }
    return Optional.empty();
  }

  private static String text(@Nullable Object value, boolean percent) {
    if (value == null) {
      return NOT_STATED;
    }
    if (value instanceof Quantity quantity) {
      return percent ? Figures.percent(quantity) : Figures.text(quantity);
    }
    if (value instanceof PartKind kind) {
      return kind.words();
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    if (value instanceof List<?> list) {
      return list.stream().map(item -> text(item, percent)).collect(Collectors.joining(", "));
    }
    if (value instanceof Enum<?> choice) {
      return choice.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
    return value.toString().isBlank() ? NOT_STATED : value.toString();
  }

  static String upperFirst(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  private static String lowerFirst(String text) {
    boolean abbreviation = text.length() > 1 && Character.isUpperCase(text.charAt(1));
    return abbreviation ? text : Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }
}
