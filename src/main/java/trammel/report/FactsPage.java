package trammel.report;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.book.ConditionWords;
import trammel.build.Build;
import trammel.fact.Fact;
import trammel.quantity.Absence;
import trammel.quantity.Quantity;
import trammel.vocabulary.Component;
import trammel.vocabulary.FactType;
import trammel.vocabulary.Vocabulary;

/** The facts of a build, by the names that sheets ask of, as text. */
public final class FactsPage {
  private static final int NAMES = 26;

  private FactsPage() {}

  /**
   * The facts of a build.
   *
   * @param only names of the facts to show; empty for all
   */
  public static String text(
      Build build, Collection<? extends Fact> facts, List<String> only, LocalDate on) {
    Page page = new Page();
    page.paragraph(
        "",
        "",
        build.title()
            + ": what rules may ask of on the "
            + build.vehicle().words()
            + ", as proposed, "
            + on);
    facts.stream()
        .filter(fact -> only.isEmpty() || only.contains(Vocabulary.fact(fact.getClass()).name()))
        .sorted(
            Comparator.comparing((Fact fact) -> Vocabulary.fact(fact.getClass()).name())
                .thenComparing(Fact::subject))
        .forEach(fact -> fact(fact, page));
    Assumed.write(Assumed.of(build), page);
    return page.toString();
  }

  private static void fact(Fact fact, Page page) {
    FactType type = Vocabulary.fact(fact.getClass());
    page.heading(type.name() + "  (" + fact.subject() + ")");
    for (Component component : type.components()) {
      if (!component.ownName().equals("subject")) {
        String name = "  " + component.ownName() + " ";
        page.paragraph(
            name + " ".repeat(Math.max(0, NAMES - name.length())),
            " ".repeat(NAMES + 2),
            value(component.of(fact)));
      }
    }
  }

  private static String value(@Nullable Object value) {
    String words = ConditionWords.value(value);
    if (value instanceof Quantity quantity && quantity.absence() != null) {
      Absence absence = quantity.absence();
      return words + (absence.how().isEmpty() ? "" : "; " + absence.how());
    }
    return words;
  }
}
