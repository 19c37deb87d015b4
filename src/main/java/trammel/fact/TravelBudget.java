package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * What is left of a wheel's travel, up and down, from where it stands.
 *
 * @param lift what the changes raise the corner by
 * @param bumpBefore from where it stands today up to the bump stop
 * @param bumpAfter the same as proposed
 * @param droopBefore from where it stands today down to what ends its way
 * @param droopAfter the same as proposed
 * @param droopShare what is left of today's droop
 * @param end what ends its way down as proposed, in words
 * @param onTheDamper whether that is the damper, so that a bracket or a longer one gives droop back
 */
@Fact.Concerns({
  PartKind.DAMPER,
  PartKind.DAMPER_BRACKET,
  PartKind.BUMP_STOP,
  PartKind.DROOP_STRAP,
  PartKind.SPRING,
  PartKind.SPRING_SPACER,
  PartKind.STRUT_TOP_SPACER
})
@Fact.Since("0.3")
public record TravelBudget(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = LENGTH, name = "suspension lift") Quantity lift,
    @Measured(value = LENGTH, name = "bump left today") Quantity bumpBefore,
    @Measured(value = LENGTH, name = "bump left") Quantity bumpAfter,
    @Measured(value = LENGTH, name = "droop left today") Quantity droopBefore,
    @Measured(value = LENGTH, name = "droop left") Quantity droopAfter,
    @Measured(value = RATIO, name = "droop left of what it had") Quantity droopShare,
    String end,
    boolean onTheDamper)
    implements Fact {}
