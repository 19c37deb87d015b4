package trammel.quantity;

/**
 * How a value was come by, and the expanded uncertainty (k = 2) it has when its file states none.
 *
 * <p>All are common practice of the trade, except where a source is named. The order is that of the
 * measuring list: what takes no tool comes first.
 */
public enum Instrument {
  /** A mark, a token or a count that is read and not measured. */
  READ("read the mark", 0, 0),
  /** A value that the maker's paper states and that is exact for our purpose. */
  STATED("maker's paper", 0, 0),
  TAPE("tape measure", 3, 0),
  /** Hub center to fender edge, which a body's own tolerance blurs. */
  FENDER("tape measure, hub to fender", 5, 0),
  /** A gap felt at full lock, where the tire is not held. */
  LOCK_GAP("tape measure at lock", 5, 0),
  HARD_POINT("survey", 2, 0),
  CALIPER("caliper", 0.2, 0),
  /** A machined bore, pilot or bolt circle as its maker states it. */
  MACHINED("maker's drawing or caliper", 0.1, 0),
  WHEEL_OFFSET("mark on the wheel", 0.5, 0),
  /**
   * Outer diameter and loaded radius of a tire by its designation or table: GOST R 52899-2007,
   * table A.1, ±1.0 %.
   */
  TIRE_TABLE("maker's tire table", 0, 0.01),
  /**
   * Laid on a bar, a flange or a housing in place, or the difference of two such readings. Common
   * practice.
   */
  ANGLE_FINDER("angle finder", 0.5, 0),
  TOE_RACK("alignment rack, toe", 0.05, 0),
  CAMBER_RACK("alignment rack, camber", 0.1, 0),
  CASTER_RACK("alignment rack, caster", 0.25, 0),
  SPRING_RATE("spring maker's table", 0, 0.05),
  WEIGHED("scale", 0, 0.02),
  GUESSED("guess", 0, 0.20),
  GAUGE("pressure gauge", 0, 0.02),
  /** A change that a part's maker claims. */
  CLAIM("maker's claim", 0, 0.25);

  private final String words;
  private final double absolute;
  private final double relative;

  Instrument(String words, double absolute, double relative) {
    this.words = words;
    this.absolute = absolute;
    this.relative = relative;
  }

  /** The tool as a fitter would name it. */
  public String words() {
    return words;
  }

  /** The expanded uncertainty (k = 2) of a value so obtained, in the value's own kept unit. */
  public double expanded(double value) {
    return absolute + relative * Math.abs(value);
  }

  /**
   * Whether its uncertainty makes sense for a dimension: one that is absolute holds in one unit
   * only.
   */
  public boolean measures(Dimension dimension) {
    return switch (this) {
      case TAPE, FENDER, LOCK_GAP, HARD_POINT, CALIPER, MACHINED, WHEEL_OFFSET ->
          dimension == Dimension.LENGTH;
      case ANGLE_FINDER, TOE_RACK, CAMBER_RACK, CASTER_RACK -> dimension == Dimension.ANGLE;
      default -> true;
    };
  }

  /** The instrument of this name in kebab case, as files write it after {@code by}. */
  public String fileName() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
