package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.VOLTAGE;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * What a height sensor reads at the height set, and what is left of its range there, told at the
 * wheel.
 *
 * @param height of the body over book height, as the sensor sees it through its link
 * @param reading what it reads there
 * @param above how far the body may still be raised before its range ends; negative past the end
 * @param below the same for lowering
 * @param left the lesser of both
 */
@Fact.Since("0.1")
@Fact.Concerns(PartKind.HEIGHT_SENSOR_LINK)
public record SensorRange(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = LENGTH, name = "height that the sensor sees") Quantity height,
    @Measured(value = VOLTAGE, name = "reading") Quantity reading,
    @Measured(value = LENGTH, name = "range left above") Quantity above,
    @Measured(value = LENGTH, name = "range left below") Quantity below,
    @Measured(value = LENGTH, name = "range left") Quantity left)
    implements Fact {}
