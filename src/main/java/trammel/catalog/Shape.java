package trammel.catalog;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Instrument.TAPE;

import trammel.quantity.Quantity;
import trammel.read.Discriminator;
import trammel.read.Measured;
import trammel.read.Named;
import trammel.read.Required;

/** The shape of something that a tire may meet, as surveyed at rest and straight ahead. */
@Discriminator("shape")
public sealed interface Shape {

  /** A corner, a bolt head. */
  @Named("point")
  record Spot(@Required SurveyPoint at) implements Shape {}

  /** An edge, a seam, a rod. */
  @Named("segment")
  record Edge(@Required SurveyPoint from, @Required SurveyPoint to) implements Shape {}

  /** A box with its edges fore, out and up, from one corner to the opposite one. */
  @Named("box")
  record Block(@Required SurveyPoint from, @Required SurveyPoint to) implements Shape {}

  /**
   * A flat round plate.
   *
   * @param toward a point that its axis goes through
   */
  @Named("disc")
  record Plate(
      @Required SurveyPoint center,
      @Required SurveyPoint toward,
      @Measured(value = LENGTH, by = TAPE, how = "tape", min = 1, max = 600) Quantity radius)
      implements Shape {}
}
