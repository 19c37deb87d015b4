package trammel.build;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trammel.build.BuildSheet.AimedLift;
import trammel.build.BuildSheet.Aims;
import trammel.build.BuildSheet.AsFound;
import trammel.build.BuildSheet.Change;
import trammel.build.BuildSheet.Measurements;
import trammel.build.BuildSheet.Where;
import trammel.catalog.Catalog;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.VehicleProfile;
import trammel.quantity.Absence;
import trammel.quantity.Dimension;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.Words;
import trammel.subject.Axle;
import trammel.subject.Position;

/**
 * From names to things: the vehicle, the parts, where each goes, and what that leaves at each
 * wheel.
 */
final class Resolver {
  private final Catalog catalog;
  private final Problems problems;
  private final Place vehiclePlace;
  private final Place noContactPlace;
  private final List<Build.Line> lines = new ArrayList<>();
  private final Settings settings;
  private final Set<PartKind> kept = EnumSet.noneOf(PartKind.class);

  /**
   * @param vehiclePlace where the vehicle's name stands
   * @param noContactPlace where the list of sound stations stands
   */
  Resolver(Catalog catalog, Problems problems, Place vehiclePlace, Place noContactPlace) {
    this.catalog = catalog;
    this.problems = problems;
    this.vehiclePlace = vehiclePlace;
    this.noContactPlace = noContactPlace;
    this.settings = new Settings(problems);
  }

  /** A build sheet resolved; empty where something in it is wrong. */
  Optional<Build> resolve(BuildSheet sheet) {
    Optional<VehicleProfile> vehicle = vehicle(sheet.vehicle());
    if (vehicle.isEmpty()) {
      return Optional.empty();
    }
    new SheetCheck(problems).check(sheet, noContactPlace);
    new PressureUnits(vehicle.get(), problems).check(sheet.measurements());
    if (sheet.changes().isEmpty()) {
      problems.add(
          sheet.place(),
          "changes: nothing is proposed",
          "Add a line below changes: - { add: PART, at: all }.");
    }
    Map<Position, Equipment> book = book(vehicle.get());
    Map<Position, Equipment> asFound = asFound(book, sheet.asFound());
    Map<Position, Equipment> proposed = new EnumMap<>(asFound);
    for (Change change : sheet.changes()) {
      if (change.keep() != null) {
        kind(change.keep(), change.place()).ifPresent(kept::add);
      }
    }
    for (Change change : sheet.changes()) {
      apply(change, vehicle.get(), proposed);
    }
    new PressureUnits(vehicle.get(), problems).check(sheet.aims().inflate(), proposed);
    return Optional.of(
        new Build(
            sheet.build(),
            sheet.place(),
            vehicle.get(),
            Collections.unmodifiableMap(book),
            Collections.unmodifiableMap(asFound),
            Collections.unmodifiableMap(proposed),
            settings.raised(),
            new MeasuredWith(catalog, problems).parts(vehicle.get(), sheet.measurements()),
            List.copyOf(lines),
            sheet.asFound(),
            sheet.aims(),
            sheet.measurements(),
            sheet.waivers(),
            Trial.NONE,
            vehicle.get(),
            List.of()));
  }

  /** An order resolved: each line is something added where its part and quantity say. */
  Optional<Build> resolve(OrderFile order) {
    Optional<VehicleProfile> vehicle = vehicle(order.vehicle());
    if (vehicle.isEmpty()) {
      return Optional.empty();
    }
    if (order.lines().isEmpty()) {
      problems.add(
          order.place(), "an order without lines", "Add a line: - { part: …, quantity: 4 }.");
    }
    Map<Position, Equipment> book = book(vehicle.get());
    Map<Position, Equipment> asFound = asFound(book, order.asFound());
    Map<Position, Equipment> proposed = new EnumMap<>(asFound);
    for (OrderFile.Line line : order.lines()) {
      if (line.quantity() < 1) {
        problems.add(
            line.place(),
            "quantity: found " + line.quantity() + "; expected at least 1",
            "Remove the line, or say how many.");
      }
      part(line.part(), line.place())
          .ifPresent(
              part -> add(part, places(part, line), line.quantity(), null, line.place(), proposed));
    }
    return Optional.of(
        new Build(
            order.order(),
            order.place(),
            vehicle.get(),
            Collections.unmodifiableMap(book),
            Collections.unmodifiableMap(asFound),
            Collections.unmodifiableMap(proposed),
            settings.raised(),
            new MeasuredWith(catalog, problems).parts(vehicle.get(), NOTHING),
            List.copyOf(lines),
            order.asFound(),
            new Aims(new AimedLift(noAim(), noAim()), List.of(), null, List.of(), List.of()),
            NOTHING,
            List.of(),
            Trial.NONE,
            vehicle.get(),
            List.of()));
  }

