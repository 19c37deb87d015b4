package trammel.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import trammel.book.Book;
import trammel.book.Case;
import trammel.book.ConditionWords;
import trammel.book.Interpreter;
import trammel.book.Ruling;
import trammel.book.SheetRule;
import trammel.book.Table;
import trammel.book.TableRuling;
import trammel.build.Build;
import trammel.fact.Fact;
import trammel.judge.Examples;
import trammel.judge.Finding;
import trammel.judge.Judge;
import trammel.judge.Judgement;
import trammel.judge.Precedent;
import trammel.judge.Rule;
import trammel.read.Words;

/** One rule in sentences, and why it spoke or did not on one build sheet. */
public final class RuleOnSheetPage {
  private final Page page = new Page();
  private final Collection<? extends Fact> facts;

  private RuleOnSheetPage(Collection<? extends Fact> facts) {
    this.facts = facts;
  }

  /**
   * The rule and what it made of the facts of a build.
   *
   * @param rule the rule, of whatever book
   * @param books every book of sheets at hand
   * @param facts what this rule judges by
   * @param judge the rules that hold for the build
   * @param judgement what they made of it
   */
  public static String text(
      Rule rule,
      List<Book> books,
      Build build,
      Collection<? extends Fact> facts,
      Judge judge,
      Judgement judgement) {
    RuleOnSheetPage page = new RuleOnSheetPage(facts);
    Optional<SheetRule> sheet = sheetRule(rule, books);
    Optional<Table> table = table(rule, books);
    page.head(
        rule,
        sheet
            .map(RuleWords::conditions)
            .or(() -> table.map(RuleWords::conditions))
            .orElse(List.of()));
    page.examples(Examples.of(books).of(rule.id()));
    page.page.heading("On " + build.title() + ":");
    if (judge.rule(rule.id()).isEmpty()) {
      page.page.paragraph(
          "  ",
          "  ",
          "The book " + rule.book() + " does not judge here: it is for other vehicles or places.");
    } else if (sheet.isPresent()) {
      page.sheet(sheet.get());
    } else if (table.isPresent()) {
      page.table(table.get());
    } else {
      page.base(rule, judge, judgement);
    }
    if (!judge.isCritical(rule.id())) {
      Assumed.write(Assumed.of(build), page.page);
    }
    return page.page.toString();
  }

  private static Optional<SheetRule> sheetRule(Rule rule, List<Book> books) {
    return books.stream()
        .flatMap(book -> book.rules().stream())
        .filter(one -> one.id().equals(rule.id()))
        .findFirst();
  }

  private static Optional<Table> table(Rule rule, List<Book> books) {
    return books.stream()
        .flatMap(book -> book.tables().stream())
        .filter(one -> one.rule().id().equals(rule.id()))
        .findFirst();
  }

  private void head(Rule rule, List<String> conditions) {
    page.paragraph("", "  ", rule.id() + ": " + rule.title() + ".");
    conditions.forEach(line -> page.paragraph("  ", "    ", line));
    page.paragraph("  ", "    ", "Why: " + rule.reason());
    page.paragraph(
        "  ", "    ", "By: " + rule.source() + ". Book " + rule.book() + ", since " + rule.since());
  }

  private void examples(List<Examples.Example> examples) {
    if (!examples.isEmpty()) {
      page.paragraph("  ", "    ", "Examples:");
      examples.forEach(example -> page.paragraph("    - ", "      ", example.toString()));
    }
  }

  private void sheet(SheetRule rule) {
    List<Ruling> rulings = Interpreter.judge(rule, facts);
    none(rulings.isEmpty(), rule);
    Map<Said, List<String>> alike = new LinkedHashMap<>();
    for (Ruling ruling : rulings) {
      add(alike, ruling.fact(), ruling.result(), RuleReasons.of(ruling));
    }
    alike.forEach(this::said);
  }

  private void table(Table table) {
    List<TableRuling> rulings = Interpreter.judge(table, facts);
    none(rulings.isEmpty(), table.rule());
    Map<Said, List<String>> alike = new LinkedHashMap<>();
    for (TableRuling ruling : rulings) {
      add(alike, ruling.fact(), ruling.result(), RuleReasons.of(ruling, facts));
    }
    alike.forEach(this::said);
  }

  /** What came out and why: told once for all places where both are the same. */
  private record Said(String result, List<RuleReasons.Line> why) {}

  private static void add(
      Map<Said, List<String>> alike, Fact fact, String result, List<RuleReasons.Line> why) {
    alike
        .computeIfAbsent(new Said(result, why), key -> new ArrayList<>())
        .add(fact.subject().toString());
  }

  private void said(Said said, List<String> places) {
    page.paragraph("  ", "    ", String.join(", ", places) + ": " + words(said.result()));
    RuleReasons.print(said.why(), "    ", page);
  }

  private void none(boolean empty, SheetRule rule) {
    if (empty) {
      page.paragraph(
          "  ",
          "  ",
          "Nothing to judge: the sheet has no " + Words.spaced(rule.about().name()) + ".");
    }
  }

  private static String words(String result) {
    return switch (result) {
      case Case.NOTHING -> "silent";
      case Case.PRECEDENT -> "silent, because it is sound there as found and gets no worse";
      default -> "speaks, " + result;
    };
  }

  private void base(Rule rule, Judge judge, Judgement judgement) {
    long looked = facts.stream().filter(fact -> rule.facts().contains(fact.getClass())).count();
    List<Finding> found =
        judgement.findings().stream().filter(finding -> isBy(rule, finding)).toList();
    List<Precedent> precedents =
        judgement.precedents().stream().filter(one -> one.rule().equals(rule.id())).toList();
    for (Finding finding : found) {
      page.paragraph(
          "  ",
          "    ",
          finding.fact().subject()
              + ": speaks, "
              + finding.kind()
              + ". "
              + new Sentences(finding, judge.rule(finding.told().by()).orElse(rule)).sentence());
      if (finding.comparison() != null) {
        page.paragraph(
            "    ",
            "      ",
            Sentences.upperFirst(finding.comparison().quantity().name())
                + ": "
                + ConditionWords.margin(finding.comparison()));
      }
    }
    for (Precedent precedent : precedents) {
      page.paragraph("  ", "    ", precedent.fact().subject() + ": " + words(Case.PRECEDENT));
    }
    page.paragraph(
        "  ",
        "  ",
        looked == 0
            ? "Nothing to judge: the sheet has none of the facts it asks of."
            : "It asks of "
                + looked
                + (looked == 1 ? " fact" : " facts")
                + " of this sheet"
                + (found.isEmpty() && precedents.isEmpty()
                    ? ", and what it demands holds, or it does not apply."
                    : "; of the others what it demands holds, or it does not apply."));
  }

  private static boolean isBy(Rule rule, Finding finding) {
    return Stream.concat(
            Stream.of(finding.rule(), finding.told().by()), finding.told().also().stream())
        .anyMatch(rule.id()::equals);
  }
}
