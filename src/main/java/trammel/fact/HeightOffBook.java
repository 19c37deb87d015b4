package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * A corner as found, against what the book predicts for what is fitted and what it carries.
 *
 * @param predicted hub to fender by the book and the balance of forces
 * @param measured hub to fender as somebody has measured it
 * @param rest measured less predicted: what nothing on the sheet explains
 * @param apart the same without its sign
 * @param way whether it stands higher or lower than predicted
 */
@Fact.Since("0.1")
public record HeightOffBook(
    Subject subject,
    Standing standing,
    List<String> parts,
    @Measured(value = LENGTH, name = "height predicted") Quantity predicted,
    @Measured(value = LENGTH, name = "height as found") Quantity measured,
    @Measured(value = LENGTH, name = "unexplained rest") Quantity rest,
    @Measured(value = LENGTH, name = "off the prediction") Quantity apart,
    String way)
    implements Fact {}
