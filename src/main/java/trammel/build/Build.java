package trammel.build;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.build.BuildSheet.Aims;
import trammel.build.BuildSheet.AsFound;
import trammel.build.BuildSheet.Measurements;
import trammel.build.BuildSheet.Waiver;
import trammel.catalog.AssumedValue;
import trammel.catalog.Catalog;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.VehicleProfile;
import trammel.quantity.Quantity;
import trammel.read.Place;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;
import trammel.subject.Subject;

/**
 * A build with every name resolved: what is fitted at each wheel today, and what would be.
 *
 * @param title what its sheet calls it
 * @param book equipment at each wheel as the maker built it
 * @param asFound equipment at each wheel today
 * @param proposed equipment at each wheel after the changes
 * @param raised how much higher each wheel's height control or torsion bar is set
 * @param measuredWith parts that gaps of the profile were measured with, by number
 * @param lines what is to be bought
 * @param trial what is tried beyond the sheet
 * @param given the vehicle without what rule books assume of it
 * @param assumed what they assume, where nobody gives a value
 */
public record Build(
    String title,
    Place place,
    VehicleProfile vehicle,
    Map<Position, Equipment> book,
    Map<Position, Equipment> asFound,
    Map<Position, Equipment> proposed,
    Map<Position, Quantity> raised,
    Map<String, Part> measuredWith,
    List<Line> lines,
    AsFound found,
    Aims aims,
    Measurements measurements,
    List<Waiver> waivers,
    Trial trial,
    VehicleProfile given,
    List<AssumedValue> assumed) {

  /**
   * What is to be bought of one part.
   *
   * @param part the part, as it is fitted
   * @param at the wheels it goes to
   * @param units how many are on the order; 0 where the sheet leaves it to us
   * @param hole the hole of a bracket that the sheet names; null where it names none
   */
  public record Line(Part part, List<Position> at, int units, @Nullable String hole, Place place) {

    /**
     * How many pieces the order brings, or {@code needed} where the sheet leaves the count to us.
     */
    public int pieces(int needed) {
      return units == 0 ? needed : units * part.listing().pieces();
    }
  }

  /** The same build with other equipment proposed, to try a part on it. */
  public Build proposing(Map<Position, Equipment> other) {
    return new Build(
        title,
        place,
        vehicle,
        book,
        asFound,
        other,
        raised,
        measuredWith,
        lines,
        found,
        aims,
        measurements,
        waivers,
        trial,
        given,
        assumed);
  }

  /** The same build with what measuring this vehicle has taught. */
  Build taught(VehicleProfile better, Measurements more, Map<String, Part> with) {
    return new Build(
        title, place, better, book, asFound, proposed, raised, with, lines, found, aims, more,
        waivers, trial, better, assumed);
  }

  /** The same build with something tried beyond it. */
  public Build trying(Trial other) {
    return new Build(
        title,
        place,
        vehicle,
        book,
        asFound,
        proposed,
        raised,
        measuredWith,
        lines,
        found,
        aims,
        measurements,
        waivers,
        other,
        given,
        assumed);
  }

  /**
   * The same build with what rule books assume where neither profile nor sheet gives a value.
   *
   * @param offered what the books in force assume, in their order
   * @throws trammel.read.UnreadableFile if two of them contradict each other about a value that is
   *     wanted, or one contradicts what is given
   */
  public Build assuming(List<AssumedValue> offered, Catalog catalog) {
    Assumed found = Assumed.of(given, offered, catalog);
    return found.values().isEmpty() ? this : of(found.filled(), found.values());
  }

  /** The same build with nothing assumed. */
  public Build withoutAssumed() {
    return assumed.isEmpty() ? this : of(given, List.of());
  }

  private Build of(VehicleProfile profile, List<AssumedValue> values) {
    return new Build(
        title,
        place,
        profile,
        book,
        asFound,
        proposed,
        raised,
        measuredWith,
        lines,
        found,
        aims,
        measurements,
        waivers,
        trial,
        given,
        values);
  }

  /** The hole that the sheet names for a bracket, where it is one of its lines. */
  public Optional<String> hole(Part part) {
    return lines.stream()
        .filter(line -> line.part().equals(part) && line.hole() != null)
        .map(Line::hole)
        .findFirst();
  }

  /** The same build with the bar in another hole of one of its brackets. */
  public Build inHole(Part bracket, String hole) {
    List<Line> moved =
        lines.stream()
            .map(
                line ->
                    line.part().equals(bracket)
                        ? new Line(line.part(), line.at(), line.units(), hole, line.place())
                        : line)
            .toList();
    return new Build(
        title,
        place,
        vehicle,
        book,
        asFound,
        proposed,
        raised,
        measuredWith,
        moved,
        found,
        aims,
        measurements,
        waivers,
        trial,
        given,
        assumed);
  }

  /** Equipment of a wheel as the maker built it. */
  public Equipment bookAt(Position position) {
    return book.getOrDefault(position, Equipment.NONE);
  }

  /** Equipment of a wheel today. */
  public Equipment before(Position position) {
    return asFound.getOrDefault(position, Equipment.NONE);
  }

  /** Equipment of a wheel after the changes. */
  public Equipment after(Position position) {
    return proposed.getOrDefault(position, Equipment.NONE);
  }

  /** Whether the changes alter any of these kinds at a wheel. */
  public boolean changes(Position position, PartKind... kinds) {
    for (PartKind kind : kinds) {
      if (!before(position).sameAs(after(position), kind)) {
        return true;
      }
    }
    return false;
  }

  /** Whether the changes alter any of these kinds at a wheel of an axle. */
  public boolean changes(Axle axle, PartKind... kinds) {
    return changes(Position.of(axle, Side.LEFT), kinds)
        || changes(Position.of(axle, Side.RIGHT), kinds);
  }

  /** Whether the sheet says that nothing touches at a station today. */
  public boolean soundAt(Subject station) {
    return found.noContact().stream().anyMatch(entry -> SheetCheck.covers(entry, station));
  }

  /** Whether the spare is on the vehicle. */
  public boolean hasSpare() {
    return found.spare() != BuildSheet.SpareUse.NONE;
  }

  /** Whether the spare takes its turn on the ground. */
  public boolean spareRotates() {
    return found.spare() == BuildSheet.SpareUse.IN_ROTATION;
  }
}
