package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * Blocks between body and frame.
 *
 * @param kit part number of the blocks
 * @param thickness of one block
 * @param blocks how many the kit holds, in words
 * @param mounts how many places the body stands on, in words
 * @param mountsAgree whether there is one block for each; absent where nobody has counted
 * @param beneath part number of the blocks that were there before; empty where there were none
 * @param alone whether there were none
 */
@Fact.Concerns({PartKind.BODY_LIFT_KIT})
@Fact.Since("0.4")
public record BodyBlocks(
    Subject subject,
    Standing standing,
    List<String> parts,
    String kit,
    @Measured(value = LENGTH, name = "thickness of the blocks") Quantity thickness,
    String blocks,
    String mounts,
    Decision mountsAgree,
    String beneath,
    Decision alone)
    implements Fact {}
