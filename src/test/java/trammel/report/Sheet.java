package trammel.report;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.BuildSheet.Adjusters;
import trammel.build.BuildSheet.AimedLift;
import trammel.build.BuildSheet.Aims;
import trammel.build.BuildSheet.AsFound;
import trammel.build.BuildSheet.AxleLoads;
import trammel.build.BuildSheet.Measurements;
import trammel.build.BuildSheet.SpareUse;
import trammel.build.BuildSheet.Waiver;
import trammel.build.Trial;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.fact.Clearance;
import trammel.fact.Fact;
import trammel.fact.Standing;
import trammel.fact.TireOnRim;
import trammel.judge.Judge;
import trammel.quantity.Absence;
import trammel.quantity.Decision;
import trammel.quantity.Dimension;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.Place;
import trammel.subject.Position;
import trammel.subject.Station;
import trammel.subject.Subject;

/** A sheet with nothing on it but what a test adds, and facts made by hand. */
final class Sheet {
  static final LocalDate ON = LocalDate.of(2026, 5, 31);
  static final Catalog CATALOG = CatalogFiles.read(Path.of("catalog-demo"));
  static final Judge JUDGE = Judge.ofBaseBook();

  private static final Quantity UNKNOWN =
      Quantity.absent(
          Dimension.LENGTH,
          new Absence(
              "gap at the body mount",
              "nobody has measured it",
              Instrument.LOCK_GAP,
              "tape between tire and mount at full lock"));

  private @Nullable String place;
  private List<Build.Line> lines = List.of();
  private List<Waiver> waivers = List.of();

  Sheet registeredAt(String where) {
    place = where;
    return this;
  }

  Sheet buying(String part) {
    lines =
        List.of(
            new Build.Line(
                CATALOG.part(part).orElseThrow(), List.of(), 1, null, Place.of("by hand")));
    return this;
  }

  Sheet waiving(String finding, LocalDate lastDay) {
    waivers =
        List.of(
            new Waiver(
                new Place("sheet.build.yaml", 9, 5), finding, "seen", "the workshop", lastDay));
    return this;
  }

  Report report(Fact... facts) {
    return report(JUDGE, facts);
  }

  Report report(Judge judge, Fact... facts) {
    Build build =
        new Build(
            "Test",
            Place.of("sheet.build.yaml"),
            CATALOG.vehicle("cairnback").orElseThrow(),
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            lines,
            new AsFound(
                List.of(),
                new Adjusters(null, null),
                List.of(),
                new AxleLoads(UNKNOWN, UNKNOWN),
                SpareUse.NONE,
                place),
            new Aims(new AimedLift(UNKNOWN, UNKNOWN), List.of(), null, List.of(), List.of()),
            new Measurements(List.of(), List.of(), List.of(), List.of()),
            waivers,
            Trial.NONE,
            CATALOG.vehicle("cairnback").orElseThrow(),
            List.of());
    return Reporter.report(build, judge.judge(List.of(facts)), judge, List.of(), CATALOG, ON);
  }

  /** A length in mm with its expanded uncertainty. */
  static Quantity length(String name, double value, double expanded) {
    return Quantity.read(
        name,
        Dimension.LENGTH,
        value,
        expanded,
        new Input("by-hand.yaml", name, 1, null, Instrument.TAPE));
  }

  /** A gap at the mount behind a front wheel. */
  static Clearance gap(Position wheel, Standing standing, double value, double expanded) {
    return clearance(wheel, standing, length("gap", value, expanded));
  }

  /** The same, not measured. */
  static Clearance unmeasuredGap(Position wheel, Standing standing) {
    return clearance(wheel, standing, UNKNOWN);
  }

  private static Clearance clearance(Position wheel, Standing standing, Quantity gap) {
    return new Clearance(
        Subject.of(wheel, "rear-mount"),
        standing,
        List.of(),
        Station.REAR_MOUNT,
        "outer shoulder",
        "body mount",
        gap,
        length("change of gap", -10, 1),
        "full lock, on the bump stop",
        "",
        Quantity.exact(Dimension.RATIO, 1),
        Quantity.exact(Dimension.RATIO, 1));
  }

  /** A tire on a rim of another nominal diameter, which a safety-critical rule forbids. */
  static TireOnRim mismatchedRim(Position wheel) {
    return new TireOnRim(
        Subject.of(wheel, "tire"),
        Standing.WORSE_OR_NEW,
        List.of(),
        "T-1",
        "W-1",
        "16.5",
        "16",
        Decision.NOT_MET,
        true,
        length("rim width", 180, 0),
        length("rim over the narrowest listed", 10, 0),
        length("rim under the widest listed", 10, 0),
        Quantity.exact(Dimension.RATIO, 0.75));
  }
}
