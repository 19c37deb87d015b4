package trammel.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import trammel.derive.BarMap;
import trammel.derive.BarMap.Adjustable;
import trammel.derive.BarMap.Bracket;
import trammel.derive.BarMap.Hole;
import trammel.derive.BarMap.Room;
import trammel.derive.BarMap.State;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;
import trammel.read.QuantityWriter;

/**
 * Every hole of a bracket beside the others, the best one named; then what another bar would do.
 */
final class BracketTables {
  private static final int LABEL = 24;
  private static final int COLUMN = 17;

  private final Page page;

  BracketTables(Page page) {
    this.page = page;
  }

  void of(BarMap bar) {
    bar.brackets().forEach(bracket -> bracket(bar, bracket));
    if (bar.change().isKnown() && bar.change().value() != 0) {
      adjustable(bar);
    }
  }

  /** One column of a table. */
  private record Column(String name, String note, String rise, State state) {}

  private void bracket(BarMap bar, Bracket bracket) {
    page.heading(
        "Bracket "
            + bracket.number()
            + " ("
            + bracket.name()
            + "), "
            + (bracket.fitted() ? "on the sheet" : "in the catalog"));
    page.gap();
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("old place", "", "–", bracket.without()));
    for (Hole hole : bracket.holes()) {
      columns.add(
          new Column(hole.name(), note(bar, bracket, hole), bare(hole.rise()), hole.state()));
    }
    int width =
        Math.max(
            COLUMN,
            columns.stream().mapToInt(column -> column.name().length() + 2).max().orElse(0));
    int most = Math.max(1, (Page.WIDTH - 2 - LABEL) / width);
    for (int i = 0; i < columns.size(); i += most) {
      if (i > 0) {
        page.gap();
      }
      table(bracket.end(), columns.subList(i, Math.min(columns.size(), i + most)), width);
    }
    page.gap();
    best(bar, bracket);
  }

  private static String note(BarMap bar, Bracket bracket, Hole hole) {
    String best = hole.name().equals(bracket.best().name()) ? "best" : "";
    boolean proposed = bracket.fitted() && hole.name().equals(bar.hole());
    return !proposed ? best : best.isEmpty() ? "proposed" : "best, proposed";
  }

  private void table(String end, List<Column> columns, int width) {
    row("", columns.stream().map(Column::name).toList(), width);
    if (columns.stream().anyMatch(column -> !column.note().isEmpty())) {
      row("", columns.stream().map(Column::note).toList(), width);
    }
    row(end + " end raised, mm", columns.stream().map(Column::rise).toList(), width);
    row("bar's slope, °", columns, State::slope, width);
    row("  up at its", columns.stream().map(column -> column.state().higher()).toList(), width);
    row("off the middle, mm", columns, State::shift, width);
    row("  toward the", columns.stream().map(column -> column.state().toward()).toList(), width);
    row("left over travel, mm", columns, State::left, width);
    row("right over travel, mm", columns, State::right, width);
    row("roll center, mm", columns, State::rollCenter, width);
    for (Room room : columns.get(0).state().rooms()) {
      row(
          "to " + room.obstacle() + ", mm",
          columns.stream().map(column -> gap(column.state(), room.obstacle())).toList(),
          width);
    }
  }

  private static String gap(State state, String obstacle) {
    return state.rooms().stream()
        .filter(room -> room.obstacle().equals(obstacle))
        .findFirst()
        .map(room -> bare(room.gap()))
        .orElse("not known");
  }

  private void row(
      String label,
      List<Column> columns,
      java.util.function.Function<State, Quantity> value,
      int width) {
    row(label, columns.stream().map(column -> bare(value.apply(column.state()))).toList(), width);
  }

  private void row(String label, List<String> cells, int width) {
    String name = label;
    if (label.length() > LABEL - 1) {
      page.line("  " + label);
      name = "";
    }
    page.line(
        "  "
            + String.format(Locale.ROOT, "%-" + LABEL + "s", name)
            + cells.stream()
                .map(cell -> String.format(Locale.ROOT, "%-" + width + "s", cell))
                .collect(Collectors.joining()));
  }

  /** Without its unit, which stands at the head of the row. */
  private static String bare(Quantity quantity) {
    return quantity.isKnown()
        ? QuantityWriter.uncertain(quantity).replaceFirst(" ?(mm|°)$", "")
        : "not known";
  }

  private void best(BarMap bar, Bracket bracket) {
    Hole best = bracket.best();
    String shift = Figures.text(best.state().shift()) + " off the middle";
    if (bracket.next().isEmpty()) {
      page.paragraph(
          "  With it: ", "    ", "the axle stands " + shift + against(bracket.gained()) + ".");
      return;
    }
    page.paragraph(
        "  Best: ",
        "    ",
        "the "
            + best.name()
            + " hole, which leaves the axle "
            + shift
            + ", "
            + Figures.text(bracket.ahead())
            + " less than the "
            + bracket.next()
            + " hole"
            + (closerThanKnown(bracket.ahead()) ? " (closer than it is known)" : "")
            + "."
            + onSheet(bar, bracket)
            + (negative(bracket.gained())
                ? " In its old place the bar leaves it nearer still."
                : ""));
  }

  private static String against(Quantity gained) {
    return !gained.isKnown()
        ? ""
        : negative(gained)
            ? "; in its old place the bar leaves it nearer still"
            : ", " + Figures.text(gained) + " less than in the bar's old place";
  }

  private static String onSheet(BarMap bar, Bracket bracket) {
    if (!bracket.fitted()) {
      return "";
    }
    if (!bar.holeNamed()) {
      return " The sheet names no hole; the best is taken.";
    }
    return bar.hole().equals(bracket.best().name())
        ? ""
        : " The sheet names the " + bar.hole() + " hole.";
  }

  private static boolean negative(Quantity quantity) {
    return quantity.isKnown() && quantity.value() < 0;
  }

  private static boolean closerThanKnown(Quantity ahead) {
    return ahead.isKnown() && ahead.value() < ahead.expanded();
  }

  private void adjustable(BarMap bar) {
    page.gap();
    page.paragraph(
        "  Another bar: ",
        "    ",
        "one "
            + Figures.text(bar.change())
            + (bar.shorter() ? " shorter" : " longer")
            + ", "
            + Figures.text(bar.recenters())
            + " from eye to eye, would bring the axle back to the middle"
            + (bar.hole().isEmpty() ? "" : ", in the " + bar.hole() + " hole")
            + ".");
    for (Adjustable other : bar.bars()) {
      page.paragraph(
          "  ",
          "    ",
          other.number()
              + " ("
              + other.name()
              + (other.fitted() ? ", on the sheet" : ", in the catalog")
              + "), "
              + Figures.text(other.from())
              + " to "
              + Figures.text(other.to())
              + ": "
              + reaches(other.reaches())
              + ".");
    }
  }

  private static String reaches(Decision decision) {
    return switch (decision) {
      case MET -> "it can be set to that";
      case NOT_MET -> "it cannot be set to that";
      case UNDECIDED -> "whether it can be set to that is closer than it is known";
      case ABSENT -> "whether it can be set to that is not known";
    };
  }
}
