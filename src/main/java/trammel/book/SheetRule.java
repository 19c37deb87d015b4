package trammel.book;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.read.Place;
import trammel.vocabulary.FactType;
import trammel.vocabulary.Version;

/**
 * A rule of a sheet.
 *
 * @param place where it stands
 * @param id {@code group.name}
 * @param title what it demands, in a line
 * @param kind what it amounts to when it is broken
 * @param says the finding, with names of the fact's components in braces
 * @param open what to say where a value is missing; empty for the usual sentence
 * @param reason why it matters
 * @param source document and clause, or <em>common practice</em>
 * @param since the version of its book that first had it
 * @param safetyCritical whether no waiver can lift it
 * @param stricterThan the rule that it tightens; null where it stands alone
 * @param replaces earlier ids, whose waivers still count
 * @param settle what a fitter would try, in order
 * @param outcome what breaking it means, for a rule of the law; null for any other
 * @param about the fact that it judges
 * @param where when it applies; null where always
 * @param demand what must hold then
 * @param cases what it is shown to do
 */
public record SheetRule(
    Place place,
    String id,
    String title,
    RuleKind kind,
    String says,
    String open,
    String reason,
    String source,
    Version since,
    boolean safetyCritical,
    @Nullable String stricterThan,
    List<String> replaces,
    List<String> settle,
    @Nullable LawOutcome outcome,
    FactType about,
    @Nullable Condition where,
    Demand demand,
    List<Case> cases) {

  public SheetRule {
    replaces = List.copyOf(replaces);
    settle = List.copyOf(settle);
    cases = List.copyOf(cases);
  }

  /** What must hold of every fact that it judges: its demand, or that it does not apply. */
  public Condition whole() {
    return where == null
        ? demand.condition()
        : new Condition.Any(List.of(demand.condition(), new Condition.None(List.of(where))));
  }

  /** The group its id begins with. */
  public String group() {
    return id.substring(0, id.indexOf('.'));
  }
}
