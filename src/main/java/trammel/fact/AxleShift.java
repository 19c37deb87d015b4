package trammel.fact;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * How far a panhard bar holds its axle from the middle.
 *
 * @param shift of the axle, whichever way
 * @param toward which side: {@code left} or {@code right}
 * @param slope the bar against level, in front view, whichever end is higher
 * @param slopeBefore the same as it was
 * @param hole the bracket hole it is in; empty where there is no choice
 * @param bestHole the hole that would leave it least
 * @param bestShift what that one would leave
 * @param lost how much more the chosen hole leaves
 * @param recenters length of an adjustable bar that would center it
 */
@Fact.Concerns({PartKind.PANHARD_BAR, PartKind.PANHARD_BRACKET})
@Fact.Since("0.2")
public record AxleShift(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = LENGTH, name = "sideways shift of the axle") Quantity shift,
    String toward,
    @Measured(value = ANGLE, name = "slope of the bar") Quantity slope,
    @Measured(value = ANGLE, name = "slope of the bar before") Quantity slopeBefore,
    String hole,
    String bestHole,
    @Measured(value = LENGTH, name = "shift in the best hole") Quantity bestShift,
    @Measured(value = LENGTH, name = "shift lost by the hole") Quantity lost,
    @Measured(value = LENGTH, name = "bar length that centers it") Quantity recenters)
    implements Fact {}
