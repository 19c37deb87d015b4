package trammel.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.derive.TravelLedger;
import trammel.derive.TravelLedger.Mark;
import trammel.derive.TravelLedger.Point;
import trammel.quantity.Quantity;

/**
 * A wheel's travel as a bar to scale: droop left of where the wheel stands, bump right of it, and
 * what the stop still crushes.
 */
final class TravelBar {
  static final String LEGEND =
      "= droop left, | stands here, - bump left, # bump stop crushed; both bars to one scale";

  private static final String INDENT = "    ";
  private static final int NAME = 10;
  private static final int COLUMNS = Page.WIDTH - INDENT.length() - NAME;

  private final double from;
  private final double to;

  private TravelBar(double from, double to) {
    this.from = from;
    this.to = to;
  }

  /** Both bars, today's and the proposed; nothing where a mark of either is not known. */
  static List<String> of(TravelLedger travel) {
    double @Nullable [] today = ends(travel.before());
    double @Nullable [] proposed = ends(travel.after());
    if (today == null || proposed == null) {
      return List.of();
    }
    TravelBar bar = new TravelBar(Math.min(today[0], proposed[0]), Math.max(today[3], proposed[3]));
    return List.of(bar.line("today", today), bar.line("proposed", proposed));
  }

  /** End of droop, where it stands, stop met, stop crushed; null where one is not known. */
  private static double @Nullable [] ends(List<Mark> marks) {
    Point[] points = {Point.DROOP, Point.RIDE, Point.STOP_MET, Point.STOP_FLAT};
    double[] ends = new double[points.length];
    for (int i = 0; i < points.length; i++) {
      Point point = points[i];
      Quantity rise =
          marks.stream()
              .filter(mark -> mark.what() == point)
              .map(Mark::rise)
              .findFirst()
              .orElse(null);
      if (rise == null || !rise.isKnown()) {
        return null;
      }
      ends[i] = rise.value();
    }
    return ends;
  }

  private String line(String name, double[] ends) {
    StringBuilder line = new StringBuilder(INDENT + name + " ".repeat(NAME - name.length()));
    for (int column = 0; column < COLUMNS; column++) {
      line.append(cell(column, ends));
    }
    return line.toString();
  }

  private char cell(int column, double[] ends) {
    if (column == column(ends[1])) {
      return '|';
    }
    if (column < column(ends[0]) || column > column(ends[3])) {
      return ' ';
    }
    return column < column(ends[1]) ? '=' : column < column(ends[2]) ? '-' : '#';
  }

  private int column(double rise) {
    return to == from ? 0 : (int) Math.round((rise - from) / (to - from) * (COLUMNS - 1));
  }
}
