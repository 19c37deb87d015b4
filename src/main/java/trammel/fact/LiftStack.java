package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * Parts that together raise a corner, against where its way down ends.
 *
 * @param together what they are, in words
 * @param lift what the corner stands over book height as proposed
 * @param droopLeft from there down to what ends its way
 * @param end what that is, in words
 * @param droopAdded how much lower the wheel can hang than today
 * @param jointsJudged whether ball joints and half shafts are surveyed, so that their own rules
 *     judge them; met too where a beam has none
 */
@Fact.Concerns({PartKind.SPRING, PartKind.SPRING_SPACER, PartKind.STRUT_TOP_SPACER})
@Fact.Since("0.3")
public record LiftStack(
    Subject subject,
    Standing standing,
    List<String> parts,
    String together,
    @Measured(value = LENGTH, name = "lift over book height") Quantity lift,
    @Measured(value = LENGTH, name = "droop left") Quantity droopLeft,
    String end,
    @Measured(value = LENGTH, name = "droop added") Quantity droopAdded,
    Decision jointsJudged)
    implements Fact {}
