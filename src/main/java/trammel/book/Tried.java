package trammel.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One case of a rule, tried.
 *
 * @param shown the case
 * @param was what came out, in the words of cases: the gravest over the facts that it judges
 * @param why the ruling on the fact that came out so; null for a table
 * @param read what the table made of that fact; null for a rule
 */
public record Tried(Case shown, String was, @Nullable Ruling why, @Nullable TableRuling read) {
  private static final List<String> GRAVEST_FIRST = gravestFirst();

  private static List<String> gravestFirst() {
    List<String> results = new ArrayList<>();
    for (RuleKind kind : RuleKind.values()) {
      results.add(kind.toString());
    }
    results.add(Case.UNPROVEN);
    for (RuleKind kind : RuleKind.values()) {
      results.add(Case.POSSIBLY + kind);
    }
    results.addAll(List.of(Case.PRECEDENT, Case.NOTHING));
    return List.copyOf(results);
  }

  /** How a case stands. */
  public enum State {
    AS_EXPECTED,
    OTHERWISE,
    /** It does not come out as it should, and the sheet says so itself. */
    KNOWN_GAP,
    /** It comes out as it should, although the sheet calls it a known gap. */
    GAP_CLOSED
  }

  /** How the case stands. */
  public State state() {
    boolean same = was.equals(shown.expects());
    if (shown.knownGap().isEmpty()) {
      return same ? State.AS_EXPECTED : State.OTHERWISE;
    }
    return same ? State.GAP_CLOSED : State.KNOWN_GAP;
  }

  /** A rule's cases, tried in order. */
  public static List<Tried> all(SheetRule rule) {
    List<Tried> tried = new ArrayList<>();
    for (Case shown : rule.cases()) {
      Ruling gravest =
          Interpreter.judge(rule, shown.facts()).stream()
              .min(Comparator.comparing(ruling -> rank(ruling.result())))
              .orElseThrow();
      tried.add(new Tried(shown, gravest.result(), gravest, null));
    }
    return List.copyOf(tried);
  }

  /** A table's cases, tried in order. */
  public static List<Tried> all(Table table) {
    List<Tried> tried = new ArrayList<>();
    for (Case shown : table.rule().cases()) {
      TableRuling gravest =
          Interpreter.judge(table, shown.facts()).stream()
              .min(Comparator.comparing(ruling -> rank(ruling.result())))
              .orElseThrow();
      tried.add(new Tried(shown, gravest.result(), null, gravest));
    }
    return List.copyOf(tried);
  }

  private static int rank(String result) {
    return GRAVEST_FIRST.indexOf(result);
  }

  /** Whether some case makes the rule speak. */
  public static boolean speaks(List<Tried> tried) {
    return tried.stream().anyMatch(one -> rank(one.was()) < rank(Case.UNPROVEN));
  }
}
