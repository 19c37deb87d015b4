package trammel.book;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trammel.book.SheetFile.RuleEntry;
import trammel.catalog.PartKind;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.vocabulary.Component;
import trammel.vocabulary.FactType;

/** Reads one rule: looks up its names, and checks that it makes sense. */
final class RuleReader {
  private final Manifest manifest;
  private final Problems problems;

  RuleReader(Manifest manifest, Problems problems) {
    this.manifest = manifest;
    this.problems = problems;
  }

  /** The rule, or null if anything was refused. */
  @Nullable SheetRule read(RuleEntry entry) {
    int before = problems.count();
    Ids.rule(entry.rule(), entry.place(), problems);
    entry.replaces().forEach(old -> Ids.rule(old, entry.place(), problems));
    kind(entry.kind(), entry.outcome(), entry.place());
    since(manifest, entry.since(), entry.place(), problems);
    FactType about = LeafReader.fact(entry.about(), entry.place(), problems);
    if (about == null) {
      return null;
    }
    ConditionReader conditions = new ConditionReader(about, problems);
    Condition where = entry.where() == null ? null : conditions.read(entry.where());
    Demand demand = demand(entry, conditions);
    texts(entry, about, demand);
    List<Case> cases =
        new CaseReader(about, EnumSet.of(entry.kind()), asked(where, demand), problems)
            .read(entry.cases(), entry.place());
    if (problems.count() > before || demand == null) {
      return null;
    }
    return new SheetRule(
        entry.place(),
        entry.rule(),
        entry.title(),
        entry.kind(),
        entry.says(),
        entry.open() == null ? "" : entry.open(),
        entry.reason(),
        entry.source(),
        entry.since(),
        entry.safetyCritical(),
        entry.stricterThan(),
        entry.replaces(),
        entry.settle(),
        entry.outcome(),
        about,
        where,
        demand,
        cases);
  }

  private static Set<Component> asked(@Nullable Condition where, @Nullable Demand demand) {
    Set<Component> asked = new HashSet<>(Asked.of(where));
    asked.addAll(Asked.of(demand == null ? null : demand.condition()));
    return asked;
  }

  private void kind(RuleKind kind, @Nullable LawOutcome outcome, Place place) {
    boolean lawBook = manifest.kind() == Manifest.Kind.LAW;
    if (kind == RuleKind.LAW && !lawBook) {
      problems.add(
          place,
          "a rule of kind law in a book of kind shop; expected it in a book of the law",
          "Put it in a book that names its place and authority, or make it a caution.");
    }
    if (lawBook && kind != RuleKind.LAW && kind != RuleKind.CAUTION) {
      problems.add(
          place,
          "a rule of kind " + kind + " in a book of the law; expected law or caution",
          "What does not fit belongs in a book of kind shop.");
    }
    if ((kind == RuleKind.LAW) != (outcome != null)) {
      problems.add(
          place,
          kind == RuleKind.LAW ? "a rule of the law without outcome" : "an outcome of a " + kind,
          kind == RuleKind.LAW
              ? "Say what breaking it means: outcome: not-lawful, needs-certification,"
                  + " fails-inspection or not-judged."
              : "Remove it; only rules of the law have one.");
    }
  }

  /** A rule cannot be younger than its book. */
  static void since(
      Manifest manifest, trammel.vocabulary.Version since, Place place, Problems problems) {
    if (since.compareTo(manifest.version()) > 0) {
      problems.add(
          place,
          "since " + since + " in version " + manifest.version() + " of the book",
          "Raise the book's version, or correct since.");
    }
  }

  private @Nullable Demand demand(RuleEntry entry, ConditionReader conditions) {
    long forms =
        List.of(
                entry.demands() != null,
                entry.needs() != null,
                entry.excludes() != null,
                entry.tells())
            .stream()
            .filter(present -> present)
            .count();
    if (forms != 1) {
      problems.add(
          entry.place(),
          forms == 0
              ? "nothing is demanded; expected demands, needs, excludes or tells"
              : "more than one of demands, needs, excludes and tells; expected one",
          "Write one of them; make two rules of two demands.");
      return null;
    }
    if (entry.demands() != null) {
      Condition condition = conditions.read(entry.demands());
      return condition == null ? null : new Demand(Demand.Form.DEMANDS, condition, null);
    } else if (entry.needs() != null) {
      Condition.Some part = conditions.part(entry.needs());
      return part == null ? null : new Demand(Demand.Form.NEEDS, part, kind(part));
    } else if (entry.excludes() != null) {
      Condition.Some part = conditions.part(entry.excludes());
      return part == null
          ? null
          : new Demand(Demand.Form.EXCLUDES, new Condition.None(List.of(part)), null);
    }
    if (entry.where() == null) {
      problems.add(
          entry.place(),
          "a rule that tells, and does not say where; expected where",
          "Add a condition: it would speak on every sheet.");
    }
    return Demand.TELLS;
  }

  /** The kind of part that is asked for, where it is a kind and not one number. */
  private static @Nullable PartKind kind(Condition.Some part) {
    Condition.Is leaf = (Condition.Is) part.leaves().get(0);
    return leaf.term().component().ownName().equals("kind")
        ? PartKind.valueOf(leaf.names().get(0).toUpperCase(java.util.Locale.ROOT).replace('-', '_'))
        : null;
  }

  private void texts(RuleEntry entry, FactType about, @Nullable Demand demand) {
    TextCheck check = new TextCheck(entry.place(), problems);
    check.length("title", entry.title());
    check.length("reason", entry.reason());
    check.length("source", entry.source());
    boolean compares = demand == null || demand.condition() instanceof Condition.Compare;
    Set<String> more =
        demand != null && demand.form() == Demand.Form.NEEDS && demand.part() != null
            ? Set.of("need")
            : Set.of();
    check.names("says", entry.says(), about, compares, more);
    if (entry.open() != null) {
      check.names("open", entry.open(), about, false, Set.of());
    }
    entry.settle().forEach(way -> check.names("settle", way, about, compares, more));
  }
}
