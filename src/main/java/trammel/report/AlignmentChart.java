package trammel.report;

import java.awt.geom.Path2D;
import java.util.List;
import java.util.Locale;
import trammel.derive.WheelMap.Drawing;
import trammel.derive.WheelMap.Place;

/**
 * A map of camber over caster in characters: what the adjusters reach, the window, the best
 * setting, and where the wheel stands with nothing turned.
 */
final class AlignmentChart {
  private static final int COLUMNS = 61;
  private static final int ROWS = 21;

  /** Room around what is drawn, as a share of it. */
  private static final double ROOM = 0.06;

  private final Drawing drawing;
  private final char[][] cells = new char[ROWS][COLUMNS];
  private double left = Double.MAX_VALUE;
  private double right = -Double.MAX_VALUE;
  private double bottom = Double.MAX_VALUE;
  private double top = -Double.MAX_VALUE;

  private AlignmentChart(Drawing drawing) {
    this.drawing = drawing;
    drawing.outline().forEach(this::include);
    include(drawing.untouched());
    include(new Place(drawing.camberWindow().from(), drawing.casterWindow().from()));
    include(new Place(drawing.camberWindow().to(), drawing.casterWindow().to()));
    double aside = Math.max((right - left) * ROOM, 0.1);
    double above = Math.max((top - bottom) * ROOM, 0.1);
    left -= aside;
    right += aside;
    bottom -= above;
    top += above;
  }

  private void include(Place place) {
    left = Math.min(left, place.caster());
    right = Math.max(right, place.caster());
    bottom = Math.min(bottom, place.camber());
    top = Math.max(top, place.camber());
  }

  /** The lines of the chart, with its scales and what its signs mean. */
  static List<String> of(Drawing drawing) {
    return new AlignmentChart(drawing).lines();
  }

  private List<String> lines() {
    Path2D reachable = new Path2D.Double();
    List<Place> outline = drawing.outline();
    for (int i = 0; i < outline.size(); i++) {
      if (i == 0) {
        reachable.moveTo(outline.get(i).caster(), outline.get(i).camber());
      } else {
        reachable.lineTo(outline.get(i).caster(), outline.get(i).camber());
      }
    }
    for (int row = 0; row < ROWS; row++) {
      for (int column = 0; column < COLUMNS; column++) {
        cells[row][column] =
            outline.size() > 2 && reachable.contains(caster(column), camber(row)) ? '.' : ' ';
      }
    }
    outline.forEach(place -> mark(place, '.'));
    window();
    mark(drawing.untouched(), 'o');
    mark(drawing.best(), 'x');
    List<String> lines = new java.util.ArrayList<>();
    lines.add("  camber");
    for (int row = 0; row < ROWS; row++) {
      String scale = row % 5 == 0 ? String.format(Locale.ROOT, "%6.2f°", camber(row)) : "       ";
      lines.add((scale + " " + new String(cells[row])).stripTrailing());
    }
    lines.add(" ".repeat(8) + scale());
    lines.add(" ".repeat(8) + "caster");
    lines.add("        . within reach   +--+ window   o nothing turned   x best setting");
    return List.copyOf(lines);
  }

  private String scale() {
    StringBuilder line = new StringBuilder();
    for (int column = 0; column < COLUMNS; column += 15) {
      String number = String.format(Locale.ROOT, "%.2f°", caster(column));
      line.append(number).append(" ".repeat(Math.max(1, 15 - number.length())));
    }
    return line.toString().stripTrailing();
  }

  private void window() {
    int from = column(drawing.casterWindow().from());
    int to = column(drawing.casterWindow().to());
    int low = row(drawing.camberWindow().from());
    int high = row(drawing.camberWindow().to());
    for (int column = from; column <= to; column++) {
      cells[low][column] = '-';
      cells[high][column] = '-';
    }
    for (int row = high; row <= low; row++) {
      cells[row][from] = '|';
      cells[row][to] = '|';
    }
    for (int row : new int[] {low, high}) {
      cells[row][from] = '+';
      cells[row][to] = '+';
    }
  }

  private void mark(Place place, char sign) {
    cells[row(place.camber())][column(place.caster())] = sign;
  }

  private double caster(int column) {
    return left + (right - left) * column / (COLUMNS - 1);
  }

  private double camber(int row) {
    return top - (top - bottom) * row / (ROWS - 1);
  }

  private int column(double caster) {
    return (int) Math.round((caster - left) / (right - left) * (COLUMNS - 1));
  }

  private int row(double camber) {
    return (int) Math.round((top - camber) / (top - bottom) * (ROWS - 1));
  }
}