  private static final Measurements NOTHING =
      new Measurements(List.of(), List.of(), List.of(), List.of());

  private static Quantity noAim() {
    return Quantity.absent(
        Dimension.LENGTH, new Absence("lift", "an order states no aim", Instrument.READ, "decide"));
  }

  private Optional<VehicleProfile> vehicle(String name) {
    Optional<VehicleProfile> found = catalog.vehicle(name);
    if (found.isEmpty()) {
      problems.add(
          vehiclePlace,
          "vehicle: no vehicle is called " + Words.quoted(name),
          Words.didYouMean(name, catalog.vehicles().keySet(), "Add its profile to the catalog."));
    }
    return found;
  }

  private Optional<Part> part(String number, Place place) {
    return MeasuredWith.part(number, place, catalog, problems);
  }

  private Map<Position, Equipment> book(VehicleProfile vehicle) {
    Map<Position, Equipment> equipment = new EnumMap<>(Position.class);
    for (Position position : Position.values()) {
      Axle axle = position.axle().orElse(Axle.FRONT);
      Set<String> numbers = new LinkedHashSet<>(vehicle.book());
      numbers.addAll(vehicle.axle(axle).book());
      Equipment here = Equipment.NONE;
      for (String number : numbers) {
        Part part = catalog.part(number).orElseThrow();
        if (suits(part, position) && (position != Position.SPARE || part.kind().ofTheWheel())) {
          here = here.with(part);
        }
      }
      equipment.put(position, here);
    }
    return equipment;
  }

  private Map<Position, Equipment> asFound(Map<Position, Equipment> book, AsFound found) {
    Map<Position, Equipment> equipment = new EnumMap<>(book);
    if (found.spare() == BuildSheet.SpareUse.NONE) {
      equipment.put(Position.SPARE, Equipment.NONE);
    }
    for (BuildSheet.Fitted fitted : found.fitted()) {
      part(fitted.part(), fitted.place())
          .ifPresent(
              part ->
                  put(
                      part,
                      positions(part, fitted.at(), fitted.place()),
                      fitted.place(),
                      equipment));
    }
    return equipment;
  }

  private static boolean suits(Part part, Position position) {
    return (part.listing().axle() == null
            || position.axle().isEmpty()
            || position.axle().get() == part.listing().axle())
        && (part.listing().hand() == null
            || position.side().isEmpty()
            || position.side().get() == part.listing().hand());
  }

  private void apply(Change change, VehicleProfile vehicle, Map<Position, Equipment> proposed) {
    int said =
        (change.add() == null ? 0 : 1)
            + (change.remove() == null ? 0 : 1)
            + (change.keep() == null ? 0 : 1)
            + (change.raise().isKnown() ? 1 : 0);
    if (said != 1) {
      problems.add(
          change.place(),
          "a change with " + said + " of add, remove, keep and raise; expected exactly one",
          "Write each change as an item of its own.");
      return;
    }
    if (change.count() != null && change.count() < 1) {
      problems.add(
          change.place(),
          "count: found " + change.count() + "; expected at least 1",
          "Leave it out to have the count worked out.");
    }
    if (change.add() != null) {
      part(change.add(), change.place())
          .ifPresent(
              part ->
                  add(
                      part,
                      positions(part, change.at(), change.place()),
                      change.count() == null ? 0 : change.count(),
                      settings.hole(part, change),
                      change.place(),
                      proposed));
    } else if (change.raise().isKnown()) {
      settings.raise(change, flat(change.at()), vehicle);
    } else if (change.remove() != null) {
      remove(change.remove(), change, proposed);
    }
  }

  private void remove(String what, Change change, Map<Position, Equipment> proposed) {
    Optional<Part> part = catalog.part(what);
    List<Position> at = change.at().isEmpty() ? Position.running() : flat(change.at());
    if (part.isPresent()) {
      boolean there =
          at.stream().anyMatch(p -> proposed.get(p).all(part.get().kind()).contains(part.get()));
      if (!there) {
        problems.add(
            change.place(),
            "remove: " + Words.quoted(what) + " is not fitted there",
            "List it under as-found, or remove the line.");
      }
      at.forEach(p -> proposed.computeIfPresent(p, (key, now) -> now.without(part.get())));
    } else {
      kind(what, change.place())
          .ifPresent(
              k -> at.forEach(p -> proposed.computeIfPresent(p, (key, now) -> now.without(k))));
    }
  }

