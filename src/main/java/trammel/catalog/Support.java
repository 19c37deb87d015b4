package trammel.catalog;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.MASS;
import static trammel.quantity.Dimension.PRESSURE;
import static trammel.quantity.Dimension.RATIO;
import static trammel.quantity.Dimension.VOLTAGE;
import static trammel.quantity.Dimension.VOLUME;
import static trammel.quantity.Instrument.CALIPER;
import static trammel.quantity.Instrument.GAUGE;
import static trammel.quantity.Instrument.STATED;
import static trammel.quantity.Instrument.TAPE;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.catalog.SuspensionPart.FlexibleLine.Carries;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.Required;

/**
 * What carries an axle's load, and what follows its wheels up and down; all of one side, at book
 * height.
 *
 * @param unsprung mass of both wheels, hubs and brakes, and of the beam or half of the arms
 * @param springLength from seat to seat of the spring, with whatever lies between them
 * @param springCaptive whether the coil is held in its seats when it goes slack
 * @param stopCrush how far the wheel still rises once it has met its bump stop
 * @param droopLimit what ends the wheel's way down; null where nobody has looked
 * @param fluid the ram that carries load beside the spring or instead of it; null where none does
 * @param heightSensor what tells a height control how high the axle stands; null where nothing does
 * @param lines what runs from the body or frame to the wheel or axle
 * @param brakeValve how the brakes of this axle are held back; null where nobody has looked
 * @param rubberBushes whether its joints turn in rubber, so that they must be tightened standing
 */
public record Support(
    @Measured(
            value = MASS,
            by = STATED,
            how = "maker's table, or weigh a wheel with its hub and half of its arms",
            min = 20,
            max = 1500)
        Quantity unsprung,
    @Measured(value = LENGTH, by = TAPE, how = "seat to seat at book height", min = 50, max = 800)
        Quantity springLength,
    boolean springCaptive,
    @Measured(
            value = LENGTH,
            by = TAPE,
            how = "stop at rest against stop wound flat with a jack",
            min = 0,
            max = 120)
        Quantity stopCrush,
    @Nullable DroopLimit droopLimit,
    DamperFit damper,
    @Nullable Fluid fluid,
    @Nullable HeightSensor heightSensor,
    @Nullable SwayBar swayBar,
    List<LineRun> lines,
    @Nullable BrakeValve brakeValve,
    boolean rubberBushes) {

  /** What ends a wheel's way down. */
  public enum DroopLimit {
    /** The damper, pulled out to its end. */
    DAMPER,
    /** A stop on the frame or the arm. */
    STOP,
    STRAP
  }

  /** How the brakes of an axle are held back under a light load. */
  public enum BrakeValve {
    NONE,
    /** By a rod that feels how high the body stands over the axle. */
    LOAD_SENSING
  }

  /**
   * How a damper stands.
   *
   * @param motionRatio damper travel over wheel travel
   * @param length eye to eye at book height
   */
  public record DamperFit(
      @Measured(
              value = RATIO,
              by = STATED,
              how = "damper travel for 50 mm at the wheel",
              min = 0.2,
              max = 1.5)
          Quantity motionRatio,
      @Measured(value = LENGTH, by = TAPE, how = "eye to eye at book height", min = 100, max = 1200)
          Quantity length) {}

  /**
   * Rams that carry load; where there is no spring, an air spring or a hydropneumatic strut.
   * Pressures are above the air's.
   *
   * @param diameter of the ram, as the pressure acts on it
   * @param motionRatio ram travel over wheel travel
   * @param bookPressure with the book load at book height
   * @param from the least pressure it rides well at
   * @param preferred the pressure it was laid out for
   * @param to the greatest pressure its pump, hoses and seals may hold at rest
   * @param gasPressure charge of the gas, with no load
   * @param gasVolume that the charge fills
   * @param gasIndex polytropic index of the gas in quick movement
   */
  public record Fluid(
      @Measured(value = LENGTH, by = CALIPER, how = "maker's drawing", min = 10, max = 300)
          Quantity diameter,
      @Measured(
              value = RATIO,
              by = STATED,
              how = "ram travel for 50 mm at the wheel",
              min = 0.2,
              max = 1.5)
          Quantity motionRatio,
      @Measured(
              value = PRESSURE,
              by = GAUGE,
              how = "gauge or diagnostic reading at rest in the middle setting",
              min = 100,
              max = 30000)
          Quantity bookPressure,
      @Measured(value = PRESSURE, by = STATED, how = "workshop book", min = 100, max = 30000)
          Quantity from,
      @Measured(value = PRESSURE, by = STATED, how = "workshop book", min = 100, max = 30000)
          Quantity preferred,
      @Measured(value = PRESSURE, by = STATED, how = "workshop book", min = 100, max = 30000)
          Quantity to,
      @Measured(value = PRESSURE, by = STATED, how = "maker's paper", min = 100, max = 20000)
          Quantity gasPressure,
      @Measured(value = VOLUME, by = STATED, how = "maker's paper", min = 0.02, max = 20)
          Quantity gasVolume,
      @Measured(value = RATIO, by = STATED, how = "1.3 is usual", min = 1, max = 1.7)
          Quantity gasIndex) {}

  /**
   * A height sensor. Its reading runs evenly between its ends.
   *
   * @param lowest how far under book height the body stands at one end of its range; positive down
   * @param highest how far over book height at the other
   * @param readingLowest what it reads at the lowest
   * @param readingHighest what it reads at the highest
   * @param linkRatio how far the link moves for the wheel's travel
   */
  public record HeightSensor(
      @Measured(value = LENGTH, by = TAPE, how = "workshop book", min = 0, max = 300)
          Quantity lowest,
      @Measured(value = LENGTH, by = TAPE, how = "workshop book", min = 0, max = 300)
          Quantity highest,
      @Measured(value = VOLTAGE, by = STATED, how = "diagnostic reading", min = 0, max = 30)
          Quantity readingLowest,
      @Measured(value = VOLTAGE, by = STATED, how = "diagnostic reading", min = 0, max = 30)
          Quantity readingHighest,
      @Measured(
              value = RATIO,
              by = STATED,
              how = "link travel for 50 mm at the wheel",
              min = 0.1,
              max = 1.5)
          Quantity linkRatio) {}

  /**
   * The end of a sway bar that turns in the body or frame, seen from the side.
   *
   * @param arm from the bar's axis to its joint with the link
   * @param armAngle its slope at book height, joint end up positive
   * @param linkLean how far the link leans from upright at book height
   * @param motionRatio travel of the link's lower end over wheel travel
   */
  public record SwayBar(
      @Measured(value = LENGTH, by = TAPE, how = "bar's axis to link's joint", min = 80, max = 600)
          Quantity arm,
      @Measured(value = ANGLE, by = STATED, how = "angle finder on the arm", min = -60, max = 60)
          Quantity armAngle,
      @Measured(value = ANGLE, by = STATED, how = "angle finder on the link", min = -60, max = 60)
          Quantity linkLean,
      @Measured(
              value = RATIO,
              by = STATED,
              how = "link travel for 50 mm at the wheel",
              min = 0.2,
              max = 1.2)
          Quantity motionRatio) {}

  /**
   * A line between body and wheel.
   *
   * @param span straight from fixed end to fixed end with the wheel hanging, in the worst of both
   *     locks
   */
  public record LineRun(
      @Required Carries carries,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "between its fixed ends with the wheel hanging, in both locks",
              min = 30,
              max = 3000)
          Quantity span) {}
}
