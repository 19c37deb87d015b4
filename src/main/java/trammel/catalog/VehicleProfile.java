package trammel.catalog;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.MASS;
import static trammel.quantity.Dimension.RATIO;
import static trammel.quantity.Dimension.SPEED;
import static trammel.quantity.Instrument.STATED;
import static trammel.quantity.Instrument.TAPE;
import static trammel.quantity.Instrument.WEIGHED;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.Place;
import trammel.read.Required;
import trammel.subject.Axle;

/**
 * What is known of one vehicle type. Heights are of the vehicle at its book height, on its book
 * tires, at the load that {@code bookState} names.
 *
 * @param vehicle the name files call it by
 * @param book part numbers of what the maker fitted at both axles
 * @param shafts its prop shafts
 * @param overRead how much the speedometer shows for what is true: at least 1
 * @param centerOfGravity height above ground
 * @param raisedShare share of the mass that a suspension lift raises
 * @param underbody what hangs lowest underneath
 * @param outline heights that statutes ask for
 * @param bodyOnFrame what is between body and frame, where it has one
 * @param driveMatch greatest allowed difference of front and rear rolling circumference
 */
public record VehicleProfile(
    Place place,
    @Required String vehicle,
    @Required String maker,
    @Required String model,
    @Nullable String years,
    @Nullable String source,
    @Nullable String bookState,
    @Required VehicleClass vehicleClass,
    @Required Drive drive,
    @Measured(value = LENGTH, by = STATED, how = "maker's table", min = 1500, max = 6000)
        Quantity wheelbase,
    @Measured(value = SPEED, by = STATED, how = "maker's table", min = 60, max = 320)
        Quantity topSpeed,
    @Measured(value = MASS, by = STATED, how = "read the rating plate", min = 800, max = 12000)
        Quantity grossRating,
    @Measured(value = RATIO, by = STATED, how = "maker's table", min = 1, max = 12)
        Quantity finalDrive,
    @Measured(value = RATIO, by = STATED, how = "maker's table", min = 0.3, max = 3)
        Quantity topGear,
    @Measured(
            value = RATIO,
            by = STATED,
            how = "drive a measured kilometer at a steady speed and time it",
            min = 0.9,
            max = 1.2)
        Quantity overRead,
    @Measured(
            value = LENGTH,
            by = TAPE,
            how = "maker's table or a tilt weighing",
            min = 300,
            max = 1500)
        Quantity centerOfGravity,
    @Measured(value = RATIO, by = STATED, how = "maker's table", min = 0.5, max = 1)
        Quantity raisedShare,
    @Measured(value = RATIO, by = STATED, how = "vehicle's handbook", min = 0, max = 0.1)
        Quantity driveMatch,
    List<String> book,
    @Required AxleProfile front,
    @Required AxleProfile rear,
    SpareCarrier spare,
    List<ShaftProfile> shafts,
    List<UnderbodyPoint> underbody,
    Outline outline,
    BodyOnFrame bodyOnFrame) {

  /** What kind of vehicle it is registered as, which decides how its tires are rated. */
  public enum VehicleClass {
    PASSENGER_CAR,
    LIGHT_TRUCK
  }

  /** Which axles the engine drives. */
  public enum Drive {
    FRONT,
    REAR,
    /** Both only when selected, without a center differential. */
    PART_TIME,
    FULL_TIME
  }

  /**
   * Where the spare lives.
   *
   * @param maxDiameter the largest tire that goes in
   * @param maxWidth the widest tire that goes in
   * @param maxMass what a hinge or hanger may carry
   */
  public record SpareCarrier(
      @Nullable Kind kind,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "across the well or carrier",
              min = 400,
              max = 1400)
          Quantity maxDiameter,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "depth of the well or carrier",
              min = 100,
              max = 500)
          Quantity maxWidth,
      @Measured(
              value = MASS,
              by = WEIGHED,
              how = "maker's limit on the hinge or hanger",
              min = 0,
              max = 150)
          Quantity maxMass) {
    /** How it is held. */
    public enum Kind {
      UNDER_FLOOR,
      TAILGATE,
      WELL,
      NONE
    }
  }

  /**
   * What statutes measure and nothing else asks for, above ground unless it says otherwise.
   *
   * @param frameHeight the frame's lowest place midway between the axles
   * @param lowestBody the lowest original part of the body
   * @param frameEndFront bottom of the frame's front end, at the bumper
   * @param frameEndRear bottom of the frame's rear end, at the bumper
   * @param bumperBottomFront lower edge of the front bumper, which rises with the frame
   * @param bumperBottomRear lower edge of the rear bumper, which rises with the frame
   * @param bumperTallness from a bumper's lower to its upper edge, the lesser of the two bumpers
   * @param floorOverFrame from the top of the frame up to the floor of body or bed
   * @param headlampCenter center of the headlamps
   * @param netMass the vehicle empty, as its papers have it
   */
  public record Outline(
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "ground to the frame's lowest place midway between the axles, unladen",
              min = 150,
              max = 1500)
          Quantity frameHeight,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "ground to the lowest original part of the body, unladen",
              min = 150,
              max = 1500)
          Quantity lowestBody,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "ground to the bottom of the frame's front end, at the bumper, unladen",
              min = 150,
              max = 1500)
          Quantity frameEndFront,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "ground to the bottom of the frame's rear end, at the bumper, unladen",
              min = 150,
              max = 1500)
          Quantity frameEndRear,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "ground to the front bumper's lower edge, unladen",
              min = 150,
              max = 1500)
          Quantity bumperBottomFront,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "ground to the rear bumper's lower edge, unladen",
              min = 150,
              max = 1500)
          Quantity bumperBottomRear,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "the bumper's lower edge to its upper one",
              min = 20,
              max = 800)
          Quantity bumperTallness,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "top of the frame to the floor of body or bed",
              min = 0,
              max = 600)
          Quantity floorOverFrame,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "ground to the center of the headlamps, unladen",
              min = 300,
              max = 1800)
          Quantity headlampCenter,
      @Measured(
              value = MASS,
              by = STATED,
              how = "read the registration papers",
              min = 500,
              max = 10000)
          Quantity netMass) {}

  /** The profile of one axle. */
  public AxleProfile axle(Axle axle) {
    return axle == Axle.FRONT ? front : rear;
  }

  /** The same vehicle with one axle another. */
  public VehicleProfile with(Axle which, AxleProfile other) {
    return new VehicleProfile(
        place,
        vehicle,
        maker,
        model,
        years,
        source,
        bookState,
        vehicleClass,
        drive,
        wheelbase,
        topSpeed,
        grossRating,
        finalDrive,
        topGear,
        overRead,
        centerOfGravity,
        raisedShare,
        driveMatch,
        book,
        which == Axle.FRONT ? other : front,
        which == Axle.REAR ? other : rear,
        spare,
        shafts,
        underbody,
        outline,
        bodyOnFrame);
  }

  /** Maker and model, as a person says it. */
  public String words() {
    return maker + " " + model;
  }
}
