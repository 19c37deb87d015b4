package trammel.report;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.derive.HeightLedger;
import trammel.derive.TravelLedger;
import trammel.fact.Fact;
import trammel.quantity.Quantity;
import trammel.remedy.Packing;

/**
 * The ledger of heights, loads, pressures and travel as data: every value in the unit the program
 * keeps, with its expanded uncertainty (k = 2).
 *
 * @param build the sheet's title
 * @param vehicle maker and model
 * @param values every value, wheel by wheel
 * @param packings what the catalog has to take load from the rams
 * @param assumed what rule books assume of the vehicle where nobody gives a value
 */
public record HeightsTable(
    String build,
    String vehicle,
    List<Entry> values,
    List<Pressure> packings,
    List<Assumed> assumed) {

  /** One value, today and with the changes. */
  public record Entry(
      String where,
      String topic,
      String what,
      String unit,
      @Nullable Double today,
      @Nullable Double todayUncertainty,
      @Nullable Double proposed,
      @Nullable Double proposedUncertainty,
      @Nullable String missing) {}

  /** The pressure (kPa) that a part would leave. */
  public record Pressure(
      String axle, String part, double pressure, double uncertainty, boolean nearest) {}

  /** The ledger of a build. */
  public static HeightsTable of(
      Build build,
      HeightLedger ledger,
      List<TravelLedger> travel,
      List<Fact> facts,
      List<Packing> packings) {
    return new HeightsTable(
        build.title(),
        build.vehicle().words(),
        HeightRows.of(ledger, travel, facts).stream().map(HeightsTable::entry).toList(),
        packings.stream()
            .map(
                packing ->
                    new Pressure(
                        packing.axle().toString(),
                        packing.part().number(),
                        packing.pressure().value(),
                        packing.pressure().expanded(),
                        packing.nearest()))
            .toList(),
        Assumed.of(build));
  }

  private static Entry entry(HeightRow row) {
    return new Entry(
        row.where(),
        row.topic().toString(),
        row.what().strip(),
        row.unit(),
        number(row.today()),
        expanded(row.today()),
        number(row.proposed()),
        expanded(row.proposed()),
        row.absence() == null ? null : row.absence().reason());
  }

  private static @Nullable Double number(@Nullable Quantity quantity) {
    return quantity == null ? null : Figures.number(quantity);
  }

  private static @Nullable Double expanded(@Nullable Quantity quantity) {
    return quantity == null ? null : Figures.expanded(quantity);
  }

  /**
   * The values as comma-separated rows under a head line; each says why a value of it is missing,
   * and what is assumed of the vehicle.
   */
  public String csv() {
    String assumptions = CsvText.words(Assumed.cell(assumed));
    return CsvText.of(
        List.of(
            "where",
            "topic",
            "what",
            "unit",
            "today",
            "today-uncertainty",
            "proposed",
            "proposed-uncertainty",
            "missing",
            "assumed"),
        values.stream()
            .map(
                entry ->
                    List.of(
                        entry.where(),
                        entry.topic(),
                        CsvText.words(entry.what()),
                        entry.unit(),
                        digits(entry.today()),
                        digits(entry.todayUncertainty()),
                        digits(entry.proposed()),
                        digits(entry.proposedUncertainty()),
                        CsvText.words(entry.missing() == null ? "" : entry.missing()),
                        assumptions))
            .toList());
  }

  private static String digits(@Nullable Double number) {
    return number == null ? "" : String.format(Locale.ROOT, "%.4f", number);
  }
}
