package trammel.derive;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.quantity.Quantity;
import trammel.subject.Position;

/**
 * What the travel of one corner is made of, today and as proposed: a stack of marks that a reader
 * can follow from the lowest place of the wheel to the highest. Every mark is a rise of the wheel
 * under the body over where it stands in the book state (mm); below it is negative. A lift is a
 * fall of the wheel under the body, so that the mark {@code RIDE} goes down by it.
 *
 * @param before today
 * @param after as proposed
 */
public record TravelLedger(Position position, List<Mark> before, List<Mark> after) {

  /**
   * One mark.
   *
   * @param what what happens there
   * @param by in a fitter's words, where something in particular does it; else empty
   * @param rise of the wheel over the book state (mm), or absent with the reason
   */
  public record Mark(Point what, String by, Quantity rise) {}

  /** What happens at a mark; in the order in which a sound corner has them, from below. */
  public enum Point {
    COIL_LOOSE("coil goes slack"),
    DAMPER_OPEN("damper open"),
    DROOP("end of droop"),
    RIDE("stands here"),
    STOP_MET("bump stop met"),
    STOP_FLAT("bump stop crushed"),
    COIL_SOLID("coil solid"),
    DAMPER_CLOSED("damper closed");

    private final String words;

    Point(String words) {
      this.words = words;
    }

    /** In a fitter's words. */
    public String words() {
      return words;
    }
  }

  /** The ledgers of the four corners. */
  static List<TravelLedger> of(Derivation derivation) {
    List<TravelLedger> ledgers = new ArrayList<>();
    Map<Position, TravelLedger> known = new EnumMap<>(Position.class);
    for (Position position : Position.running()) {
      TravelLedger like = known.get(derivation.sides().like(position));
      TravelLedger ledger = like == null ? of(derivation, position) : like.at(position);
      known.put(position, ledger);
      ledgers.add(ledger);
    }
    return List.copyOf(ledgers);
  }

  private static TravelLedger of(Derivation derivation, Position position) {
    Standings standings = new Standings(derivation, position);
    return new TravelLedger(
        position,
        marks(standings.before(), standings.liftBefore()),
        marks(standings.after(), standings.liftAfter()));
  }

  /** The same at a wheel that is alike. */
  private TravelLedger at(Position other) {
    return new TravelLedger(other, before, after);
  }

  private static List<Mark> marks(CornerTravel travel, Quantity lift) {
    List<Mark> marks = new ArrayList<>();
    Droop droop = travel.droop();
    Optional<CornerCoil> fitted = travel.coil();
    fitted.ifPresent(coil -> marks.add(new Mark(Point.COIL_LOOSE, "", coil.looseRise())));
    marks.add(new Mark(Point.DAMPER_OPEN, "", CornerTravel.rise(travel.damperHang())));
    marks.add(new Mark(Point.DROOP, droop.end().words(), CornerTravel.rise(droop.hang())));
    marks.add(new Mark(Point.RIDE, "", CornerTravel.rise(lift)));
    marks.add(new Mark(Point.STOP_MET, "", travel.stopRise()));
    marks.add(new Mark(Point.STOP_FLAT, "", travel.flatRise()));
    fitted.ifPresent(coil -> marks.add(new Mark(Point.COIL_SOLID, "", coil.solidRise())));
    marks.add(new Mark(Point.DAMPER_CLOSED, "", travel.damperRise()));
    return List.copyOf(marks);
  }
}
