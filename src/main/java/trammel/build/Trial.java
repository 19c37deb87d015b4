package trammel.build;

/**
 * What is tried on a build beyond what its sheet proposes (mm): how far may a wish go?
 *
 * @param diameter added to the diameter of the proposed tires
 * @param width added to their section width
 * @param offset added to the offset of the proposed wheels
 * @param frontLift added to the suspension lift in front
 * @param rearLift added to the suspension lift at the rear
 */
public record Trial(
    double diameter, double width, double offset, double frontLift, double rearLift) {
  /** Nothing but what the sheet proposes. */
  public static final Trial NONE = new Trial(0, 0, 0, 0, 0);
}
