package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.AxleProfile;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.Support;
import trammel.catalog.Support.DroopLimit;
import trammel.catalog.SuspensionPart.BumpStop;
import trammel.catalog.SuspensionPart.Damper;
import trammel.catalog.SuspensionPart.DamperBracket;
import trammel.catalog.SuspensionPart.DroopStrap;
import trammel.catalog.SuspensionPart.StrutTopSpacer;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Position;

/**
 * Where one wheel's way ends, up and down, with what is fitted at its corner. All of it is the
 * wheel's travel (mm) from where it stands at book height under the body: {@code rise} counts up,
 * {@code hang} counts down. Springs and what lies in their seats move none of these ends; they move
 * only where the wheel stands between them.
 */
final class CornerTravel {
  private static final Formula MOVE =
      new Formula("what the damper moves", "motion ratio · wheel travel", "definition");
  private static final Formula LENGTH_AT =
      new Formula(
          "length of the damper",
          "length at book height − bracket and plate − motion ratio · rise",
          "own derivation: a bracket or a plate above a strut brings its ends together by as much");
  private static final Formula FARTHER =
      new Formula(
          "hang more than the book's",
          "(difference of open lengths + bracket + plate) / motion ratio",
          "own derivation");
  private static final Formula DAMPER_HANG =
      new Formula(
          "hang at the open damper",
          "(open length − length at book height + bracket + plate) / motion ratio",
          "shared/reference/geometry.md, section 6");
  private static final Formula HANG =
      new Formula("hang", "the book's + what the fitted parts add", "definition");
  private static final Formula DAMPER_RISE =
      new Formula(
          "rise at the closed damper",
          "(length at book height − bracket and plate − closed length) / motion ratio",
          "own derivation");
  private static final Formula NUMERATOR =
      new Formula("damper's length", "sum of lengths", "definition");
  private static final Formula TALLER =
      new Formula(
          "what a taller stop takes",
          "(height − the book stop's) / motion ratio of the stop",
          "own derivation");
  private static final Formula STOP_MET =
      new Formula(
          "rise at the bump stop",
          "the book's bump travel − what a taller stop takes",
          "definition");
  private static final Formula STOP_FLAT =
      new Formula("rise at the crushed stop", "rise at the stop + its crush", "definition");
  private static final Formula BY_PLATE =
      new Formula("hang by plates", "thickness / motion ratio", "own derivation");
  private static final Formula RISE = new Formula("rise", "− hang", "definition");

  private static final Quantity NONE = Constants.mm(0).called("none fitted");
  private static final Quantity AT_THE_WHEEL =
      Constants.number(1).called("motion ratio of a stop on the axle");

  private final AxleProfile axle;
  private final Support support;
  private final Equipment book;
  private final Equipment equipment;
  private final Once<Optional<CornerCoil>> coil;
  private final Once<Droop> droop = new Once<>(this::firstEnd);
  private final Once<Quantity> damperHang = new Once<>(this::hangByDamper);
  private final Once<Quantity> damperRise = new Once<>(this::riseToDamper);
  private final Once<Quantity> stopRise = new Once<>(this::riseToStop);
  private final Once<Quantity> flatRise = new Once<>(this::riseToFlatStop);

  /** With what is fitted at a wheel in a state. */
  CornerTravel(Build build, Position position, Stage stage) {
    this.axle = build.vehicle().axle(position.axle().orElseThrow());
    this.support = axle.support();
    this.book = build.bookAt(position);
    this.equipment = stage.equipment(build, position);
    double thicker = stage == Stage.PROPOSED ? build.trial().springSpacer() : 0;
    this.coil = new Once<>(() -> CornerCoil.of(this, thicker));
  }

  AxleProfile axle() {
    return axle;
  }

  Equipment equipment() {
    return equipment;
  }

  /** Whether the damper is what the maker lets the wheel hang on, with no strap before it. */
  boolean hungByTheDamper() {
    return support.droopLimit() == DroopLimit.DAMPER && strap().isEmpty();
  }

  /** The coil; none where leaves, torsion bars or air carry the corner, or none is named. */
  Optional<CornerCoil> coil() {
    return coil.get();
  }

  Optional<Damper> damper() {
    return equipment.one(PartKind.DAMPER, Damper.class);
  }

  /** How far a bracket and plates bring a damper's ends together, more than the book's do. */
  Quantity mountsMoved() {
    return minus(moved(equipment), moved(book), "bracket and plate");
  }

  /** How far plates above the strut let its top down, more than the book's do. */
  Quantity platesAdded() {
    return minus(plates(equipment), plates(book), "plate");
  }

