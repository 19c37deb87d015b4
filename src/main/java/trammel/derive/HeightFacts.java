package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.build.Build;
import trammel.build.BuildSheet.FenderHeight;
import trammel.build.BuildSheet.State;
import trammel.build.Equipment;
import trammel.build.Trial;
import trammel.catalog.AxleProfile;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.BodyLiftKit;
import trammel.derive.HeightLedger.Line;
import trammel.fact.Fact;
import trammel.fact.RideHeight;
import trammel.fact.Standing;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Subject;

/**
 * How high each corner stands. As found: as measured, else as the book's balance predicts for what
 * is fitted and what the axle weighs. What measured and predicted differ by is the unexplained
 * rest: sag, another spring, a load nobody has named. It stays as long as the springs stay, and
 * goes with them: new springs stand where the balance puts them.
 *
 * <p>Where a sensor fixes the height, spacers and springs move load between spring and fluid and
 * lift nothing.
 */
final class HeightFacts {
  private static final Formula BY_SPACER =
      new Formula(
          "lift of a spacer",
          "thickness / motion ratio",
          "own derivation: load and deflection of the spring stay as they were");
  private static final Formula LEDGER =
      new Formula("suspension lift", "sum of what the parts add", "definition");
  private static final Formula PREDICTED =
      new Formula("height predicted", "book height + what raises it since", "definition");
  private static final Formula REST =
      new Formula("unexplained rest", "measured − predicted height", "definition");
  private static final Formula RID =
      new Formula("rest that goes with the old springs", "−unexplained rest", "definition");
  private static final Formula AFTER =
      new Formula(
          "height as proposed", "height as found + suspension lift + body lift", "definition");
  private static final Formula TIRE_LIFT =
      new Formula(
          "tire lift",
          "new − old tire radius",
          "definition; loaded radius moves alike within the tires' own tolerance");
  private static final Formula BODY = new Formula("body lift", "new − old blocks", "definition");

  private final Derivation derivation;
  private final Build build;
  private final PassiveLedger ledger;

  /** Hub to fender as found; of two at one wheel the first counts. */
  private final Map<Position, Quantity> measured = new EnumMap<>(Position.class);

  private final Memo<Position, List<Line>> lines = new Memo<>();
  private final Memo<Position, List<Line>> linesSinceBook = new Memo<>();
  private final Memo<Position, Quantity> lifts = new Memo<>();
  private final Memo<Position, Quantity> predictions = new Memo<>();

  HeightFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.ledger = new PassiveLedger(derivation);
    for (FenderHeight height : build.measurements().heights()) {
      if (height.state() == State.AS_FOUND) {
        measured.putIfAbsent(height.at(), height.height());
      }
    }
  }

  void add(List<Fact> facts) {
    for (Position position : Position.running()) {
      Quantity lift = lift(position);
      Quantity bodyLift = bodyLift(position);
      Quantity before = found(position);
      facts.add(
          new RideHeight(
              Subject.of(position),
              Standing.ofChange(touched(position)),
              List.of(),
              lift,
              bodyLift,
              tireLift(position),
              before,
              proposed(position),
              aimed(position)));
    }
  }

  private boolean touched(Position position) {
    return build.raised().containsKey(position)
        || !build.trial().equals(Trial.NONE)
        || derivation.loads().changed()
        || build.changes(
            position,
            PartKind.SPRING,
            PartKind.SPRING_SPACER,
            PartKind.STRUT_TOP_SPACER,
            PartKind.HEIGHT_SENSOR_LINK,
            PartKind.AIR_SPRING,
            PartKind.BODY_LIFT_KIT);
  }

  Quantity tireLift(Position position) {
    return TIRE_LIFT.linear(
        1, derivation.after(position).radius, -1, derivation.before(position).radius);
  }

  Quantity aimed(Position position) {
    return position.axle().orElseThrow() == Axle.FRONT
        ? build.aims().lift().front()
        : build.aims().lift().rear();
  }

  /**
   * What the changes add between axle and body or frame at a corner, springs, spacers and load
   * together.
   */
  Quantity lift(Position position) {
    return lifts.get(like(position), which -> sum(lines(which), "suspension lift"));
  }

  /** What the changes add at a corner, line by line. */
  List<Line> lines(Position position) {
    return lines.get(like(position), this::workedOut);
  }

  private List<Line> workedOut(Position position) {
    AxleProfile axle = axle(position);
    List<Line> lines = new ArrayList<>();
    Quantity raised = build.raised().get(position);
    if (raised != null) {
      lines.add(
          new Line(axle.heightControlled() ? "set higher" : "torsion bars set higher", raised));
    }
    if (axle.heightControlled()) {
      SensorLink.of(build, position)
          .filter(link -> raised == null && link.changed())
          .ifPresent(link -> lines.add(new Line("height sensor link", link.lift())));
    } else {
      lines.addAll(ledger.lines(position, Stage.FOUND, Stage.PROPOSED));
      boolean newSprings =
          build.changes(position, PartKind.SPRING)
              && !build.after(position).all(PartKind.SPRING).isEmpty();
      measured(position)
          .filter(measured -> newSprings)
          .ifPresent(
              measured ->
                  lines.add(
                      new Line(
                          "rest that goes with the old springs", RID.linear(-1, rest(position)))));
    }
    trial(position, axle, lines);
    return List.copyOf(lines);
  }

  private void trial(Position position, AxleProfile axle, List<Line> lines) {
    boolean front = position.axle().orElseThrow() == Axle.FRONT;
    double tried = front ? build.trial().frontLift() : build.trial().rearLift();
    double thicker = thicker(position);
    if (thicker != 0 && !axle.heightControlled()) {
      lines.add(
          new Line(
              "thicker spacers, tried",
              BY_SPACER.quotient(LENGTH, 1, Constants.mm(thicker), axle.springMotionRatio())));
    }
    if (tried != 0) {
      lines.add(new Line("lift, tried", Constants.mm(tried)));
    }
  }

  /** How much thicker the spring spacers of a wheel are tried (mm). */
  double thicker(Position position) {
    boolean spacers = !build.after(position).all(PartKind.SPRING_SPACER).isEmpty();
    return spacers ? build.trial().springSpacer() : 0;
  }

  private static Quantity sum(List<Line> lines, String name) {
    if (lines.isEmpty()) {
      return Constants.mm(0).called(name);
    }
    if (lines.size() == 1) {
      return lines.get(0).lift().called(name);
    }
    return LEDGER.sum(lines.stream().map(Line::lift).toList()).called(name);
  }

  /** Hub to fender today: as measured, else as predicted. */
  Quantity found(Position position) {
    return measured(position).orElseGet(() -> predicted(position));
  }

  /** Hub to fender as somebody has measured it. */
  Optional<Quantity> measured(Position position) {
    return Optional.ofNullable(measured.get(position));
  }

  /** Hub to fender today by the book, for what is fitted and what the axle carries. */
  Quantity predicted(Position position) {
    return predictions.get(like(position), this::byBook);
  }

  private Quantity byBook(Position position) {
    AxleProfile axle = axle(position);
    Quantity since = sinceBook(position);
    return since.isKnown() && since.value() == 0 && since.expanded() == 0
        ? axle.fenderHeight()
        : PREDICTED.linear(1, axle.fenderHeight(), 1, since);
  }

  /** What raises a corner as found over its book height, by the balance. */
  Quantity sinceBook(Position position) {
    List<Line> lines = new ArrayList<>(linesSinceBook(position));
    if (otherBlocks(position)) {
      lines.add(new Line("blocks of the body", blocksSinceBook(position)));
    }
    return sum(lines, "raised since book");
  }

  /** The part of it between axle and frame, which moves the wheel in its suspension. */
  Quantity suspensionSinceBook(Position position) {
    return sum(linesSinceBook(position), "raised since book, suspension alone");
  }

  private List<Line> linesSinceBook(Position position) {
    return linesSinceBook.get(
        like(position),
        which ->
            axle(which).heightControlled()
                ? List.of()
                : ledger.lines(which, Stage.BOOK, Stage.FOUND));
  }

  /** What blocks that are fitted already add between frame and body. */
  Quantity blocksSinceBook(Position position) {
    return otherBlocks(position)
        ? BODY.linear(1, blocks(build.before(position)), -1, blocks(build.bookAt(position)))
        : NO_BLOCKS;
  }

  private boolean otherBlocks(Position position) {
    return !build.before(position).sameAs(build.bookAt(position), PartKind.BODY_LIFT_KIT);
  }

  /** What measured and predicted height differ by; absent where nobody has measured. */
  Quantity rest(Position position) {
    return REST.linear(1, asMeasured(position), -1, predicted(position));
  }

  /** Hub to fender as somebody has measured it; absent where nobody has. */
  Quantity asMeasured(Position position) {
    return measured(position)
        .orElseGet(
            () ->
                Figures.missing(
                    LENGTH,
                    "height as found",
                    "nobody has measured it",
                    Instrument.FENDER,
                    "hub center to fender edge"));
  }

  /** Hub to fender with the changes. */
  Quantity proposed(Position position) {
    return AFTER.linear(1, found(position), 1, lift(position), 1, bodyLift(position));
  }

  PassiveLedger ledger() {
    return ledger;
  }

  private Position like(Position position) {
    return derivation.sides().like(position);
  }

  private AxleProfile axle(Position position) {
    return build.vehicle().axle(position.axle().orElseThrow());
  }

  /** What blocks between body and frame add at a corner. */
  Quantity bodyLift(Position position) {
    Quantity then = blocks(build.after(position));
    Quantity now = blocks(build.before(position));
    return !build.changes(position, PartKind.BODY_LIFT_KIT)
        ? Constants.mm(0).called("body lift")
        : BODY.linear(1, then, -1, now);
  }

  /** What blocks between body and frame add, whoever fitted them. */
  static Quantity blocks(Equipment equipment) {
    return equipment
        .one(PartKind.BODY_LIFT_KIT, BodyLiftKit.class)
        .map(BodyLiftKit::thickness)
        .orElse(NO_BLOCKS);
  }

  private static final Quantity NO_BLOCKS = Constants.mm(0).called("no blocks");
}
