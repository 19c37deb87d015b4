package trammel.derive;

import static trammel.quantity.Dimension.RATIO;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.AxleProfile;
import trammel.catalog.Hub;
import trammel.catalog.PartKind;
import trammel.catalog.WheelPart.CenteringRing;
import trammel.catalog.WheelPart.Fastener;
import trammel.catalog.WheelPart.Fastener.FastenerForm;
import trammel.catalog.WheelPart.Stud;
import trammel.catalog.WheelPart.Wheel;
import trammel.catalog.WheelPart.WheelSpacer;
import trammel.catalog.WheelPart.WheelSpacer.SpacerForm;
import trammel.designation.BoltPattern;
import trammel.designation.SeatForm;
import trammel.designation.ThreadSize;
import trammel.fact.BrakeRoom;
import trammel.fact.Fastening;
import trammel.fact.FittedPart;
import trammel.fact.Seating;
import trammel.fact.SpacerStack;
import trammel.fact.Standing;
import trammel.fact.StudPocket;
import trammel.fact.Supply;
import trammel.quantity.Constants;
import trammel.quantity.Decision;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Position;
import trammel.subject.Subject;

/** Wheel, spacers and fastening at each hub. */
final class HubFacts {
  private static final Formula BORE_ROOM =
      new Formula("bore over pilot", "bore − pilot", "definition");
  private static final Formula PILOT_LEFT =
      new Formula(
          "pilot left",
          "pilot length − chamfer − spacer",
          "common practice; 4 mm of chamfer where none is stated");
  private static final Formula BEYOND_SEAT =
      new Formula("stud beyond the seat", "stud length − spacers − pad", "definition");
  private static final Formula SHORTER =
      new Formula(
          "thread engagement",
          "the shorter of thread in the nut and stud beyond the seat",
          "definition");
  private static final Formula IN_HUB =
      new Formula("bolt beyond the hub face", "bolt length − spacers − pad", "definition");
  private static final Formula RATIO_OF =
      new Formula(
          "thread engagement over diameter",
          "engagement / thread diameter",
          "common practice: at least one diameter");
  private static final Formula TURNS = new Formula("turns", "engagement / pitch", "definition");
  private static final Formula BEHIND =
      new Formula("room behind the thread", "depth − thread that enters it", "definition");
  private static final Formula HOLE =
      new Formula("room in the nut hole", "hole − nut", "definition");
  private static final Formula PROUD =
      new Formula("studs proud of the spacer", "stud length − spacer thickness", "definition");
  private static final Formula POCKET =
      new Formula("room in the wheel's pockets", "pocket depth − studs proud", "definition");
  private static final Formula BARREL =
      new Formula("barrel to caliper", "barrel radius − caliper radius", "definition");
  private static final Formula SPOKE =
      new Formula(
          "spoke to caliper", "room behind the spokes + spacers − caliper face", "definition");
  private static final Formula CAP = new Formula("bore over hub cap", "bore − cap", "definition");
  private static final Formula PLAY =
      new Formula("play of a ring", "hole − what fills it", "definition");

  /** Chamfer of a pilot whose chamfer nobody states. */
  private static final Quantity USUAL_CHAMFER = Constants.mm(4).called("usual chamfer");

  /** The most play that a ring may have on either face. */
  private static final Quantity RING_PLAY = Constants.mm(0.3);

  private final Derivation derivation;
  private final Build build;

  HubFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  void add() {
    for (Position position : Position.running()) {
      AxleProfile axle = build.vehicle().axle(position.axle().orElseThrow());
      WheelEnd end = derivation.after(position);
      boolean touched =
          build.changes(position, PartKind.WHEEL, PartKind.WHEEL_SPACER, PartKind.CENTERING_RING);
      Standing standing = Standing.ofChange(touched);
      fitted(position, end);
      seatings(position, axle.hub(), end, standing);
      boolean held = touched || build.changes(position, PartKind.FASTENER, PartKind.STUD);
      for (Fastener fastener : end.fasteners) {
        fastening(position, axle.hub(), end, fastener, Standing.ofChange(held));
      }
      stack(position, end, standing);
      if (end.wheel != null) {
        brake(position, axle.brake(), end, end.wheel, standing);
      }
    }
  }

  /**
   * Without a tire, a wheel and what holds it nothing can be judged here, and that must be said.
   */
  private void fitted(Position position, WheelEnd end) {
    boolean touched =
        build.changes(
            position, PartKind.TIRE, PartKind.WHEEL, PartKind.WHEEL_SPACER, PartKind.FASTENER);
    Standing standing = Standing.ofChange(touched);
    known(position, standing, PartKind.TIRE, end.tire != null, end.numbers());
    known(position, standing, PartKind.WHEEL, end.wheel != null, end.numbers());
    known(position, standing, PartKind.FASTENER, !end.fasteners.isEmpty(), end.numbers());
  }

