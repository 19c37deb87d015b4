package trammel.build;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.MASS;
import static trammel.quantity.Dimension.PRESSURE;
import static trammel.quantity.Instrument.CAMBER_RACK;
import static trammel.quantity.Instrument.CASTER_RACK;
import static trammel.quantity.Instrument.FENDER;
import static trammel.quantity.Instrument.GAUGE;
import static trammel.quantity.Instrument.GUESSED;
import static trammel.quantity.Instrument.LOCK_GAP;
import static trammel.quantity.Instrument.TAPE;
import static trammel.quantity.Instrument.WEIGHED;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.catalog.AlignmentSpec.Angles;
import trammel.quantity.Quantity;
import trammel.read.Inline;
import trammel.read.Measured;
import trammel.read.Place;
import trammel.read.Required;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Station.Height;
import trammel.subject.Station.Steer;
import trammel.subject.Subject;

/**
 * A build sheet as its file has it: the vehicle as found, what is to change, what it is for and
 * what was measured.
 *
 * @param build its title
 * @param catalog the folder of the catalog, relative to the sheet; null to look for the nearest
 * @param vehicle the name of its vehicle profile
 * @param overlay a file of what measuring this vehicle has taught, relative to the sheet
 */
public record BuildSheet(
    Place place,
    @Required String build,
    @Nullable String catalog,
    @Required String vehicle,
    @Nullable String overlay,
    AsFound asFound,
    List<Change> changes,
    Aims aims,
    Measurements measurements,
    List<Waiver> waivers) {

  /** One or more wheels. */
  public enum Where {
    ALL,
    FRONT,
    REAR,
    FRONT_LEFT,
    FRONT_RIGHT,
    REAR_LEFT,
    REAR_RIGHT,
    SPARE;

    /** The wheels it means; {@code ALL} is the four on the ground. */
    public List<Position> positions() {
      return switch (this) {
        case ALL -> Position.running();
        case FRONT -> Position.of(Axle.FRONT);
        case REAR -> Position.of(Axle.REAR);
        default -> List.of(Position.valueOf(name()));
      };
    }

    /** As files write it. */
    @Override
    public String toString() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * The vehicle as it stands.
   *
   * @param fitted what is on it beside or instead of the book's
   * @param noContact where nothing touches today: {@code front-left:rear-mount}, {@code
   *     front:arch}, or {@code all}
   * @param weighed what its axles carry
   * @param spare whether the spare takes its turn on the ground
   * @param registeredAt the place whose law applies
   */
  public record AsFound(
      List<Fitted> fitted,
      Adjusters adjusters,
      List<Subject> noContact,
      AxleLoads weighed,
      @Nullable SpareUse spare,
      @Nullable String registeredAt) {}

  /** A part that is on the vehicle today. */
  public record Fitted(Place place, @Required String part, List<Where> at) {}

  /** Whether an adjuster still moves. */
  public enum AdjusterState {
    FREE,
    SEIZED,
    ABSENT,
    UNKNOWN
  }

  /** The alignment adjusters of both axles. */
  public record Adjusters(@Nullable AdjusterState front, @Nullable AdjusterState rear) {}

  /** Weighed axle loads. */
  public record AxleLoads(
      @Measured(value = MASS, by = WEIGHED, how = "weigh the axle", min = 200, max = 6000)
          Quantity front,
      @Measured(value = MASS, by = WEIGHED, how = "weigh the axle", min = 200, max = 6000)
          Quantity rear) {}

  /** What the spare is for. */
  public enum SpareUse {
    /** It takes its turn on the ground, and so must match the others. */
    IN_ROTATION,
    CARRIED,
    NONE
  }

  /**
   * One change: exactly one of {@code add}, {@code remove}, {@code keep} and {@code raise}.
   *
   * @param add a part number
   * @param remove a part number or a kind of part
   * @param keep a kind of part that stays as it is although something added would bring another
   * @param raise how much higher the height control or the torsion bars are set
   * @param count units bought; null for as many as the positions ask for
   * @param hole of a bracket, where it has several
   */
  public record Change(
      Place place,
      @Nullable String add,
      @Nullable String remove,
      @Nullable String keep,
      @Measured(
              value = LENGTH,
              by = FENDER,
              how = "hub center to fender edge, before and after",
              min = -120,
              max = 150)
          Quantity raise,
      List<Where> at,
      @Nullable Integer count,
      @Nullable String hole) {}

  /** Snow-chain room by class: SAE classes as several published tables give them. */
  public enum ChainClass {
    S,
    U,
    W
  }

  /** What the vehicle is meant to become. */
  public record Aims(
      AimedLift lift,
      List<String> use,
      @Nullable ChainClass chains,
      List<Payload> payload,
      List<Inflation> inflate) {}

  /**
   * What an air spring is set to, with everything on board that will be carried.
   *
   * @param pressure above the air's
   */
  public record Inflation(
      Place place,
      List<Where> at,
      @Required
          @Measured(
              value = PRESSURE,
              by = GAUGE,
              how = "gauge at the air spring's valve",
              // Wide enough that the check against the part says what is wrong.
              min = 1,
              max = 1000000)
          Quantity pressure) {}

  /**
   * Something or somebody that will be carried, beyond what the axles were weighed with.
   *
   * @param carries what it is
   * @param fore of its middle, before the front axle positive, behind it negative
   * @param out of its middle from the center plane, toward the left positive
   */
  public record Payload(
      Place place,
      @Required String carries,
      @Required @Measured(value = MASS, by = GUESSED, how = "weigh it", min = 0.5, max = 5000)
          Quantity mass,
      @Required
          @Measured(
              value = LENGTH,
              by = TAPE,
              how = "front axle to its middle",
              min = -7000,
              max = 2500)
          Quantity fore,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "center plane to its middle",
              min = -1200,
              max = 1200)
          Quantity out) {}

  /** How much higher it is meant to stand. */
  public record AimedLift(
      @Measured(value = LENGTH, by = TAPE, how = "decide", min = -150, max = 300) Quantity front,
      @Measured(value = LENGTH, by = TAPE, how = "decide", min = -150, max = 300) Quantity rear) {}

  /** The state a measurement was taken in. */
  public enum State {
    AS_FOUND,
    BOOK
  }

  /** What was measured on this vehicle; it outranks the profile. */
  public record Measurements(
      List<Gap> gaps,
      List<FenderHeight> heights,
      List<Printout> alignment,
      List<FluidPressure> pressures) {}

  /** The pressure of a ram or an air spring at rest, above the air's. */
  public record FluidPressure(
      Place place,
      @Required Position at,
      @Required
          @Measured(
              value = PRESSURE,
              by = GAUGE,
              how = "gauge or diagnostic reading at rest",
              // Wide enough that the check against the profile says what is wrong.
              min = 1,
              max = 1000000)
          Quantity pressure,
      @Required State state) {}

  /**
   * What an alignment rack printed of one wheel. Two of them at two heights give how its angles
   * change with height, where nobody has surveyed its hard points.
   *
   * @param height hub to fender as it stood on the rack
   * @param angles what it had there
   * @param camberFrom the least camber its adjusters gave, with the caster it has
   * @param camberTo the greatest
   * @param casterFrom the least caster its adjusters gave, with the camber it has
   * @param casterTo the greatest
   */
  public record Printout(
      Place place,
      @Required Position at,
      @Required State state,
      @Measured(
              value = LENGTH,
              by = FENDER,
              how = "hub center to fender edge",
              min = 200,
              max = 1000)
          Quantity height,
      @Inline Angles angles,
      @Measured(
              value = ANGLE,
              by = CAMBER_RACK,
              how = "turn the adjusters from end to end on the rack",
              min = -15,
              max = 15)
          Quantity camberFrom,
      @Measured(
              value = ANGLE,
              by = CAMBER_RACK,
              how = "turn the adjusters from end to end on the rack",
              min = -15,
              max = 15)
          Quantity camberTo,
      @Measured(
              value = ANGLE,
              by = CASTER_RACK,
              how = "turn the adjusters from end to end on the rack",
              min = -15,
              max = 15)
          Quantity casterFrom,
      @Measured(
              value = ANGLE,
              by = CASTER_RACK,
              how = "turn the adjusters from end to end on the rack",
              min = -15,
              max = 15)
          Quantity casterTo) {}

  /**
   * A gap at a clearance station.
   *
   * @param with numbers of the wheel, tire and spacers it was measured with, where they are not
   *     those of its state
   * @param lifted how much higher the suspension stood at rest than the book has it
   */
  public record Gap(
      Place place,
      @Required Subject at,
      @Measured(
              value = LENGTH,
              by = LOCK_GAP,
              how = "tape between tire and obstacle in the pose named",
              min = -50,
              max = 500)
          Quantity gap,
      @Required Steer steer,
      @Required Height height,
      @Required State state,
      @Measured(value = PRESSURE, by = GAUGE, how = "gauge", min = 80, max = 900) Quantity pressure,
      List<String> with,
      @Measured(
              value = LENGTH,
              by = FENDER,
              how = "hub to fender less the book's",
              min = -150,
              max = 300)
          Quantity lifted) {}

  /** A hub-to-fender height. */
  public record FenderHeight(
      Place place,
      @Required Position at,
      @Measured(
              value = LENGTH,
              by = FENDER,
              how = "hub center to fender edge",
              min = 200,
              max = 1000)
          Quantity height,
      @Required State state) {}

  /**
   * A finding that somebody has decided to live with.
   *
   * @param finding its identity, {@code rule-id@subject}
   * @param decidedBy who decided
   * @param lastDay the last day it counts
   */
  public record Waiver(
      Place place,
      @Required String finding,
      @Required String reason,
      @Required String decidedBy,
      @Required LocalDate lastDay) {}
}
