package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.analysis.differentiation.Gradient;
import org.jspecify.annotations.Nullable;
import trammel.build.Equipment;
import trammel.catalog.BeamLocation.Panhard;
import trammel.catalog.Catalog;
import trammel.catalog.Listing;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart;
import trammel.catalog.SuspensionPart.PanhardBracket;
import trammel.fact.AxleShift;
import trammel.geometry.PanhardBar.Sweep;
import trammel.quantity.Absence;
import trammel.quantity.Decision;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;

/**
 * Where a panhard bar holds its axle as found and as proposed, and where other brackets and bars
 * would.
 *
 * @param found as the vehicle stands today
 * @param proposed with the changes
 * @param bracket number of the bracket as proposed; empty where there is none
 * @param hole that the bar is in as proposed; empty where there is no bracket
 * @param holeNamed whether the sheet names that hole; otherwise the best one is taken
 * @param brackets the sheet's, then the catalog's
 * @param recenters length of a bar that would bring the axle back to where it was surveyed
 * @param change of the surveyed bar's length that this takes, whichever way
 * @param shorter whether that bar would be shorter
 * @param bars adjustable bars, the sheet's and the catalog's
 */
public record BarMap(
    State found,
    State proposed,
    String bracket,
    String hole,
    boolean holeNamed,
    List<Bracket> brackets,
    Quantity recenters,
    Quantity change,
    boolean shorter,
    List<Adjustable> bars) {

  /**
   * The bar in one state. Lengths in mm, angles in degrees.
   *
   * @param shift of the axle from where it was surveyed, whichever way
   * @param toward the side of that: {@code left} or {@code right}; empty where not known
   * @param slope against level in front view, whichever end is higher
   * @param higher the end that is higher: {@code frame end} or {@code axle end}; empty where not
   *     known
   * @param left how far the axle goes to the left of where it rests, from full droop to bump
   * @param right the same to the right
   * @param rollCenter height over the ground
   * @param rooms what is left to what the bar may meet over the travel
   */
  public record State(
      Quantity shift,
      String toward,
      Quantity slope,
      String higher,
      Quantity left,
      Quantity right,
      Quantity rollCenter,
      List<Room> rooms) {

    private static State unknown(Quantity length, Quantity angle) {
      return new State(length, "", angle, "", length, length, length, List.of());
    }

    /** Whether anybody has measured the bar. */
    public boolean isKnown() {
      return slope.isKnown();
    }
  }

  /**
   * What the bar leaves to one thing.
   *
   * @param gap in the pose that decides
   * @param pose that pose, in words; empty where it is not known
   */
  public record Room(String obstacle, Quantity gap, String pose) {}

  /**
   * A bracket that moves one end of the bar.
   *
   * @param fitted whether the sheet has it
   * @param end the end it moves: {@code frame} or {@code axle}
   * @param without the bar at the proposed height in its old place
   * @param best the hole that leaves the axle nearest to where it was surveyed
   * @param next the hole that comes nearest to that; empty where there is one hole only
   * @param ahead how much more the next one leaves; exactly 0 where there is none
   * @param gained how much more the old place leaves than the best hole; negative: less
   */
  public record Bracket(
      String number,
      String name,
      boolean fitted,
      String end,
      State without,
      List<Hole> holes,
      Hole best,
      String next,
      Quantity ahead,
      Quantity gained) {}

  /**
   * One hole of a bracket.
   *
   * @param rise of that end of the bar (mm)
   */
  public record Hole(String name, Quantity rise, State state) {}

  /**
   * A bar of a length that can be set.
   *
   * @param fitted whether the sheet has it
   * @param reaches whether its thread reaches the length that centers the axle
   */
  public record Adjustable(
      String number, String name, boolean fitted, Quantity from, Quantity to, Decision reaches) {}

  private static final Formula SWEPT =
      new Formula(
          "sideways movement over travel",
          "farthest √(L² − h² − a²) − at rest, from droop to bump",
          "PanhardBar: constant length, its level pose included");
  private static final Formula ROLL_CENTER =
      new Formula(
          "roll center height",
          "bar's height at the center plane + tire lift",
          "PanhardBar: common practice");
  private static final Formula TIRE_LIFT =
      new Formula("tire lift", "new − old tire radius", "definition");
  private static final Formula LONGER =
      new Formula("longer than the bar surveyed", "√(b² + h² + a²) − L", "PanhardBar");
  private static final Formula GAINED =
      new Formula("shift gained by the bracket", "without it − best hole's", "definition");
  private static final Absence NO_TRAVEL =
      new Absence(
          "bump and droop travel of the axle",
          "nobody has measured them",
          Instrument.TAPE,
          "tape: stop to its seat at rest, and rest to hanging");
  private static final Absence OUT_OF_TRAVEL =
      new Absence(
          "panhard bar over travel",
          "it does not reach, or the height lies outside the travel",
          Instrument.READ,
          "raise it less");
  private static final Absence WHICH_HOLE =
      new Absence(
          "hole that the panhard bar is in today",
          "the sheet has a bracket as found and does not say which of its holes is used",
          Instrument.READ,
          "look which hole the bar is bolted to");

  /** The bar of an axle; empty ends are said in its states. */
  static BarMap of(
      Derivation derivation, Catalog catalog, Axle axle, @Nullable Panhard panhard, AxleRide ride) {
    if (panhard == null) {
      AxleShift unmeasured = new BarFacts(derivation).unmeasured(axle);
      return unknown(unmeasured.shift(), unmeasured.slope());
    }
    Survey survey = new Survey(derivation, axle, panhard, ride);
    Quantity missing = survey.sheet.missing();
    if (missing != null) {
      Absence why = Variables.absence(missing);
      return unknown(Quantity.absent(LENGTH, why), Quantity.absent(ANGLE, why));
    }
    FittedBar.Fitting chosen = survey.sheet.chosen();
    PanhardBracket fitted = FittedBar.Fitted.proposed(derivation.build, axle).bracket();
    Quantity recenters = survey.sheet.recenters(chosen);
    Gradient longer =
        survey
            .sheet
            .bar()
            .lengthThatRecenters(chosen.lift(), chosen.change())
            .subtract(survey.sheet.bar().length());
    return new BarMap(
        survey.found(),
        survey.state(survey.sheet, chosen),
        fitted == null ? "" : fitted.number(),
        chosen.name(),
        fitted != null && derivation.build.hole(fitted).isPresent(),
        survey.brackets(catalog, fitted),
        recenters,
        AxleFacts.eitherWay(survey.sheet.variables().quantity(LONGER, LENGTH, longer)),
        longer.getValue() < 0,
        survey.bars(catalog, recenters));
  }

  /** By how much the changes' tires raise an axle (mm). */
  static Quantity tireLift(Derivation derivation, Axle axle) {
    Position left = Position.of(axle, Side.LEFT);
    return derivation.build.changes(left, PartKind.TIRE)
        ? TIRE_LIFT.linear(1, derivation.after(left).radius, -1, derivation.before(left).radius)
        : Quantity.exact(LENGTH, 0);
  }

  private static BarMap unknown(Quantity length, Quantity angle) {
    State unknown = State.unknown(length, angle);
    return new BarMap(unknown, unknown, "", "", false, List.of(), length, length, false, List.of());
  }

  /** A surveyed bar on its axle. */
  private record Survey(
      Derivation derivation, Axle axle, Panhard panhard, AxleRide ride, FittedBar sheet) {

    Survey(Derivation derivation, Axle axle, Panhard panhard, AxleRide ride) {
      this(
          derivation,
          axle,
          panhard,
          ride,
          fitted(
              derivation, axle, panhard, ride, FittedBar.Fitted.proposed(derivation.build, axle)));
    }

    private static FittedBar fitted(
        Derivation derivation, Axle axle, Panhard panhard, AxleRide ride, FittedBar.Fitted fitted) {
      return new FittedBar(derivation, axle, panhard, ride, fitted, true);
    }

    /** The vehicle as it stands: a bracket that it has already leaves open which hole is used. */
    State found() {
      Equipment before = derivation.build.before(Position.of(axle, Side.LEFT));
      if (before.all(PartKind.PANHARD_BRACKET).isEmpty()) {
        return state(sheet, sheet.found(), Quantity.exact(LENGTH, 0));
      }
      Quantity length = Quantity.absent(LENGTH, WHICH_HOLE);
      Quantity angle = Quantity.absent(ANGLE, WHICH_HOLE);
      return State.unknown(length, angle);
    }

    State state(FittedBar bar, FittedBar.Fitting fitting) {
      return state(bar, fitting, tireLift(derivation, axle));
    }

    private static State state(FittedBar bar, FittedBar.Fitting fitting, Quantity tireLift) {
      Variables variables = bar.variables();
      Optional<Gradient> angle = bar.bar().angle(fitting.lift(), fitting.change());
      Optional<Sweep<Gradient>> sweep = sweep(bar, fitting);
      Absence why = bar.bumpLeft(fitting).isEmpty() ? NO_TRAVEL : OUT_OF_TRAVEL;
      return new State(
          BeamMap.settled(bar.shift(fitting)),
          fitting.toward(),
          bar.slope(fitting),
          angle.map(degrees -> degrees.getValue() < 0 ? "axle end" : "frame end").orElse(""),
          length(variables, sweep.map(Sweep::left), why),
          length(variables, sweep.map(swept -> swept.right().negate()), why),
          bar.bar()
              .rollCenterHeight(fitting.lift(), fitting.change())
              .map(height -> variables.quantity(ROLL_CENTER, LENGTH, height))
              .map(height -> ROLL_CENTER.linear(1, height, 1, tireLift))
              .orElseGet(() -> Quantity.absent(LENGTH, OUT_OF_TRAVEL)),
          bar.rooms(fitting).stream()
              .map(room -> new Room(room.obstacle(), room.gap(), room.pose()))
              .toList());
    }

    private static Quantity length(Variables variables, Optional<Gradient> length, Absence why) {
      return length
          .map(moved -> variables.quantity(SWEPT, LENGTH, moved))
          .orElseGet(() -> Quantity.absent(LENGTH, why));
    }

    private static Optional<Sweep<Gradient>> sweep(FittedBar bar, FittedBar.Fitting fitting) {
      Optional<Gradient> bump = bar.bumpLeft(fitting).filter(left -> left.getValue() >= 0);
      Optional<Gradient> droop = bar.droopLeft(fitting).filter(left -> left.getValue() >= 0);
      return bump.isEmpty() || droop.isEmpty()
          ? Optional.empty()
          : bar.bar().sweep(fitting.lift(), bump.get(), droop.get(), fitting.change());
    }

    /** The sheet's bracket, then those of the catalog where the axle does not stand as surveyed. */
    List<Bracket> brackets(Catalog catalog, @Nullable PanhardBracket onSheet) {
      boolean moved = ride.proposed().value() != 0;
      return Stream.concat(
              Stream.ofNullable(onSheet),
              catalog.parts(PanhardBracket.class).stream()
                  .filter(part -> moved && suits(part))
                  .filter(part -> onSheet == null || !part.number().equals(onSheet.number())))
          .filter(part -> !part.holes().isEmpty())
          .filter(part -> part.holes().stream().allMatch(hole -> hole.rise().isKnown()))
          .map(part -> bracket(part, part.equals(onSheet)))
          .toList();
    }

    private boolean suits(Part part) {
      Listing listing = part.listing();
      boolean axleSuits = listing.axle() == null || listing.axle() == axle;
      return axleSuits && listing.vehicles().contains(derivation.build.vehicle().vehicle());
    }

    private Bracket bracket(PanhardBracket part, boolean fitted) {
      SuspensionPart.PanhardBar newBar = FittedBar.Fitted.proposed(derivation.build, axle).bar();
      FittedBar bar = fitted(derivation, axle, panhard, ride, new FittedBar.Fitted(part, newBar));
      FittedBar bare = fitted(derivation, axle, panhard, ride, new FittedBar.Fitted(null, newBar));
      FittedBar.Fitting best = bar.best();
      Optional<FittedBar.Fitting> next =
          bar.fittings().stream()
              .filter(fitting -> !fitting.name().equals(best.name()))
              .min(FittedBar.NEAREST_FIRST);
      List<Hole> holes =
          bar.fittings().stream()
              .map(fitting -> new Hole(fitting.name(), rise(part, fitting), state(bar, fitting)))
              .toList();
      return new Bracket(
          part.number(),
          part.listing().name(),
          fitted,
          part.end() == PanhardBracket.BarEnd.AXLE ? "axle" : "frame",
          state(bare, bare.best()),
          holes,
          holes.stream().filter(hole -> hole.name().equals(best.name())).findFirst().orElseThrow(),
          next.map(FittedBar.Fitting::name).orElse(""),
          next.map(fitting -> bar.lost(fitting, best)).orElseGet(() -> Quantity.exact(LENGTH, 0)),
          GAINED.linear(1, bare.shift(bare.best()), -1, bar.shift(best)));
    }

    private static Quantity rise(PanhardBracket part, FittedBar.Fitting fitting) {
      return part.holes().stream()
          .filter(hole -> hole.name().equals(fitting.name()))
          .findFirst()
          .orElseThrow()
          .rise();
    }

    /** Bars whose length can be set: the sheet's, else the catalog's for this axle. */
    List<Adjustable> bars(Catalog catalog, Quantity recenters) {
      SuspensionPart.PanhardBar onSheet = FittedBar.Fitted.proposed(derivation.build, axle).bar();
      return Stream.concat(
              Stream.ofNullable(onSheet),
              catalog.parts(SuspensionPart.PanhardBar.class).stream()
                  .filter(this::suits)
                  .filter(part -> onSheet == null || !part.number().equals(onSheet.number())))
          .filter(Survey::adjustable)
          .map(
              part ->
                  new Adjustable(
                      part.number(),
                      part.listing().name(),
                      part.equals(onSheet),
                      part.lengthFrom(),
                      part.lengthTo(),
                      recenters
                          .atLeast(part.lengthFrom())
                          .decision()
                          .and(recenters.atMost(part.lengthTo()).decision())))
          .toList();
    }

    private static boolean adjustable(SuspensionPart.PanhardBar bar) {
      return bar.lengthFrom().isKnown()
          && bar.lengthTo().isKnown()
          && bar.lengthFrom().value() < bar.lengthTo().value();
    }
  }
}
