package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Station;
import trammel.subject.Subject;

/**
 * What would be left at one station if the tire were as large as the standards allow a tire of its
 * size to be. Only sheets that say where the vehicle is registered have it, for only the law asks.
 *
 * @param station the station
 * @param tire part number; empty where nobody says which is fitted
 * @param obstacle what it may meet
 * @param width the greatest section width of the size on this rim
 * @param diameter the greatest overall diameter of the size
 * @param room what is left: negative where such a tire meets
 * @param pose where steering and wheel stand, in a fitter's words
 */
@Fact.Concerns({PartKind.TIRE, PartKind.WHEEL, PartKind.WHEEL_SPACER})
@Fact.Since("0.3")
public record EnvelopeRoom(
    Subject subject,
    Standing standing,
    List<String> parts,
    Station station,
    String tire,
    String obstacle,
    @Measured(value = LENGTH, name = "greatest section width of the size") Quantity width,
    @Measured(value = LENGTH, name = "greatest diameter of the size") Quantity diameter,
    @Measured(value = LENGTH, name = "room of the largest tire of this size") Quantity room,
    String pose)
    implements Fact {}
