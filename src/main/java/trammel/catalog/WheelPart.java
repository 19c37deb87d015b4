package trammel.catalog;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.MASS;
import static trammel.quantity.Dimension.PRESSURE;
import static trammel.quantity.Instrument.CALIPER;
import static trammel.quantity.Instrument.MACHINED;
import static trammel.quantity.Instrument.READ;
import static trammel.quantity.Instrument.STATED;
import static trammel.quantity.Instrument.TAPE;
import static trammel.quantity.Instrument.TIRE_TABLE;
import static trammel.quantity.Instrument.WEIGHED;
import static trammel.quantity.Instrument.WHEEL_OFFSET;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import trammel.designation.BoltPattern;
import trammel.designation.RimSize;
import trammel.designation.SeatForm;
import trammel.designation.ThreadSize;
import trammel.designation.TireDesignation;
import trammel.quantity.Quantity;
import trammel.read.Inline;
import trammel.read.Measured;
import trammel.read.Named;
import trammel.read.Required;

/** A part of the wheel or of what holds it. */
public sealed interface WheelPart extends Part {

  /** A tire. Dimensions that its maker publishes outrank those of its designation. */
  @Named("tire")
  record Tire(
      @Inline Listing listing,
      @Required TireDesignation designation,
      @Measured(value = LENGTH, by = TIRE_TABLE, how = "maker's table", min = 400, max = 1400)
          Quantity diameter,
      @Measured(value = LENGTH, by = TIRE_TABLE, how = "maker's table", min = 100, max = 500)
          Quantity sectionWidth,
      @Measured(value = LENGTH, by = STATED, how = "maker's table", min = 75, max = 400)
          Quantity onRim,
      @Measured(value = LENGTH, by = TIRE_TABLE, how = "maker's table", min = 200, max = 700)
          Quantity loadedRadius,
      @Measured(value = LENGTH, by = STATED, how = "maker's rim list", min = 75, max = 400)
          Quantity rimFrom,
      @Measured(value = LENGTH, by = STATED, how = "maker's rim list", min = 75, max = 400)
          Quantity rimTo,
      @Measured(value = PRESSURE, by = READ, how = "read the sidewall", min = 100, max = 1000)
          Quantity loadPressure,
      @Measured(value = LENGTH, by = CALIPER, how = "tread gauge", max = 40) Quantity treadDepth,
      @Nullable Pattern pattern,
      @Nullable LocalDate made,
      boolean usedWithTube,
      @Measured(value = MASS, by = WEIGHED, how = "weigh the tire", max = 150) Quantity mass)
      implements WheelPart {
    /** How a tread is laid, which decides where it may run. */
    public enum Pattern {
      SYMMETRIC,
      ASYMMETRIC,
      DIRECTIONAL
    }

    @Override
    public PartKind kind() {
      return PartKind.TIRE;
    }
  }