  private static Quantity moved(Equipment equipment) {
    Quantity bracket =
        equipment
            .one(PartKind.DAMPER_BRACKET, DamperBracket.class)
            .map(DamperBracket::shift)
            .orElse(NONE);
    return plus(bracket, plates(equipment), "bracket and plate");
  }

  private static Quantity plates(Equipment equipment) {
    Quantity sum = NONE;
    for (StrutTopSpacer plate : equipment.all(PartKind.STRUT_TOP_SPACER, StrutTopSpacer.class)) {
      sum = plus(sum, plate.thickness(), "plate");
    }
    return sum;
  }

  private static Quantity plus(Quantity one, Quantity other, String name) {
    return other == NONE
        ? one
        : one == NONE ? other : NUMERATOR.linear(1, one, 1, other).called(name);
  }

  private static Quantity minus(Quantity one, Quantity other, String name) {
    return other == NONE ? one : NUMERATOR.linear(1, one, -1, other).called(name);
  }

  /** How far the wheel hangs, and on what; a stop or strap of the vehicle stays where it is. */
  Droop droop() {
    return droop.get();
  }

  private Droop firstEnd() {
    DroopLimit limit = support.droopLimit();
    Optional<DroopStrap> strap = strap();
    boolean asBook =
        equipment.sameAs(book, PartKind.DAMPER)
            && equipment.sameAs(book, PartKind.DAMPER_BRACKET)
            && equipment.sameAs(book, PartKind.STRUT_TOP_SPACER);
    if (limit == null) {
      return new Droop(
          asBook && strap.isEmpty() ? axle.droopTravel() : nobodyHasLooked(), DroopEnd.UNKNOWN);
    }
    Droop byDamper = new Droop(damperHang(), DroopEnd.DAMPER);
    Droop held =
        limit == DroopLimit.DAMPER
            ? byDamper
            : new Droop(
                axle.droopTravel(), limit == DroopLimit.STOP ? DroopEnd.STOP : DroopEnd.STRAP);
    if (strap.isPresent()) {
      Droop byStrap = new Droop(strap.get().droop(), DroopEnd.STRAP);
      held = limit == DroopLimit.STRAP ? byStrap : byStrap.orSooner(held);
    }
    return strap.isEmpty() && (asBook || (limit != DroopLimit.DAMPER && reachesFarther()))
        ? held
        : held.orSooner(byDamper);
  }

  /**
   * Whether the damper reaches at least as far down as the book's, which is known to reach the
   * book's stop or strap: it is the same, and what is fitted at its ends brings them together.
   */
  private boolean reachesFarther() {
    Quantity moved = mountsMoved();
    return equipment.sameAs(book, PartKind.DAMPER) && moved.isKnown() && moved.value() >= 0;
  }

  /**
   * How far the wheel hangs at the most. Plates above a strut let it down only where the damper
   * ends its way. Where nobody has looked what ends it, they are taken to, by all that they are
   * thick: the worst that they can do; a strap still holds it.
   */
  Quantity farthestHang() {
    if (support.droopLimit() != null) {
      return droop().hang();
    }
    Quantity byPlates =
        HANG.linear(
            1,
            axle.droopTravel(),
            1,
            BY_PLATE.quotient(LENGTH, 1, platesAdded(), axle.springMotionRatio()));
    Droop farthest = new Droop(byPlates, DroopEnd.UNKNOWN);
    return strap()
        .map(strap -> new Droop(strap.droop(), DroopEnd.STRAP).orSooner(farthest))
        .orElse(farthest)
        .hang();
  }

  /** What would end the wheel's way down if the damper did not. */
  Droop stopOrStrap() {
    return strap().map(strap -> new Droop(strap.droop(), DroopEnd.STRAP)).orElseGet(this::ofMaker);
  }

  private Droop ofMaker() {
    return support.droopLimit() == null
        ? new Droop(nobodyHasLooked(), DroopEnd.UNKNOWN)
        : new Droop(
            axle.droopTravel(),
            support.droopLimit() == DroopLimit.STRAP ? DroopEnd.STRAP : DroopEnd.STOP);
  }

  private Optional<DroopStrap> strap() {
    return equipment.one(PartKind.DROOP_STRAP, DroopStrap.class);
  }

  private static Quantity nobodyHasLooked() {
    return Figures.missing(
        LENGTH,
        "droop with these parts",
        "nobody has looked what ends the wheel's way down",
        Instrument.READ,
        "let the wheel hang and look: damper, stop or strap");
  }

  /** How far the wheel hangs where the damper ends its way. */
  Quantity damperHang() {
    return damperHang.get();
  }

