package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * A coil spring between its seats over the wheel's travel.
 *
 * @param spring its number
 * @param gap over the slack coil with the wheel hanging: negative where it still carries
 * @param held whether seats or a retainer hold the coil when it is slack
 * @param bindRoom over the solid coil with the bump stop crushed: negative where it binds first
 */
@Fact.Concerns({
  PartKind.SPRING,
  PartKind.SPRING_SPACER,
  PartKind.STRUT_TOP_SPACER,
  PartKind.COIL_RETAINER,
  PartKind.BUMP_STOP
})
@Fact.Since("0.3")
public record CoilRoom(
    Subject subject,
    Standing standing,
    List<String> parts,
    String spring,
    @Measured(value = LENGTH, name = "gap over the slack coil") Quantity gap,
    boolean held,
    @Measured(value = LENGTH, name = "room over the solid coil") Quantity bindRoom)
    implements Fact {}
