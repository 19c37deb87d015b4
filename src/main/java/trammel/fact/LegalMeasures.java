package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.MASS;
import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.catalog.VehicleProfile.VehicleClass;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * What statutes measure, on the vehicle as proposed. Changes are against the state in which its
 * maker sold it; heights are above ground. Frame, bumper and change are three measures that do not
 * convert into each other.
 *
 * @param vehicleClass what it is registered as
 * @param fourWheelDrive whether the engine can drive both axles
 * @param grossRating the most it may weigh laden
 * @param netMass what it weighs empty
 * @param liftFront what the suspension adds in front, mean of both sides
 * @param liftRear the same behind
 * @param bodyLift what blocks between body and frame add
 * @param tireLift half of what the tires' diameter has grown by, on the axle where that is more
 * @param totalRaise suspension, body and tires together, at the end where that is more
 * @param tireDiameterChange tire diameter against the maker's, on the axle where it grew more
 * @param tirePerWheelbase diameter of the larger tires over the wheelbase
 * @param trackChangeFront track of the front axle against the maker's
 * @param trackChangeRear track of the rear axle against the maker's
 * @param bumpShare bump travel left of what the maker gave, at the wheel that lost most
 * @param droopShare droop travel left of what the maker gave, at the wheel that lost most
 * @param frameHeight the frame's lowest place midway between the axles
 * @param lowestBody the lowest original part of the body
 * @param frameEndFront bottom of the frame's front end, at the bumper
 * @param frameEndRear bottom of the frame's rear end, at the bumper
 * @param bumperBottomFront lower edge of the front bumper
 * @param bumperBottomRear lower edge of the rear bumper
 * @param bumperTallness from a bumper's lower to its upper edge
 * @param floorOverFrame from the top of the frame to the floor of body or bed
 * @param fenderDifference front fender's height less the rear one's, each over its wheel
 * @param headlampCenter center of the headlamps
 * @param leafBlock thickness of the thickest block between leaf spring and axle that the maker did
 *     not fit; nothing where there is none
 * @param wheelSpacers whether wheel spacers are fitted that the maker did not fit
 * @param coilSpacers whether spacers lie in a coil spring's seat that the maker did not fit
 * @param frontLiftBlock whether such a block is fitted in front
 */
@Fact.Since("0.3")
public record LegalMeasures(
    Subject subject,
    Standing standing,
    List<String> parts,
    VehicleClass vehicleClass,
    boolean fourWheelDrive,
    @Measured(value = MASS, name = "gross rating") Quantity grossRating,
    @Measured(value = MASS, name = "net mass") Quantity netMass,
    @Measured(value = LENGTH, name = "suspension lift in front") Quantity liftFront,
    @Measured(value = LENGTH, name = "suspension lift behind") Quantity liftRear,
    @Measured(value = LENGTH, name = "body lift") Quantity bodyLift,
    @Measured(value = LENGTH, name = "tire lift") Quantity tireLift,
    @Measured(value = LENGTH, name = "total raise") Quantity totalRaise,
    @Measured(value = LENGTH, name = "change of tire diameter") Quantity tireDiameterChange,
    @Measured(value = RATIO, name = "tire diameter over wheelbase") Quantity tirePerWheelbase,
    @Measured(value = LENGTH, name = "change of the front track") Quantity trackChangeFront,
    @Measured(value = LENGTH, name = "change of the rear track") Quantity trackChangeRear,
    @Measured(value = RATIO, name = "bump travel kept") Quantity bumpShare,
    @Measured(value = RATIO, name = "droop travel kept") Quantity droopShare,
    @Measured(value = LENGTH, name = "frame height midway") Quantity frameHeight,
    @Measured(value = LENGTH, name = "height of the body's lowest part") Quantity lowestBody,
    @Measured(value = LENGTH, name = "front end of the frame") Quantity frameEndFront,
    @Measured(value = LENGTH, name = "rear end of the frame") Quantity frameEndRear,
    @Measured(value = LENGTH, name = "bottom of the front bumper") Quantity bumperBottomFront,
    @Measured(value = LENGTH, name = "bottom of the rear bumper") Quantity bumperBottomRear,
    @Measured(value = LENGTH, name = "tallness of the bumpers") Quantity bumperTallness,
    @Measured(value = LENGTH, name = "floor over frame") Quantity floorOverFrame,
    @Measured(value = LENGTH, name = "front fender over rear fender") Quantity fenderDifference,
    @Measured(value = LENGTH, name = "center of the headlamps") Quantity headlampCenter,
    @Measured(value = LENGTH, name = "block under a leaf spring") Quantity leafBlock,
    Decision wheelSpacers,
    Decision coilSpacers,
    Decision frontLiftBlock)
    implements Fact {}