  private Optional<PartKind> kind(String name, Place place) {
    for (PartKind kind : PartKind.values()) {
      if (kind.toString().equals(name)) {
        return Optional.of(kind);
      }
    }
    List<String> names = List.of(PartKind.values()).stream().map(PartKind::toString).toList();
    problems.add(
        place,
        Words.quoted(name) + " is neither a part of the catalog nor a kind of part",
        Words.didYouMean(name, names, "Expected a part number, or " + Words.anyOf(names) + "."));
    return Optional.empty();
  }

  private void add(
      Part part,
      List<Position> at,
      int units,
      @Nullable String hole,
      Place place,
      Map<Position, Equipment> equipment) {
    claim(part, at, place);
    put(part, at, place, equipment);
    lines.add(new Build.Line(part, at, units, hole, place));
    for (Map.Entry<String, Integer> inside : part.listing().contains().entrySet()) {
      Part content = catalog.part(inside.getKey()).orElseThrow();
      if (!kept.contains(content.kind())) {
        put(content, at, place, equipment);
      }
      lines.add(new Build.Line(content, at, units * inside.getValue(), null, place));
    }
  }

  /** Two parts of one kind cannot be at one place, unless locking nuts stand among plain ones. */
  private void claim(Part part, List<Position> at, Place place) {
    for (Build.Line before : lines) {
      boolean rivals =
          part.kind().takesThePlace()
              && before.part().kind() == part.kind()
              && !before.part().equals(part)
              && part.kind() != PartKind.FASTENER;
      List<Position> both = at.stream().filter(before.at()::contains).toList();
      if (rivals && !both.isEmpty()) {
        problems.add(
            place,
            part.number()
                + " goes to the "
                + both.get(0).toString().replace('-', ' ')
                + ", where "
                + before.part().number()
                + " goes already ("
                + before.place()
                + ")",
            "Remove one of them, or say at: for each.");
        return;
      }
    }
  }

  private void put(Part part, List<Position> at, Place place, Map<Position, Equipment> equipment) {
    for (Position position : at) {
      if (!suits(part, position)) {
        problems.add(
            place,
            part.number()
                + " cannot go to the "
                + position.toString().replace('-', ' ')
                + "; it is made for "
                + madeFor(part),
            "Correct where it goes, or take the part made for that place.");
      } else {
        equipment.computeIfPresent(position, (key, now) -> now.with(part));
      }
    }
  }

  private static String madeFor(Part part) {
    String axle = part.listing().axle() == null ? "" : "the " + part.listing().axle();
    String hand = part.listing().hand() == null ? "" : "the " + part.listing().hand() + " side";
    return axle.isEmpty() || hand.isEmpty() ? axle + hand : axle + ", " + hand;
  }

  private List<Position> positions(Part part, List<Where> at, Place place) {
    if (!at.isEmpty()) {
      return flat(at);
    }
    Axle axle = part.listing().axle();
    if (axle != null) {
      return Position.of(axle).stream().filter(position -> suits(part, position)).toList();
    }
    problems.add(
        place,
        part.number() + ": nothing says where it goes",
        "Add at: all, front, rear, front-left … or spare.");
    return List.of();
  }

  private List<Position> places(Part part, OrderFile.Line line) {
    if (!line.at().isEmpty()) {
      return flat(line.at());
    }
    Axle axle = part.listing().axle();
    @Nullable List<Position> meant = null;
    int pieces = line.quantity() * part.listing().pieces();
    if (axle != null) {
      meant = Position.of(axle).stream().filter(position -> suits(part, position)).toList();
    } else if (part.kind() == PartKind.FASTENER || part.kind() == PartKind.STUD || pieces == 4) {
      meant = Position.running();
    } else if (pieces == 5 && part.kind().ofTheWheel()) {
      meant = List.of(Position.values());
    }
    if (meant == null) {
      problems.add(
          line.place(),
          part.number() + ": " + pieces + " pieces do not say where they go",
          "Add at: all, front, rear, front-left … or spare.");
      return List.of();
    }
    return meant;
  }

  private static List<Position> flat(List<Where> at) {
    return at.stream().flatMap(where -> where.positions().stream()).distinct().sorted().toList();
  }
}
