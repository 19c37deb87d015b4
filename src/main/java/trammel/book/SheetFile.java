package trammel.book;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.read.Named;
import trammel.read.Node;
import trammel.read.Place;
import trammel.read.Required;
import trammel.vocabulary.Version;

/**
 * A rule sheet as it is written, {@code NAME.rules.yaml}: bound, its names not yet looked up.
 *
 * @param rules its rules
 * @param tables rules whose demand is a table of what was seen
 * @param defaults values to be taken where a sheet has none
 */
public record SheetFile(
    Place place, List<RuleEntry> rules, List<TableEntry> tables, List<DefaultEntry> defaults) {

  /**
   * A rule.
   *
   * @param rule its id, {@code group.name}
   * @param title what it demands, in a line
   * @param kind what it amounts to when it is broken
   * @param says the finding, with names of the fact's components in braces
   * @param open what to say where a value is missing
   * @param reason why it matters
   * @param source document and clause, or <em>common practice</em>
   * @param since the version of the book that first had it
   * @param safetyCritical whether no waiver can lift it
   * @param stricterThan the rule that it tightens
   * @param replaces earlier ids, whose waivers still count
   * @param settle what a fitter would try, in order
   * @param outcome what breaking it means, for a rule of the law
   * @param about the fact that it judges
   * @param where when it applies
   * @param demands what must hold
   * @param needs a part that must be there
   * @param excludes a part that must not be there
   * @param tells whether it only tells, wherever it applies
   * @param cases what it is shown to do: fires, near miss, undecided, absent
   */
  record RuleEntry(
      Place place,
      @Required String rule,
      @Required String title,
      @Required RuleKind kind,
      @Required String says,
      @Nullable String open,
      @Required String reason,
      @Required String source,
      @Required Version since,
      boolean safetyCritical,
      @Nullable String stricterThan,
      List<String> replaces,
      List<String> settle,
      @Nullable LawOutcome outcome,
      @Required String about,
      @Nullable Node where,
      @Nullable Node demands,
      @Nullable Node needs,
      @Nullable Node excludes,
      boolean tells,
      List<Node> cases) {}

  /**
   * A table.
   *
   * @param table its id, {@code group.name}
   * @param title what it demands, in a line
   * @param kind what a row amounts to that states no outcome
   * @param says the finding, with names of the fact's components and of results in braces
   * @param open what to say where a value is missing
   * @param reason why it matters
   * @param source who saw it
   * @param since the version of the book that first had it
   * @param stricterThan the rule that its rows tighten; a row that fits loosens nothing
   * @param settle what a fitter would try, in order
   * @param about the fact that it judges
   * @param where when it applies
   * @param columns what its rows are found by
   * @param results what its rows tell
   * @param hit which of several matching rows counts
   * @param csv the file beside the sheet that holds its rows
   * @param rows its rows
   * @param cases what it is shown to do
   */
  record TableEntry(
      Place place,
      @Required String table,
      @Required String title,
      @Required RuleKind kind,
      @Required String says,
      @Nullable String open,
      @Required String reason,
      @Required String source,
      @Required Version since,
      @Nullable String stricterThan,
      List<String> settle,
      @Required String about,
      @Nullable Node where,
      List<ColumnEntry> columns,
      List<String> results,
      @Required Table.Hit hit,
      @Nullable String csv,
      List<Node> rows,
      List<Node> cases) {}

  /**
   * A column that rows are found by.
   *
   * @param value the component
   * @param of where its fact stands, if it is another than the one judged
   * @param reads how its cells are read
   * @param worse which way a value is worse, where cells hold what was seen
   */
  record ColumnEntry(
      Place place,
      @Required String value,
      @Nullable Of of,
      @Required Reads reads,
      @Nullable Worse worse) {}

  /** How the cells of a column are read. */
  enum Reads {
    EQUAL,
    RANGE,
    NO_WORSE_THAN
  }

  /** Which way a value is worse. */
  enum Worse {
    LARGER,
    SMALLER
  }

  /**
   * A value to be taken where a sheet and its catalog have none.
   *
   * @param value the keys that lead to it in a vehicle's profile
   * @param is the value with its uncertainty
   * @param because why it may be taken
   * @param source who says so
   */
  record DefaultEntry(
      Place place,
      @Required String value,
      @Named("is") @Required String is,
      @Required String because,
      @Required String source) {}
}
