package trammel.catalog;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Instrument.TAPE;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.Place;
import trammel.read.Required;

/** What holds a beam axle where it is, and steers it. */
public record BeamLocation(
    @Nullable Panhard panhard,
    @Nullable Links links,
    @Nullable DragLinkProfile dragLink,
    @Nullable LeafProfile leaf) {

  /** A bar from the frame on one side to the axle on the other. */
  public record Panhard(
      @Required SurveyPoint frameEnd, @Required SurveyPoint axleEnd, List<BarRoom> rooms) {}

  /**
   * A rod-shaped thing that a moved bar may meet.
   *
   * @param from one end of its axis
   * @param to the other
   * @param radius its own radius and the bar's together
   * @param onAxle whether it moves with the axle rather than with the body
   */
  public record BarRoom(
      Place place,
      @Required String obstacle,
      @Required SurveyPoint from,
      @Required SurveyPoint to,
      @Measured(value = LENGTH, by = TAPE, how = "tape", min = 0, max = 300) Quantity radius,
      boolean onAxle) {}

  /**
   * The links that hold it fore and aft, the same on both sides. Radius arms are lower links that
   * are bolted fast to the axle, with no upper ones.
   */
  public record Links(
      @Required SurveyPoint lowerFrame,
      @Required SurveyPoint lowerAxle,
      @Nullable SurveyPoint upperFrame,
      @Nullable SurveyPoint upperAxle,
      @Required SurveyPoint wheelCenter) {}

  /**
   * The drag link of a steered axle.
   *
   * @param boxEnd its end at the steering box' arm
   * @param axleEnd its end at the axle
   * @param steeringArm length of the arm that it turns
   */
  public record DragLinkProfile(
      @Required SurveyPoint boxEnd,
      @Required SurveyPoint axleEnd,
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "steering axis to the drag link's joint",
              min = 60,
              max = 400)
          Quantity steeringArm) {}

  /**
   * Leaf springs.
   *
   * @param span eye to eye
   * @param shackle eye to eye of the shackle that was there
   */
  public record LeafProfile(
      @Measured(value = LENGTH, by = TAPE, how = "eye to eye", min = 500, max = 2000) Quantity span,
      @Measured(value = LENGTH, by = TAPE, how = "eye to eye of the shackle", min = 40, max = 300)
          Quantity shackle) {}
}
