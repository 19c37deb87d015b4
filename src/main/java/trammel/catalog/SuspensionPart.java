package trammel.catalog;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.FORCE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.MASS;
import static trammel.quantity.Dimension.PRESSURE;
import static trammel.quantity.Dimension.RATE;
import static trammel.quantity.Dimension.RATIO;
import static trammel.quantity.Dimension.VOLUME;
import static trammel.quantity.Instrument.CALIPER;
import static trammel.quantity.Instrument.CLAIM;
import static trammel.quantity.Instrument.SPRING_RATE;
import static trammel.quantity.Instrument.STATED;
import static trammel.quantity.Instrument.TAPE;
import static trammel.quantity.Instrument.WEIGHED;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Quantity;
import trammel.read.Inline;
import trammel.read.Measured;
import trammel.read.Named;
import trammel.read.Place;
import trammel.read.Required;

/** A part of the suspension or of what follows it. */
public sealed interface SuspensionPart extends Part {

  /** How the last coil of a spring, or the face of a seat, is shaped. */
  enum EndShape {
    OPEN,
    CLOSED_GROUND,
    PIGTAIL
  }

  /** A lift that a maker claims, and the state it was stated at; it holds nowhere else. */
  record LiftClaim(
      @Measured(value = LENGTH, by = CLAIM, how = "ask the maker", min = -200, max = 400)
          Quantity lift,
      @Measured(value = MASS, by = STATED, how = "ask the maker at which axle load", max = 10000)
          Quantity axleLoad) {}

  /** One row of a spring tester's table. */
  record TestPoint(
      @Required @Measured(value = LENGTH, by = TAPE, how = "spring tester", min = 0, max = 600)
          Quantity deflection,
      @Required
          @Measured(value = FORCE, by = SPRING_RATE, how = "spring tester", min = 0, max = 60000)
          Quantity force) {}

  /** How far a joint lies from where the book part has it: forward, outward, upward. */
  record Shift(
      @Required @Measured(value = LENGTH, by = CALIPER, how = "ask the maker", min = -80, max = 80)
          Quantity fore,
      @Required @Measured(value = LENGTH, by = CALIPER, how = "ask the maker", min = -80, max = 80)
          Quantity out,
      @Required @Measured(value = LENGTH, by = CALIPER, how = "ask the maker", min = -80, max = 80)
          Quantity up) {}