  /** A wheel. Lengths are from its mounting face, outboard positive. */
  @Named("wheel")
  record Wheel(
      @Inline Listing listing,
      @Required RimSize size,
      @Measured(
              value = LENGTH,
              by = WHEEL_OFFSET,
              how = "read the mark behind a spoke",
              min = -150,
              max = 150)
          Quantity offset,
      @Required BoltPattern boltPattern,
      @Measured(
              value = LENGTH,
              by = MACHINED,
              how = "caliper across the center bore",
              min = 40,
              max = 260)
          Quantity bore,
      @Nullable SeatForm seat,
      @Measured(
              value = LENGTH,
              by = CALIPER,
              how = "caliper, mounting face to the foot of the seat",
              max = 60)
          Quantity padThickness,
      @Measured(value = LENGTH, by = CALIPER, how = "caliper across a nut hole", min = 10, max = 60)
          Quantity holeDiameter,
      @Measured(
              value = LENGTH,
              by = CALIPER,
              how = "depth of the relief between the bolt holes",
              max = 40)
          Quantity pocketDepth,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "radius inside the barrel over the caliper",
              min = 100,
              max = 350)
          Quantity barrelRadius,
      @Measured(
              value = LENGTH,
              by = CALIPER,
              how = "straightedge on the mounting face to the back of a spoke",
              min = -50,
              max = 150)
          Quantity spokeRoom,
      @Measured(
              value = MASS,
              by = STATED,
              how = "read the mark behind a spoke",
              min = 200,
              max = 4000)
          Quantity loadRating,
      @Measured(
              value = PRESSURE,
              by = STATED,
              how = "read the mark behind a spoke",
              min = 200,
              max = 1200)
          Quantity maxPressure,
      @Measured(value = MASS, by = WEIGHED, how = "weigh the wheel", max = 80) Quantity mass)
      implements WheelPart {
    @Override
    public PartKind kind() {
      return PartKind.WHEEL;
    }
  }

  /**
   * A plate between hub and wheel: slipped over the studs, or bolted on with studs of its own.
   *
   * @param nutsIncluded whether the nuts that hold a bolt-on spacer to the hub come with it
   */
  @Named("wheel-spacer")
  record WheelSpacer(
      @Inline Listing listing,
      @Required SpacerForm form,
      @Measured(value = LENGTH, by = CALIPER, how = "caliper", min = 1, max = 120)
          Quantity thickness,
      @Required BoltPattern boltPattern,
      @Nullable BoltPattern outerPattern,
      @Measured(value = LENGTH, by = MACHINED, how = "caliper across the bore", min = 40, max = 260)
          Quantity bore,
      @Measured(
              value = LENGTH,
              by = MACHINED,
              how = "caliper across its own lip",
              min = 40,
              max = 260)
          Quantity lipDiameter,
      @Measured(value = LENGTH, by = CALIPER, how = "height of its own lip", max = 40)
          Quantity lipLength,
      @Nullable ThreadSize studThread,
      @Measured(value = LENGTH, by = CALIPER, how = "its own stud, from its outer face", max = 90)
          Quantity studLength,
      @Measured(
              value = LENGTH,
              by = CALIPER,
              how = "outer face to the seat of its inner nuts",
              max = 90)
          Quantity innerPad,
      boolean nutsIncluded)
      implements WheelPart {
    /** How it is held. */
    public enum SpacerForm {
      SLIP_ON,
      BOLT_ON
    }

    @Override
    public PartKind kind() {
      return PartKind.WHEEL_SPACER;
    }
  }

  /** A ring that centers a wheel of larger bore on the hub. */
  @Named("centering-ring")
  record CenteringRing(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = MACHINED, how = "caliper", min = 40, max = 260)
          Quantity outside,
      @Measured(value = LENGTH, by = MACHINED, how = "caliper", min = 40, max = 260)
          Quantity inside)
      implements WheelPart {
    @Override
    public PartKind kind() {
      return PartKind.CENTERING_RING;
    }
  }

  /** A wheel nut or wheel bolt. */
  @Named("fastener")
  record Fastener(
      @Inline Listing listing,
      @Required FastenerForm form,
      @Required ThreadSize thread,
      @Nullable SeatForm seat,
      boolean closed,
      @Measured(value = LENGTH, by = CALIPER, how = "depth from seat to the blind end", max = 90)
          Quantity depth,
      @Measured(
              value = LENGTH,
              by = CALIPER,
              how = "bolt: seat to tip; nut: threaded length",
              max = 120)
          Quantity threadLength,
      @Measured(value = LENGTH, by = CALIPER, how = "caliper", min = 10, max = 60)
          Quantity outsideDiameter,
      @Measured(value = LENGTH, by = READ, how = "read the socket", max = 60) Quantity hex,
      boolean lock,
      boolean needsKey)
      implements WheelPart {
    /** Nut or bolt. */
    public enum FastenerForm {
      NUT,
      BOLT
    }

    @Override
    public PartKind kind() {
      return PartKind.FASTENER;
    }
  }

  /** A wheel stud pressed into the hub. */
  @Named("stud")
  record Stud(
      @Inline Listing listing,
      @Required ThreadSize thread,
      @Measured(value = LENGTH, by = CALIPER, how = "from the hub face", max = 150) Quantity length,
      @Measured(value = LENGTH, by = CALIPER, how = "caliper over the knurl", max = 40)
          Quantity knurlDiameter)
      implements WheelPart {
    @Override
    public PartKind kind() {
      return PartKind.STUD;
    }
  }

  /** A tire-pressure sensor. */
  @Named("pressure-sensor")
  record PressureSensor(
      @Inline Listing listing,
      @Measured(value = PRESSURE, by = STATED, how = "sensor's paper", max = 1200)
          Quantity maxPressure)
      implements WheelPart {
    @Override
    public PartKind kind() {
      return PartKind.PRESSURE_SENSOR;
    }
  }
}
