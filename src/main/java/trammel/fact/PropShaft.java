package trammel.fact;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * A prop shaft at the proposed height.
 *
 * @param shaft what it is called
 * @param outputAngle the joint's angle at gearbox or transfer case
 * @param pinionAngle the joint's angle at the axle
 * @param steeper the greater of those that a single joint has
 * @param allowed the most at the speed it turns under torque
 * @param mismatch how far both angles differ, for two single joints; 0 for a double joint, which
 *     cancels by itself
 * @param splineLeft how far its slip spline stays in at droop
 * @param splineNeeded a third of it
 */
@Fact.Concerns({
  PartKind.AXLE_LINK,
  PartKind.LEAF_BLOCK,
  PartKind.SHACKLE,
  PartKind.DIFFERENTIAL_DROP
})
@Fact.Since("0.2")
public record PropShaft(
    Subject subject,
    Standing standing,
    List<String> parts,
    String shaft,
    @Measured(value = ANGLE, name = "joint at the gearbox") Quantity outputAngle,
    @Measured(value = ANGLE, name = "joint at the axle") Quantity pinionAngle,
    @Measured(value = ANGLE, name = "steeper joint") Quantity steeper,
    @Measured(value = ANGLE, name = "joint angle allowed at its speed") Quantity allowed,
    @Measured(value = ANGLE, name = "difference of the joint angles") Quantity mismatch,
    @Measured(value = LENGTH, name = "spline engaged at droop") Quantity splineLeft,
    @Measured(value = LENGTH, name = "spline needed") Quantity splineNeeded)
    implements Fact {}