  private Quantity hangByDamper() {
    Quantity ratio = support.damper().motionRatio();
    if (support.droopLimit() != DroopLimit.DAMPER) {
      return DAMPER_HANG.quotient(
          LENGTH,
          1,
          NUMERATOR.linear(1, openLength(), -1, support.damper().length(), 1, mountsMoved()),
          ratio);
    }
    Quantity more = mountsMoved();
    if (!equipment.sameAs(book, PartKind.DAMPER)) {
      more = NUMERATOR.linear(1, openLength(), -1, open(book), 1, more);
    }
    return more == NONE
        ? axle.droopTravel()
        : HANG.linear(1, axle.droopTravel(), 1, FARTHER.quotient(LENGTH, 1, more, ratio));
  }

  private static Quantity open(Equipment equipment) {
    return equipment
        .one(PartKind.DAMPER, Damper.class)
        .map(Damper::openLength)
        .orElseGet(() -> unknownDamper("open length of the damper", "pulled out"));
  }

  private static Quantity unknownDamper(String what, String how) {
    return Figures.missing(
        LENGTH,
        what,
        "nobody says which damper is fitted",
        Instrument.TAPE,
        "measure the damper eye to eye, " + how);
  }

  Quantity openLength() {
    return open(equipment);
  }

  Quantity closedLength() {
    return damper()
        .map(Damper::closedLength)
        .orElseGet(() -> unknownDamper("closed length of the damper", "pushed in"));
  }

  /**
   * The damper's length with the wheel somewhere in its travel.
   *
   * @param rise of the wheel over book height; negative where it hangs
   */
  Quantity damperLength(Quantity rise) {
    Quantity move = MOVE.product(LENGTH, 1, support.damper().motionRatio(), rise);
    Quantity moved = mountsMoved();
    return moved == NONE
        ? LENGTH_AT.linear(1, support.damper().length(), -1, move)
        : LENGTH_AT.linear(1, support.damper().length(), -1, move, -1, moved);
  }

  /** How far the wheel rises until the damper is closed. */
  Quantity damperRise() {
    return damperRise.get();
  }

  private Quantity riseToDamper() {
    return DAMPER_RISE.quotient(
        LENGTH,
        1,
        NUMERATOR.linear(1, support.damper().length(), -1, closedLength(), -1, mountsMoved()),
        support.damper().motionRatio());
  }

  /** How far the wheel rises until it meets its bump stop. */
  Quantity stopRise() {
    return stopRise.get();
  }

  private Quantity riseToStop() {
    if (equipment.sameAs(book, PartKind.BUMP_STOP)) {
      return axle.bumpTravel();
    }
    return STOP_MET.linear(
        1,
        axle.bumpTravel(),
        -1,
        TALLER.quotient(
            LENGTH, 1, NUMERATOR.linear(1, height(equipment), -1, height(book)), stopRatio()));
  }

  /** How far it rises until that stop is flat. */
  Quantity flatRise() {
    return flatRise.get();
  }

  private Quantity riseToFlatStop() {
    @Nullable BumpStop stop = stop(equipment);
    if (equipment.sameAs(book, PartKind.BUMP_STOP)
        || stop == null
        || !stop.flatHeight().isKnown()) {
      return STOP_FLAT.linear(1, stopRise(), 1, support.stopCrush());
    }
    Quantity crush = NUMERATOR.linear(1, stop.height(), -1, stop.flatHeight());
    return STOP_FLAT.linear(1, stopRise(), 1, TALLER.quotient(LENGTH, 1, crush, stopRatio()));
  }

  /**
   * A stop of a beam axle stands on the axle; one beside an arm about where the spring does. Common
   * practice, where the profile does not say.
   */
  Quantity stopRatio() {
    return axle.layout().beam() ? AT_THE_WHEEL : axle.springMotionRatio();
  }

  private static @Nullable BumpStop stop(Equipment equipment) {
    return equipment.one(PartKind.BUMP_STOP, BumpStop.class).orElse(null);
  }

  private static Quantity height(Equipment equipment) {
    @Nullable BumpStop stop = stop(equipment);
    return stop != null
        ? stop.height()
        : Figures.missing(
            LENGTH,
            "height of the bump stop",
            "nobody says which bump stop is fitted",
            Instrument.TAPE,
            "measure the stop from its seat to its tip");
  }

  /** A hang told as a rise: its negative. */
  static Quantity rise(Quantity hang) {
    return RISE.linear(-1, hang).called(hang.name());
  }

  /** The parts that decide where this wheel's way ends, by number. */
  List<String> numbers(PartKind... kinds) {
    return Arrays.stream(kinds)
        .flatMap(kind -> equipment.all(kind).stream().map(Part::number))
        .distinct()
        .toList();
  }
}
