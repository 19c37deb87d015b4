package trammel.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.catalog.Catalog;
import trammel.read.Problem;
import trammel.read.Words;
import trammel.vocabulary.FactType;

/**
 * What is doubtful in books that can be read: cases that do not come out, rules that can never
 * speak or add nothing, tables with gaps or rows that contradict each other, texts that are old,
 * values assumed that no vehicle wants or can have. Values are taken as exact for it.
 *
 * @param wrong what must be mended
 * @param doubtful what is to be looked at
 */
public record Proof(List<Problem> wrong, List<Problem> doubtful) {
  /** Rules about one fact beyond which not every one is held against every other. */
  private static final int COMPARED = 300;

  /** How long the texts of a law are taken to hold; common practice (years). */
  private static final int LAW_YEARS = 1;

  /**
   * Proofreads books, held against no catalog.
   *
   * @param on the day it is done
   */
  public static Proof of(List<Book> books, LocalDate on) {
    return of(books, null, on);
  }

  /**
   * Proofreads books.
   *
   * @param catalog whose vehicles what they assume is held against; null for none
   * @param on the day it is done
   */
  public static Proof of(List<Book> books, @Nullable Catalog catalog, LocalDate on) {
    Proof proof = new Proof(new ArrayList<>(), new ArrayList<>());
    for (Book book : books) {
      proof.date(book.manifest(), on);
      book.rules().forEach(rule -> proof.cases(rule, Tried.all(rule)));
      book.tables().forEach(table -> proof.cases(table.rule(), Tried.all(table)));
      book.rules().forEach(proof::never);
      book.tables().forEach(table -> proof.doubtful.addAll(TableProof.of(table)));
    }
    proof.covered(books);
    DefaultProof defaults = new DefaultProof();
    defaults.hold(books);
    if (catalog != null) {
      books.forEach(book -> defaults.hold(book, catalog));
    }
    proof.wrong.addAll(defaults.wrong());
    proof.doubtful.addAll(defaults.doubtful());
    return new Proof(
        proof.wrong.stream().sorted().toList(), proof.doubtful.stream().sorted().toList());
  }

  private void date(Manifest manifest, LocalDate on) {
    LocalDate read = manifest.readOn();
    if (read != null && on.isAfter(read.plusYears(LAW_YEARS))) {
      doubtful.add(
          new Problem(
              manifest.place(),
              "its texts were read on " + read + ", more than a year ago",
              "Read them again, and write the new day as read-on."));
    }
  }

  private void cases(SheetRule rule, List<Tried> tried) {
    for (Tried one : tried) {
      Case shown = one.shown();
      if (one.state() == Tried.State.OTHERWISE) {
        wrong.add(
            new Problem(
                shown.place(),
                rule.id()
                    + ", case "
                    + Words.quoted(shown.name())
                    + " comes out as "
                    + one.was()
                    + "; expected "
                    + shown.expects(),
                "Correct the rule or the case; rules try shows which condition decides."));
      } else if (one.state() == Tried.State.GAP_CLOSED) {
        doubtful.add(
            new Problem(
                shown.place(),
                "a known gap that is none: the case comes out as it should",
                "Remove known-gap."));
      }
    }
  }

  private void never(SheetRule rule) {
    if (neverSpeaks(rule)) {
      doubtful.add(
          new Problem(
              rule.place(),
              rule.id() + " can never speak: no values are on the wrong side of it",
              "Look for conditions that exclude each other, or a demand that where includes."));
    }
  }

  private static boolean neverSpeaks(SheetRule rule) {
    return !Possible.together(List.of(), List.of(rule.whole()));
  }

  private void covered(List<Book> books) {
    Map<FactType, List<SheetRule>> byFact = new LinkedHashMap<>();
    for (Book book : books) {
      book.rules().stream()
          .filter(rule -> !neverSpeaks(rule))
          .forEach(
              rule -> byFact.computeIfAbsent(rule.about(), fact -> new ArrayList<>()).add(rule));
    }
    for (List<SheetRule> rules : byFact.values()) {
      List<SheetRule> some = rules.subList(0, Math.min(rules.size(), COMPARED));
      for (int i = 0; i < some.size(); i++) {
        covered(some.get(i), i, some);
      }
    }
  }

  /** Of two rules that say the same, the later one is the one that adds nothing. */
  private void covered(SheetRule rule, int at, List<SheetRule> rules) {
    for (int i = 0; i < rules.size(); i++) {
      SheetRule other = rules.get(i);
      boolean asGrave = other.kind().compareTo(rule.kind()) <= 0;
      if (i != at && asGrave && covers(other, rule) && (i < at || !sameBoth(rule, other))) {
        doubtful.add(
            new Problem(
                rule.place(),
                rule.id() + " adds nothing: " + other.id() + " speaks wherever it does",
                "Remove one of them, or tell apart where they apply."));
        return;
      }
    }
  }

  private static boolean sameBoth(SheetRule rule, SheetRule other) {
    return rule.kind() == other.kind() && covers(rule, other);
  }

  private static boolean covers(SheetRule wider, SheetRule narrower) {
    return !Possible.together(List.of(wider.whole()), List.of(narrower.whole()));
  }
}
