package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Station;
import trammel.subject.Subject;

/**
 * A wheel or tire against the vehicle at one station, in the pose that decides.
 *
 * @param station the station
 * @param surface what of the tire comes closest
 * @param obstacle what it may meet
 * @param gap what is left: negative where it meets
 * @param change what the proposed parts do to it: negative where they take room
 * @param pose where steering and wheel stand, in a fitter's words
 * @param trim what would have to be cut to gain room; empty where unknown
 * @param perEdge gap lost for each mm that the tire's edge comes nearer
 * @param perRadius gap lost for each mm of tire radius
 */
@Fact.Concerns({PartKind.TIRE, PartKind.WHEEL, PartKind.WHEEL_SPACER})
@Fact.Since("0.1")
public record Clearance(
    Subject subject,
    Standing standing,
    List<String> parts,
    Station station,
    String surface,
    String obstacle,
    @Measured(LENGTH) Quantity gap,
    @Measured(value = LENGTH, name = "change of gap") Quantity change,
    String pose,
    String trim,
    @Measured(value = RATIO, name = "gap lost per length of edge") Quantity perEdge,
    @Measured(value = RATIO, name = "gap lost per length of radius") Quantity perRadius)
    implements Fact {}
