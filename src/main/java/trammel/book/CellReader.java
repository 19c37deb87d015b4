package trammel.book;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import trammel.book.Condition.Leaf;
import trammel.book.SheetFile.Reads;
import trammel.book.SheetFile.Worse;
import trammel.quantity.Comparison.Sense;
import trammel.quantity.Dimension;
import trammel.quantity.Quantity;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.TextNode;
import trammel.vocabulary.FactType;

/**
 * Reads the cells of one column. A blank cell, {@code -} and {@code any} match whatever stands
 * there. A range is {@code 20 mm..30 mm} with both ends, or in brackets, of which a round one
 * leaves its end out.
 *
 * @param place where the column is declared
 * @param of where its fact stands; null where it is of the fact that is judged
 */
record CellReader(
    Place place, Term term, @Nullable Of of, FactType fact, Reads reads, @Nullable Worse worse) {
  private static final Pattern RANGE = Pattern.compile("([\\[(]?)(.+?)\\.\\.(.+?)([])]?)");

  /** A cell that matches whatever stands there. */
  static boolean isAny(String cell) {
    return cell.isBlank() || cell.equals("-") || cell.equals("any");
  }

  /**
   * The condition of a cell; null if it was refused.
   *
   * @param fits whether the row says that it fits: such a row covers what is no worse, and a row
   *     that says otherwise covers what is no better
   */
  @Nullable Condition read(TextNode cell, boolean fits, Problems problems) {
    List<Leaf> leaves =
        switch (reads) {
          case EQUAL -> equal(cell, new NameReader(problems));
          case RANGE -> range(cell, problems);
          case NO_WORSE_THAN -> noWorse(cell, fits, new NameReader(problems));
        };
    if (leaves.isEmpty()) {
      return null;
    }
    if (of != null) {
      return new Condition.Some(of, fact, leaves);
    }
    return leaves.size() == 1 ? leaves.get(0) : new Condition.All(List.copyOf(leaves));
  }

  private List<Leaf> equal(TextNode cell, NameReader names) {
    Dimension dimension = term.component().dimension();
    if (dimension == null) {
      List<String> name = names.read(cell, term.component());
      return name == null ? List.of() : List.of(new Condition.Is(term, false, name));
    }
    Quantity exact = names.exact(cell, dimension);
    return exact == null
        ? List.of()
        : List.of(compare(Sense.AT_LEAST, exact), compare(Sense.AT_MOST, exact));
  }

  private Leaf compare(Sense sense, Quantity limit) {
    return new Condition.Compare(term, sense, new Limit.Stated(limit));
  }

  private List<Leaf> range(TextNode cell, Problems problems) {
    Matcher range = RANGE.matcher(cell.text());
    Dimension dimension = term.component().dimension();
    if (dimension == null || !range.matches()) {
      problems.add(
          cell.place(),
          cell.where() + ": found " + cell.words() + "; expected a range",
          "Write for example 20 mm..30 mm, or [20 mm..30 mm) without its upper end.");
      return List.of();
    }
    NameReader names = new NameReader(problems);
    Quantity from = names.exact(part(cell, range.group(2)), dimension);
    Quantity to = names.exact(part(cell, range.group(3)), dimension);
    if (from == null || to == null) {
      return List.of();
    }
    if (from.value() > to.value()) {
      problems.add(
          cell.place(),
          cell.where() + ": the range " + cell.words() + " ends before it begins",
          "Write the smaller value first.");
      return List.of();
    }
    List<Leaf> leaves = new ArrayList<>();
    leaves.add(compare(range.group(1).equals("(") ? Sense.ABOVE : Sense.AT_LEAST, from));
    leaves.add(compare(range.group(4).equals(")") ? Sense.BELOW : Sense.AT_MOST, to));
    return leaves;
  }

  private static TextNode part(TextNode cell, String text) {
    return new TextNode(cell.place(), cell.trail(), text.strip(), cell.quoted());
  }

  private List<Leaf> noWorse(TextNode cell, boolean fits, NameReader names) {
    Dimension dimension = term.component().dimension();
    Quantity seen = dimension == null ? null : names.exact(cell, dimension);
    if (seen == null) {
      return List.of();
    }
    boolean covered = fits == (worse == Worse.LARGER);
    return List.of(compare(covered ? Sense.AT_MOST : Sense.AT_LEAST, seen));
  }
}