  private void known(
      Position position, Standing standing, PartKind kind, boolean known, List<String> beside) {
    Subject subject = Subject.of(position, kind.toString());
    Decision decision = known ? Decision.MET : Decision.ABSENT;
    derivation.facts.add(new FittedPart(subject, standing, beside, kind.words(), decision));
  }

  private void seatings(Position position, Hub hub, WheelEnd end, Standing standing) {
    BoltPattern pattern = hub.boltPattern();
    Quantity pilot = hub.pilot();
    String on = "hub";
    boolean slipped = false;
    Quantity under = Constants.mm(0);
    for (WheelSpacer spacer : end.spacers) {
      derivation.facts.add(
          seating(
              Subject.of(position, "spacer"),
              standing,
              spacer.number(),
              on,
              spacer.boltPattern(),
              pattern,
              spacer.bore(),
              pilot,
              hub,
              slipped,
              under));
      pattern = spacer.outerPattern() == null ? spacer.boltPattern() : spacer.outerPattern();
      on = "spacer " + spacer.number();
      if (spacer.lipDiameter().isKnown() || spacer.form() == SpacerForm.BOLT_ON) {
        pilot = spacer.lipDiameter();
        slipped = false;
        under = Constants.mm(0);
      } else {
        slipped = true;
        under = end.thickness;
      }
    }
    if (end.wheel != null) {
      derivation.facts.add(
          seating(
              Subject.of(position, "wheel"),
              standing,
              end.wheel.number(),
              on,
              end.wheel.boltPattern(),
              pattern,
              end.wheel.bore(),
              pilot,
              hub,
              slipped,
              under));
      Equipment after = build.after(position);
      for (CenteringRing ring : after.all(PartKind.CENTERING_RING, CenteringRing.class)) {
        ring(position, ring, end.wheel, pilot, standing);
      }
    }
  }

  private static Seating seating(
      Subject subject,
      Standing standing,
      String part,
      String on,
      BoltPattern own,
      BoltPattern other,
      Quantity bore,
      Quantity pilot,
      Hub hub,
      boolean slipped,
      Quantity under) {
    Quantity chamfer = hub.pilotChamfer().isKnown() ? hub.pilotChamfer() : USUAL_CHAMFER;
    Quantity left = PILOT_LEFT.linear(new double[] {1, -1, -1}, hub.pilotLength(), chamfer, under);
    return new Seating(
        subject,
        standing,
        List.of(part),
        part,
        on,
        own.toString(),
        other.toString(),
        Decision.of(own.matches(other)),
        own.nearMiss(other),
        bore,
        pilot,
        BORE_ROOM.linear(1, bore, -1, pilot),
        hub.centers() == Hub.Centering.HUB,
        slipped,
        left);
  }

  private void ring(
      Position position, CenteringRing ring, Wheel wheel, Quantity pilot, Standing standing) {
    Quantity outside = PLAY.linear(1, wheel.bore(), -1, ring.outside());
    Quantity inside = PLAY.linear(1, ring.inside(), -1, pilot);
    Decision suits = Decision.MET;
    for (Quantity play : List.of(outside, inside)) {
      // A ring is pressed in by hand: a tenth of overlap within the bore's own tolerance still goes
      // in.
      suits =
          suits
              .and(play.atLeast(Constants.mm(-0.2)).decision())
              .and(play.atMost(RING_PLAY).decision());
    }
    derivation.facts.add(
        new Supply(
            Subject.of(position),
            standing,
            List.of(ring.number()),
            ring.number(),
            PartKind.CENTERING_RING,
            suits));
  }

