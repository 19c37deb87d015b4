package trammel.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.derive.HeightLedger;
import trammel.derive.TravelLedger;
import trammel.fact.Fact;
import trammel.quantity.Absence;
import trammel.quantity.Dimension;
import trammel.quantity.Quantity;
import trammel.read.QuantityWriter;
import trammel.remedy.Packing;
import trammel.report.HeightRow.Topic;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;

/** The ledger of heights, loads, pressures and travel as text. */
public final class HeightsPage {
  private static final int NAME = 40;
  private static final int CELL = 20;

  private final Page page = new Page();
  private final List<HeightRow> rows;
  private final List<TravelLedger> travel;
  private final HeightLedger ledger;

  private HeightsPage(HeightLedger ledger, List<TravelLedger> travel, List<Fact> facts) {
    this.ledger = ledger;
    this.travel = travel;
    this.rows = HeightRows.of(ledger, travel, facts);
  }

  /**
   * The ledger as text that ends with a line break.
   *
   * @param packings what the catalog has to pack onto springs, with the pressure each leaves
   */
  public static String text(
      Build build,
      HeightLedger ledger,
      List<TravelLedger> travel,
      List<Fact> facts,
      List<Packing> packings,
      LocalDate on) {
    HeightsPage heights = new HeightsPage(ledger, travel, facts);
    heights.page.paragraph(
        "",
        "",
        build.title()
            + ": how high the "
            + build.vehicle().words()
            + " stands, what carries it and how far its wheels still go, "
            + on);
    for (Axle axle : Axle.values()) {
      heights.axle(axle);
      heights.packings(axle, packings);
    }
    heights.table("Vehicle", "vehicle");
    Assumed.write(Assumed.of(build), heights.page);
    heights.page.gap();
    heights.page.paragraph(
        "",
        "",
        "A spring under load, a ram under pressure and a raised vehicle can kill. What is measured"
            + " on the finished vehicle outranks this page; a licensed mechanic has the last"
            + " word.");
    return heights.page.toString();
  }

  /** The wheels of an axle, once where both are alike, and the axle itself. */
  private void axle(Axle axle) {
    Position left = Position.of(axle, Side.LEFT);
    Position right = Position.of(axle, Side.RIGHT);
    boolean alike = cells(left.toString()).equals(cells(right.toString()));
    for (Position position : alike ? List.of(left) : List.of(left, right)) {
      table(alike ? "Both " + axle + " wheels" : words(position), position.toString());
      bar(position);
      missing(position.toString());
    }
    table("The " + axle + " axle", axle.toString());
  }

  private static String words(Position position) {
    return Sentences.upperFirst(position.toString().replace('-', ' ')) + " wheel";
  }

  private List<String> cells(String where) {
    return rows.stream()
        .filter(row -> row.where().equals(where))
        .map(row -> row.what() + cell(row.today()) + cell(row.proposed()))
        .toList();
  }

  private void table(String title, String where) {
    Map<Topic, List<HeightRow>> topics = new LinkedHashMap<>();
    rows.stream()
        .filter(row -> row.where().equals(where))
        .forEach(row -> topics.computeIfAbsent(row.topic(), key -> new ArrayList<>()).add(row));
    if (topics.isEmpty()) {
      return;
    }
    page.heading(title + control(where));
    for (Map.Entry<Topic, List<HeightRow>> topic : topics.entrySet()) {
      page.gap();
      row("  " + topic.getKey().words(), "today", "proposed");
      topic
          .getValue()
          .forEach(row -> row("    " + row.what(), cell(row.today()), cell(row.proposed())));
    }
  }

  private String control(String where) {
    return ledger.corners().stream()
            .anyMatch(c -> c.position().toString().equals(where) && c.heightControlled())
        ? ", height held by a sensor: springs and spacers move load, not height"
        : "";
  }

  private void bar(Position position) {
    List<String> bars =
        travel.stream()
            .filter(each -> each.position() == position)
            .findFirst()
            .map(TravelBar::of)
            .orElse(List.of());
    if (!bars.isEmpty()) {
      page.gap();
      bars.forEach(page::line);
      page.paragraph("    ", "    ", TravelBar.LEGEND);
    }
  }

  private void missing(String where) {
    Set<String> said = new LinkedHashSet<>();
    rows.stream()
        .filter(row -> row.where().equals(where))
        .map(HeightRow::absence)
        .filter(absence -> absence != null)
        .forEach(absence -> said.add(words(absence)));
    if (!said.isEmpty()) {
      page.gap();
      said.forEach(words -> page.paragraph("  Not known: ", "    ", words));
    }
  }

  private static String words(@Nullable Absence absence) {
    return absence == null
        ? ""
        : absence.what() + " (" + absence.reason() + "); to find it: " + absence.how() + ".";
  }

  private void packings(Axle axle, List<Packing> packings) {
    List<Packing> here = packings.stream().filter(packing -> packing.axle() == axle).toList();
    if (here.isEmpty()) {
      return;
    }
    page.gap();
    row("  What the catalog has to take load back", "", "pressure then");
    for (Packing packing : here) {
      row(
          "    " + packing.part().number() + (packing.nearest() ? ", nearest to preferred" : ""),
          packing.thickness() == null ? "" : cell(packing.thickness()),
          cell(packing.pressure()));
    }
  }

  private void row(String what, String today, String proposed) {
    if (what.length() < NAME) {
      page.line(pad(what, NAME) + pad(today, CELL) + proposed);
    } else {
      page.line(what);
      page.line(" ".repeat(NAME) + pad(today, CELL) + proposed);
    }
  }

  private static String pad(String text, int width) {
    return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
  }

  private static String cell(@Nullable Quantity quantity) {
    return quantity == null ? "" : quantity.isKnown() ? text(quantity) : "not known";
  }

  /** In the kept unit alone, which keeps two columns on the page; a share in percent. */
  private static String text(Quantity quantity) {
    return quantity.dimension() == Dimension.RATIO
        ? Figures.percent(quantity)
        : QuantityWriter.uncertain(quantity);
  }
}