  /**
   * A coil spring, or a leaf pack where {@code leaf} is yes.
   *
   * @param rate where it bears one load after another alike; of a spring of two rates the first
   * @param secondRate the rate from {@code secondRateFrom} on; absent where it has one only
   * @param secondRateFrom how far it is pressed together when the second rate begins
   * @param curve a tester's table, where the spring has neither one rate nor two
   */
  @Named("spring")
  record Spring(
      @Inline Listing listing,
      boolean leaf,
      @Measured(value = RATE, by = SPRING_RATE, how = "spring maker's table", min = 1, max = 1000)
          Quantity rate,
      @Measured(value = RATE, by = SPRING_RATE, how = "spring maker's table", min = 1, max = 2000)
          Quantity secondRate,
      @Measured(value = LENGTH, by = STATED, how = "spring maker's table", min = 1, max = 500)
          Quantity secondRateFrom,
      List<TestPoint> curve,
      @Measured(value = LENGTH, by = TAPE, how = "length standing free", min = 50, max = 1800)
          Quantity freeLength,
      @Measured(value = LENGTH, by = TAPE, how = "maker's table", max = 800) Quantity solidLength,
      @Measured(value = LENGTH, by = CALIPER, how = "inside the end coil", min = 20, max = 300)
          Quantity insideDiameter,
      @Measured(value = LENGTH, by = CALIPER, how = "over the end coil", min = 20, max = 320)
          Quantity outsideDiameter,
      @Nullable EndShape upperEnd,
      @Nullable EndShape lowerEnd,
      @Measured(value = MASS, by = STATED, how = "maker's table", max = 10000)
          Quantity axleLoadFrom,
      @Measured(value = MASS, by = STATED, how = "maker's table", max = 10000) Quantity axleLoadTo,
      @Nullable LiftClaim claims)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.SPRING;
    }
  }

  /**
   * A ring or insert between a spring and its seat.
   *
   * @param stepped whether it has a step that the coil's last turn must be turned against
   */
  @Named("spring-spacer")
  record SpringSpacer(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = CALIPER, how = "caliper", min = 1, max = 150)
          Quantity thickness,
      @Measured(value = LENGTH, by = CALIPER, how = "caliper across the bore", max = 300)
          Quantity insideDiameter,
      @Measured(value = LENGTH, by = CALIPER, how = "caliper over the flange", max = 320)
          Quantity outsideDiameter,
      @Measured(
              value = LENGTH,
              by = CALIPER,
              how = "caliper over the collar the coil sits on",
              max = 300)
          Quantity collarDiameter,
      @Nullable EndShape end,
      boolean stacks,
      boolean stepped,
      @Nullable LiftClaim claims)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.SPRING_SPACER;
    }
  }

  /** A plate above a strut. */
  @Named("strut-top-spacer")
  record StrutTopSpacer(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = CALIPER, how = "caliper", min = 1, max = 100)
          Quantity thickness,
      @Nullable LiftClaim claims)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.STRUT_TOP_SPACER;
    }
  }

  /** A damper. */
  @Named("damper")
  record Damper(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = TAPE, how = "eye to eye, pulled out", min = 150, max = 1200)
          Quantity openLength,
      @Measured(value = LENGTH, by = TAPE, how = "eye to eye, pushed in", min = 100, max = 1000)
          Quantity closedLength)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.DAMPER;
    }
  }

  /** A bracket that moves a damper's mount. */
  @Named("damper-bracket")
  record DamperBracket(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = CALIPER, how = "old to new hole", min = 1, max = 200)
          Quantity shift)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.DAMPER_BRACKET;
    }
  }

  /**
   * An upper control arm.
   *
   * @param casterChange what its maker claims it adds to caster
   * @param camberChange what its maker claims it adds to camber
   * @param ballJoint where its ball joint lies against the book arm's, as surveyed
   * @param adjusters what it brings of its own to set camber and caster
   * @param swing its ball joint's swing from the middle, either way
   */
  @Named("upper-arm")
  record UpperArm(
      @Inline Listing listing,
      @Measured(value = ANGLE, by = CLAIM, how = "ask the maker", min = -10, max = 10)
          Quantity casterChange,
      @Measured(value = ANGLE, by = CLAIM, how = "ask the maker", min = -10, max = 10)
          Quantity camberChange,
      @Measured(value = LENGTH, by = STATED, how = "ask the maker", max = 300) Quantity liftFrom,
      @Measured(value = LENGTH, by = STATED, how = "ask the maker", max = 300) Quantity liftTo,
      @Nullable Shift ballJoint,
      List<Adjuster> adjusters,
      @Measured(value = ANGLE, by = STATED, how = "ask the maker", max = 60) Quantity swing)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.UPPER_ARM;
    }
  }

  /** A panhard bar; of one length, or adjustable between two. */
  @Named("panhard-bar")
  record PanhardBar(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = TAPE, how = "eye to eye", min = 300, max = 1500)
          Quantity lengthFrom,
      @Measured(value = LENGTH, by = TAPE, how = "eye to eye", min = 300, max = 1500)
          Quantity lengthTo)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.PANHARD_BAR;
    }
  }

  /**
   * A bracket that moves one end of a panhard bar; each hole has its rise over the old one.
   *
   * @param end which end of the bar it moves
   */
  @Named("panhard-bracket")
  record PanhardBracket(@Inline Listing listing, @Required BarEnd end, List<Hole> holes)
      implements SuspensionPart {
    /** An end of a panhard bar. */
    public enum BarEnd {
      AXLE,
      FRAME
    }

    /** One hole of the bracket. */
    public record Hole(
        @Required String name,
        @Measured(value = LENGTH, by = CALIPER, how = "old to new hole", min = -150, max = 200)
            Quantity rise) {}

    @Override
    public PartKind kind() {
      return PartKind.PANHARD_BRACKET;
    }
  }

  /** A link between sway bar and axle or arm. */
  @Named("sway-bar-link")
  record SwayBarLink(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = TAPE, how = "eye to eye", min = 40, max = 600) Quantity length)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.SWAY_BAR_LINK;
    }
  }

  /**
   * A bump stop.
   *
   * @param flatHeight what is left of it under the worst blow; absent where it crushes as the
   *     book's
   */
  @Named("bump-stop")
  record BumpStop(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = TAPE, how = "seat to tip", min = 10, max = 250)
          Quantity height,
      @Measured(value = LENGTH, by = TAPE, how = "ask the maker", min = 5, max = 200)
          Quantity flatHeight)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.BUMP_STOP;
    }
  }

  /** A brake hose, breather or other line that follows the wheel. */
  @Named("flexible-line")
  record FlexibleLine(
      @Inline Listing listing,
      @Required Carries carries,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "between its fixed ends, straight",
              min = 50,
              max = 3000)
          Quantity length)
      implements SuspensionPart {
    /** What runs in it. */
    public enum Carries {
      BRAKE_FLUID,
      BREATHER,
      SENSOR_WIRE,
      SUSPENSION_FLUID
    }

    @Override
    public PartKind kind() {
      return PartKind.FLEXIBLE_LINE;
    }
  }

  /** A link to a height sensor. */
  @Named("height-sensor-link")
  record HeightSensorLink(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = TAPE, how = "eye to eye", min = 20, max = 400)
          Quantity lengthFrom,
      @Measured(value = LENGTH, by = TAPE, how = "eye to eye", min = 20, max = 400)
          Quantity lengthTo)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.HEIGHT_SENSOR_LINK;
    }
  }

  /**
   * Blocks between body and frame.
   *
   * @param thickness how much higher the body stands on them
   * @param blocks how many there are
   * @param extensions what it brings to lengthen what runs between body and frame
   */
  @Named("body-lift-kit")
  record BodyLiftKit(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = CALIPER, how = "caliper", min = 1, max = 150)
          Quantity thickness,
      @Nullable Integer blocks,
      List<Extension> extensions)
      implements SuspensionPart {

    /**
     * What lengthens or moves one thing between body and frame.
     *
     * @param crossing what it is for
     * @param by how much more it then gives way
     */
    public record Extension(
        Place place,
        @Required BodyOnFrame.Crossing crossing,
        @Required @Measured(value = LENGTH, by = CALIPER, how = "caliper", min = 1, max = 300)
            Quantity by) {}

    @Override
    public PartKind kind() {
      return PartKind.BODY_LIFT_KIT;
    }
  }

  /**
   * An air spring or helper bag beside the steel spring, on an axle whose height nothing holds.
   *
   * @param motionRatio how much shorter it gets for the wheel's rise
   * @param effectiveDiameter of a circle whose area carries its load, as mounted at book height
   * @param diameterPerLength change of that diameter for each millimeter that it is longer: 0 of a
   *     rolling lobe, below 0 of one that necks as it is drawn out
   * @param volume of its air, as mounted at book height
   * @param gasIndex polytropic index of the air in quick movement
   * @param pressureFrom the least pressure, under which it is pinched
   * @param pressureTo the greatest pressure
   */
  @Named("air-spring")
  record AirSpring(
      @Inline Listing listing,
      @Measured(
              value = RATIO,
              by = STATED,
              how = "how much shorter it gets for 50 mm at the wheel",
              min = 0.2,
              max = 1.5)
          Quantity motionRatio,
      @Measured(
              value = LENGTH,
              by = STATED,
              how = "maker's table: load over pressure gives the area",
              min = 20,
              max = 400)
          Quantity effectiveDiameter,
      @Measured(value = RATIO, by = STATED, how = "maker's table at two heights", min = -2, max = 2)
          Quantity diameterPerLength,
      @Measured(value = VOLUME, by = STATED, how = "maker's table", min = 0.05, max = 30)
          Quantity volume,
      @Measured(value = RATIO, by = STATED, how = "1.3 is usual", min = 1, max = 1.7)
          Quantity gasIndex,
      @Measured(value = PRESSURE, by = STATED, how = "maker's paper", min = 0, max = 2000)
          Quantity pressureFrom,
      @Measured(value = PRESSURE, by = STATED, how = "maker's paper", min = 50, max = 3000)
          Quantity pressureTo)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.AIR_SPRING;
    }
  }

  /** An eccentric bolt with its washers, where the maker fits a plain one. */
  @Named("eccentric-bolt")
  record EccentricBolt(@Inline Listing listing) implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.ECCENTRIC_BOLT;
    }
  }

  /** A link between frame and beam axle; of one length, or adjustable between two. */
  @Named("axle-link")
  record AxleLink(
      @Inline Listing listing,
      @Required Level level,
      @Measured(value = LENGTH, by = TAPE, how = "eye to eye", min = 150, max = 1500)
          Quantity lengthFrom,
      @Measured(value = LENGTH, by = TAPE, how = "eye to eye", min = 150, max = 1500)
          Quantity lengthTo)
      implements SuspensionPart {
    /** Which of the links it is. */
    public enum Level {
      LOWER,
      UPPER
    }

    @Override
    public PartKind kind() {
      return PartKind.AXLE_LINK;
    }
  }

  /** Spacers that hang an independent axle's differential lower in its frame. */
  @Named("differential-drop")
  record DifferentialDrop(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = CALIPER, how = "caliper", min = 1, max = 120) Quantity drop)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.DIFFERENTIAL_DROP;
    }
  }

  /**
   * A block between leaf spring and axle.
   *
   * @param wedge how far it tips the axle's nose up
   */
  @Named("leaf-block")
  record LeafBlock(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = CALIPER, how = "caliper at its middle", max = 150)
          Quantity thickness,
      @Measured(value = ANGLE, by = STATED, how = "angle finder", min = -10, max = 10)
          Quantity wedge)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.LEAF_BLOCK;
    }
  }

  /** The shackle of a leaf spring. */
  @Named("shackle")
  record Shackle(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = TAPE, how = "eye to eye", min = 40, max = 300) Quantity length)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.SHACKLE;
    }
  }

  /**
   * Something that is carried for good: a bumper, a winch, a rack, a tank.
   *
   * @param mass with what it holds
   * @param fore of its center of mass, before the front axle positive, behind it negative
   * @param out of its center of mass from the middle, toward the left positive
   */
  @Named("accessory")
  record Accessory(
      @Inline Listing listing,
      @Required @Measured(value = MASS, by = WEIGHED, how = "weigh it", min = 0.5, max = 800)
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
          Quantity out)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.ACCESSORY;
    }
  }

  /** What holds a slack coil in its seats. */
  @Named("coil-retainer")
  record CoilRetainer(@Inline Listing listing) implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.COIL_RETAINER;
    }
  }

  /**
   * A strap that ends an axle's way down before the damper does.
   *
   * @param droop how far the wheel hangs under book height when it is taut
   */
  @Named("droop-strap")
  record DroopStrap(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = TAPE, how = "wheel's way down when taut", min = 0, max = 500)
          Quantity droop)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.DROOP_STRAP;
    }
  }

  /**
   * A bracket that moves the rod of a load-sensing brake valve with a raised body.
   *
   * @param liftFrom the least lift it is made for
   * @param liftTo the greatest
   */
  @Named("brake-valve-bracket")
  record BrakeValveBracket(
      @Inline Listing listing,
      @Measured(value = LENGTH, by = STATED, how = "ask the maker", min = 0, max = 200)
          Quantity liftFrom,
      @Measured(value = LENGTH, by = STATED, how = "ask the maker", min = 0, max = 300)
          Quantity liftTo)
      implements SuspensionPart {
    @Override
    public PartKind kind() {
      return PartKind.BRAKE_VALVE_BRACKET;
    }
  }
}
