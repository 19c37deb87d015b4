package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.MASS;

import java.util.List;
import trammel.catalog.VehicleProfile.Drive;
import trammel.catalog.VehicleProfile.VehicleClass;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * The vehicle on the sheet, for rules that hold for some vehicles or places only.
 *
 * @param vehicle the name that files call it by
 * @param vehicleClass what it is registered as
 * @param drive which axles the engine drives
 * @param grossRating the most it may weigh laden
 * @param place where it is registered; empty where the sheet names none
 */
@Fact.Since("0.3")
public record Vehicle(
    Subject subject,
    Standing standing,
    List<String> parts,
    String vehicle,
    VehicleClass vehicleClass,
    Drive drive,
    @Measured(value = MASS, name = "gross rating") Quantity grossRating,
    @Measured(LENGTH) Quantity wheelbase,
    String place)
    implements Fact {}