  private void fastening(
      Position position, Hub hub, WheelEnd end, Fastener fastener, Standing standing) {
    Wheel wheel = end.wheel;
    if (wheel == null) {
      return;
    }
    WheelSpacer outer = end.spacers.isEmpty() ? null : end.spacers.get(end.spacers.size() - 1);
    boolean ownStuds = outer != null && outer.form() == SpacerForm.BOLT_ON;
    @Nullable Stud replaced = build.after(position).one(PartKind.STUD, Stud.class).orElse(null);
    ThreadSize onThread =
        ownStuds ? outer.studThread() : replaced == null ? hub.thread() : replaced.thread();
    Quantity stud =
        ownStuds ? outer.studLength() : replaced == null ? hub.studLength() : replaced.length();
    Quantity spacers = ownStuds ? Constants.mm(0) : end.thickness;
    boolean bolts = fastener.form() == FastenerForm.BOLT && !ownStuds;
    Quantity engagement;
    Quantity behind;
    if (bolts) {
      engagement =
          IN_HUB.linear(
              new double[] {1, -1, -1}, fastener.threadLength(), spacers, wheel.padThickness());
      behind = BEHIND.linear(1, hub.holeDepth(), -1, engagement);
    } else {
      Quantity beyond =
          BEYOND_SEAT.linear(new double[] {1, -1, -1}, stud, spacers, wheel.padThickness());
      engagement = shorter(beyond, fastener.threadLength());
      behind = BEHIND.linear(1, fastener.depth(), -1, beyond);
    }
    ThreadSize thread = fastener.thread();
    Quantity ratio =
        RATIO_OF.of(
            RATIO,
            engagement.isKnown() ? engagement.value() / thread.diameterMillimeters() : 0,
            new double[] {1 / thread.diameterMillimeters()},
            engagement);
    Quantity turns =
        TURNS.of(
            RATIO,
            engagement.isKnown() ? engagement.value() / thread.pitchMillimeters() : 0,
            new double[] {1 / thread.pitchMillimeters()},
            engagement);
    Quantity hole = HOLE.linear(1, wheel.holeDiameter(), -1, fastener.outsideDiameter());
    derivation.facts.add(
        new Fastening(
            Subject.of(position, fastener.lock() ? "lock" : "fastener"),
            standing,
            List.of(fastener.number(), wheel.number()),
            fastener.number(),
            bolts,
            thread.toString(),
            words(onThread),
            agree(thread, onThread),
            words(fastener.seat()),
            words(wheel.seat()),
            agree(fastener.seat(), wheel.seat()),
            engagement,
            ratio,
            turns,
            bolts || fastener.closed(),
            behind,
            hole));
    if (ownStuds && !fastener.lock()) {
      Quantity proud =
          PROUD.linear(
              1, replaced == null ? hub.studLength() : replaced.length(), -1, end.thickness);
      if (!proud.isKnown() || proud.value() + proud.expanded() > 0) {
        derivation.facts.add(
            new StudPocket(
                Subject.of(position, "spacer"),
                standing,
                List.of(outer.number(), wheel.number()),
                outer.number(),
                proud,
                wheel.pocketDepth(),
                POCKET.linear(1, wheel.pocketDepth(), -1, proud)));
      }
    }
  }

  private static Quantity shorter(Quantity a, Quantity b) {
    boolean first = !a.isKnown() || (b.isKnown() && a.value() <= b.value());
    if (!b.isKnown() || !a.isKnown()) {
      return SHORTER.linear(1, a, 0, b);
    }
    return first ? SHORTER.linear(1, a, 0, b) : SHORTER.linear(0, a, 1, b);
  }

  private static Decision agree(@Nullable Object mine, @Nullable Object theirs) {
    return mine == null || theirs == null ? Decision.ABSENT : Decision.of(mine.equals(theirs));
  }

  private static String words(@Nullable Object token) {
    return token instanceof SeatForm seat
        ? seat.toString()
        : token == null ? "unknown" : token.toString();
  }

  private void stack(Position position, WheelEnd end, Standing standing) {
    if (end.spacers.isEmpty()) {
      return;
    }
    long adapters =
        end.spacers.stream()
            .filter(s -> s.outerPattern() != null && !s.outerPattern().matches(s.boltPattern()))
            .count();
    derivation.facts.add(
        new SpacerStack(
            Subject.of(position, "spacer"),
            standing,
            end.spacers.stream().map(WheelSpacer::number).toList(),
            Constants.number(end.spacers.size()),
            Constants.number((double) adapters),
            end.thickness,
            nutsMissing(position, end)));
  }

  /**
   * A bolt-on spacer takes nuts on the hub's studs, beside those that hold the wheel to the spacer.
   */
  private boolean nutsMissing(Position position, WheelEnd end) {
    boolean ordered =
        build.lines().stream()
            .anyMatch(l -> l.part() instanceof Fastener && l.at().contains(position));
    return !ordered
        && end.spacers.stream().anyMatch(s -> s.form() == SpacerForm.BOLT_ON && !s.nutsIncluded());
  }

  private void brake(
      Position position, AxleProfile.Brake brake, WheelEnd end, Wheel wheel, Standing standing) {
    derivation.facts.add(
        new BrakeRoom(
            Subject.of(position, "brake"),
            standing,
            List.of(wheel.number()),
            wheel.number(),
            BARREL.linear(1, wheel.barrelRadius(), -1, brake.caliperRadius()),
            SPOKE.linear(
                new double[] {1, 1, -1}, wheel.spokeRoom(), end.thickness, brake.caliperFace()),
            CAP.linear(1, wheel.bore(), -1, brake.capDiameter())));
  }
}
