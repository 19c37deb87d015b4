package trammel.build;

/**
 * What is tried on a build beyond what its sheet proposes (mm): how far may a wish go?
 *
 * @param diameter added to the diameter of the proposed tires
 * @param width added to their section width
 * @param offset added to the offset of the proposed wheels
 * @param wheelSpacer added to the thickness of the wheel spacers that are proposed
 * @param springSpacer added to the thickness of the spring spacers that are proposed
 * @param frontLift added to the suspension lift in front
 * @param rearLift added to the suspension lift at the rear
 */
public record Trial(
    double diameter,
    double width,
    double offset,
    double wheelSpacer,
    double springSpacer,
    double frontLift,
    double rearLift) {
  /** Nothing but what the sheet proposes. */
  public static final Trial NONE = new Trial(0, 0, 0, 0, 0, 0, 0);
}
