package trammel.fact;

import static trammel.quantity.Dimension.ANGLE;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * What a wheel's alignment can be set to at the proposed height, toe reset.
 *
 * @param depth how well the axle's geometry is known: tape, rack or surveyed
 * @param camber at the best setting
 * @param caster at the best setting
 * @param camberReserve how far what the adjusters reach goes into the camber window, caster being
 *     in its own; negative where it falls short
 * @param casterReserve the same for caster
 * @param setting the best setting, in the units a fitter turns
 * @param camberMeans what the nearest reachable camber does, where it is outside, in words that end
 *     a sentence
 * @param casterMeans what the nearest reachable caster does, where it is outside, in words that end
 *     a sentence
 */
@Fact.Concerns({PartKind.UPPER_ARM, PartKind.AXLE_LINK, PartKind.ECCENTRIC_BOLT})
@Fact.Since("0.2")
public record Alignment(
    Subject subject,
    Standing standing,
    List<String> parts,
    String depth,
    @Measured(value = ANGLE, name = "camber at the best setting") Quantity camber,
    @Measured(value = ANGLE, name = "caster at the best setting") Quantity caster,
    @Measured(value = ANGLE, name = "reach into the camber window") Quantity camberReserve,
    @Measured(value = ANGLE, name = "reach into the caster window") Quantity casterReserve,
    String setting,
    String camberMeans,
    String casterMeans)
    implements Fact {}
