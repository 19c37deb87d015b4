package trammel.catalog;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Instrument.CALIPER;
import static trammel.quantity.Instrument.STATED;

import java.util.List;
import java.util.Locale;
import trammel.geometry.HardPoint;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.Place;
import trammel.read.Required;

/**
 * Something that an alignment shop turns, shims or slides to set camber and caster. It moves its
 * joints outward (positive) or inward; one of adjustable length moves the ball joint away from the
 * arm's pivots. A bolt between strut and knuckle moves the knuckle's hole outward against the
 * strut.
 *
 * @param eccentricity of an eccentric bolt: it moves its pivot as far either way
 * @param from the least shift of shims, a slot or a thread
 * @param to the greatest
 * @param toward where a slot or shims move it, in plan, from straight outward toward the front: 90°
 *     is forward; straight outward where it is not given
 * @param soldApart whether the maker fits plain bolts and sells the adjuster as a service part
 */
public record Adjuster(
    Place place,
    @Required Moves moves,
    @Required Means means,
    @Measured(value = LENGTH, by = CALIPER, how = "half its total throw", min = 0, max = 25)
        Quantity eccentricity,
    @Measured(value = LENGTH, by = CALIPER, how = "caliper", min = -60, max = 60) Quantity from,
    @Measured(value = LENGTH, by = CALIPER, how = "caliper", min = -60, max = 60) Quantity to,
    @Measured(value = ANGLE, by = STATED, how = "square edge along the slot", min = -180, max = 180)
        Quantity toward,
    boolean soldApart) {

  /** What it moves. */
  public enum Moves {
    UPPER_FRONT_PIVOT(HardPoint.UPPER_FRONT_PIVOT),
    UPPER_REAR_PIVOT(HardPoint.UPPER_REAR_PIVOT),
    UPPER_PIVOTS(HardPoint.UPPER_FRONT_PIVOT, HardPoint.UPPER_REAR_PIVOT),
    UPPER_BALL_JOINT(HardPoint.UPPER_BALL_JOINT),
    LOWER_FRONT_PIVOT(HardPoint.LOWER_FRONT_PIVOT),
    LOWER_REAR_PIVOT(HardPoint.LOWER_REAR_PIVOT),
    LOWER_PIVOTS(HardPoint.LOWER_FRONT_PIVOT, HardPoint.LOWER_REAR_PIVOT),
    LOWER_BALL_JOINT(HardPoint.LOWER_BALL_JOINT),
    /** A strut's top mount. */
    STRUT_TOP(HardPoint.STRUT_TOP),
    /** The knuckle's upper hole against the strut: the knuckle turns about the lower bolt. */
    KNUCKLE_UPPER_BOLT(HardPoint.KNUCKLE_UPPER_BOLT),
    /** The knuckle's lower hole against the strut: the knuckle turns about the upper bolt. */
    KNUCKLE_LOWER_BOLT(HardPoint.KNUCKLE_LOWER_BOLT);

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    private final List<HardPoint> points;

    Moves(HardPoint... points) {
      this.points = List.of(points);
    }

    /** The joints that move together. */
    public List<HardPoint> points() {
      return points;
    }

    /** Whether it turns the knuckle against its strut. */
    public boolean atKnuckle() {
      return points.get(0).ofKnuckleBolt();
    }

    /** In a fitter's words. */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** How it moves them. */
  public enum Means {
    /** An eccentric bolt, turned; its setting is an angle of the cam. */
    ECCENTRIC,
    /** Shims under a bracket. */
    SHIMS,
    /** A slotted or offset plate. */
    SLOT,
    /** A thread in the arm, which makes it longer. */
    LENGTH
  }
}
