package trammel.fact;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import trammel.catalog.PartKind;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.subject.Subject;

/**
 * How a wheel, or a spacer with studs of its own, is held at one wheel.
 *
 * @param fastener part number of the nut or bolt
 * @param bolts whether wheel bolts hold it, rather than nuts on studs
 * @param threadAgrees whether the threads are one and the same
 * @param seatAgrees whether nut or bolt has the seat that the wheel was made for
 * @param seat the fastener's seat; {@code wheelSeat} is the wheel's
 * @param engagement full thread that carries
 * @param engagementRatio engagement over thread diameter
 * @param turns engagement over pitch
 * @param closedRoom for a closed nut: its depth less the stud beyond the seat; for a bolt: room
 *     behind its tip
 * @param closed whether the room behind matters: closed nut, or bolt
 * @param holeRoom hole of the wheel less nut or socket
 */
@Fact.Concerns({PartKind.WHEEL, PartKind.WHEEL_SPACER, PartKind.FASTENER, PartKind.STUD})
@Fact.Since("0.1")
public record Fastening(
    Subject subject,
    Standing standing,
    List<String> parts,
    String fastener,
    boolean bolts,
    String thread,
    String onThread,
    Decision threadAgrees,
    String seat,
    String wheelSeat,
    Decision seatAgrees,
    @Measured(value = LENGTH, name = "thread engagement") Quantity engagement,
    @Measured(value = RATIO, name = "thread engagement over diameter") Quantity engagementRatio,
    @Measured(RATIO) Quantity turns,
    boolean closed,
    @Measured(value = LENGTH, name = "room behind the thread") Quantity closedRoom,
    @Measured(value = LENGTH, name = "room in the nut hole") Quantity holeRoom)
    implements Fact {}
