package trammel.report;

import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import trammel.build.Build;
import trammel.judge.Finding;
import trammel.judge.Rule;
import trammel.quantity.Absence;
import trammel.quantity.Comparison;
import trammel.quantity.Formula;
import trammel.quantity.Input;
import trammel.quantity.Quantity;
import trammel.quantity.Unit;

/** The working of a finding: a tree of formulas down to what was read, and where. */
public final class WorkingText {
  private static final String STEP = "  ";

  private final Page page = new Page();
  private final Set<Quantity> shown = Collections.newSetFromMap(new IdentityHashMap<>());

  private final Set<Input> read = Collections.newSetFromMap(new IdentityHashMap<>());

  private WorkingText() {}

  /**
   * The working of a finding as text that ends with a line break.
   *
   * @param build what it was found on
   */
  public static String of(Finding finding, Rule rule, Build build) {
    WorkingText text = new WorkingText();
    text.write(finding, rule);
    Assumed.write(Assumed.of(build, text.read::contains), text.page);
    return text.page.toString();
  }

  private void write(Finding finding, Rule rule) {
    String sentence = new Sentences(finding, rule).sentence();
    page.paragraph("", STEP, finding.fact().subject().words() + ": " + sentence);
    page.right("[" + finding.identity() + "]").gap();
    page.paragraph("", STEP, "Rule: " + rule.title() + " (" + rule.source() + ")").gap();
    Comparison comparison = finding.comparison();
    if (comparison == null) {
      page.paragraph("", "", "Marks and names were compared; there is nothing to calculate.");
      return;
    }
    tree(comparison.margin(), "");
    uncertainty(comparison.margin());
  }

  private void tree(Quantity quantity, String indent) {
    String others = indent + STEP + STEP;
    String name = quantity.name().isEmpty() ? "stated limit" : quantity.name();
    String head = name + " = " + Figures.text(quantity);
    if (!quantity.operands().isEmpty() && !shown.add(quantity)) {
      page.paragraph(indent, others, head + " (worked out above)");
      return;
    }
    Formula formula = quantity.formula();
    Input input = quantity.input();
    Absence absence = quantity.absence();
    if (formula != null) {
      page.paragraph(
          indent, others, head + ":  " + formula.expression() + "  (" + formula.source() + ")");
      quantity.operands().forEach(operand -> tree(operand, indent + STEP));
    } else if (input != null) {
      read.add(input);
      String source = input.source().isEmpty() ? "" : "; " + input.source();
      page.paragraph(
          indent, others, head + ", " + input.instrument().words() + source + ", " + input.place());
    } else if (absence != null) {
      page.paragraph(
          indent,
          others,
          head + "; to get it: " + absence.instrument().words() + ", " + absence.how());
    } else {
      page.paragraph(indent, others, head);
    }
  }

  private void uncertainty(Quantity margin) {
    Comparator<Input> largest =
        Comparator.comparingDouble(input -> -Math.abs(margin.contribution(input)));
    List<Input> inputs = margin.uncertainInputs().stream().sorted(largest).toList();
    if (inputs.isEmpty()) {
      return;
    }
    page.heading("What makes the margin uncertain (k = 2), largest first:");
    Unit unit = margin.dimension().unit();
    for (Input input : inputs) {
      double share = Math.abs(margin.contribution(input));
      page.paragraph(
          STEP,
          STEP + STEP,
          "± "
              + Figures.rounded(share, 2)
              + " "
              + unit.symbol()
              + "  "
              + input.instrument().words()
              + ", "
              + input.place());
    }
  }
}
