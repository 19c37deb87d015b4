package trammel.fact;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * The link of a sway bar over the wheel's travel. Its angle is counted from the perpendicular to
 * the bar's arm.
 *
 * @param link its number; empty where nobody says which is fitted
 * @param length of it
 * @param atRest the angle where the vehicle stands, either way
 * @param steepest the greatest over the travel, either way; 90 where arm and link come into one
 *     line
 * @param pose where that is, in words
 * @param armChange how far the bar's arm stands from its book angle, as a share of its working
 *     angle from droop to bump
 * @param rightLength the length that keeps the arm at its book angle
 */
@Fact.Concerns({
  PartKind.SWAY_BAR_LINK,
  PartKind.SPRING,
  PartKind.SPRING_SPACER,
  PartKind.STRUT_TOP_SPACER
})
@Fact.Since("0.3")
public record SwayLink(
    Subject subject,
    Standing standing,
    List<String> parts,
    String link,
    @Measured(value = LENGTH, name = "length of the link") Quantity length,
    @Measured(value = ANGLE, name = "link angle at rest") Quantity atRest,
    @Measured(value = ANGLE, name = "steepest link angle") Quantity steepest,
    String pose,
    @Measured(value = RATIO, name = "change of the arm angle") Quantity armChange,
    @Measured(value = LENGTH, name = "link that keeps the arm level") Quantity rightLength)
    implements Fact {}
