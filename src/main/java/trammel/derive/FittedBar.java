package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.differentiation.Gradient;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.AxleProfile;
import trammel.catalog.BeamLocation.Panhard;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart;
import trammel.catalog.SuspensionPart.PanhardBracket;
import trammel.catalog.SuspensionPart.PanhardBracket.BarEnd;
import trammel.catalog.SuspensionPart.PanhardBracket.Hole;
import trammel.fact.AxleShift;
import trammel.fact.Standing;
import trammel.geometry.LinkChange;
import trammel.geometry.PanhardBar;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;
import trammel.subject.Subject;

/** One bar with what is fitted to it. */
final class FittedBar {
  private static final Formula SHIFT =
      new Formula(
          "sideways shift of the axle",
          "√(L² − h² − a²) before − after",
          "PanhardBar: constant length; shared/reference/panhard-shift.csv");
  private static final Formula SLOPE = new Formula("slope of the bar", "atan(h / b)", "PanhardBar");
  private static final Formula RECENTERS =
      new Formula("bar length that centers it", "√(b² + h² + a²)", "PanhardBar");
  private static final Formula LOST =
      new Formula("shift lost by the hole", "this hole's − best hole's", "definition");

  /** By how far the axle stands off where it was surveyed. */
  static final Comparator<Fitting> NEAREST_FIRST =
      Comparator.comparingDouble(fitting -> Math.abs(fitting.shift.getValue()));

  private final Build build;
  private final Derivation derivation;
  private final Axle axle;
  private final Panhard panhard;
  private final BarRooms rooms;
  private final Variables variables;
  private final int[] frameEnd;
  private final int[] axleEnd;
  private final int lift;
  private final int found;
  private final @Nullable PanhardBracket bracket;
  private final List<Integer> rises = new ArrayList<>();
  private final SuspensionPart.@Nullable PanhardBar newBar;
  private final int shortest;
  private final int longest;
  private final int bump;
  private final int droop;

  /**
   * What holds the axle sideways in place of what was surveyed.
   *
   * @param bracket that moves one end of the bar; null where neither is moved
   * @param bar another bar; null where it is the surveyed one
   */
  record Fitted(@Nullable PanhardBracket bracket, SuspensionPart.@Nullable PanhardBar bar) {

    /** What the sheet proposes. */
    static Fitted proposed(Build build, Axle axle) {
      Equipment after = build.after(Position.of(axle, Side.LEFT));
      return new Fitted(
          after.one(PartKind.PANHARD_BRACKET, PanhardBracket.class).orElse(null),
          build.changes(axle, PartKind.PANHARD_BAR)
              ? after.one(PartKind.PANHARD_BAR, SuspensionPart.PanhardBar.class).orElse(null)
              : null);
    }
  }

  FittedBar(Derivation derivation, Axle axle, Panhard panhard, AxleRide ride) {
    this(derivation, axle, panhard, ride, Fitted.proposed(derivation.build, axle), false);
  }

  /**
   * @param overTravel whether the axle's travel is asked for too
   */
  FittedBar(
      Derivation derivation,
      Axle axle,
      Panhard panhard,
      AxleRide ride,
      Fitted fitted,
      boolean overTravel) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.axle = axle;
    this.panhard = panhard;
    Variables.Collector collector = new Variables.Collector();
    frameEnd = collector.add(panhard.frameEnd(), "bar, frame end");
    axleEnd = collector.add(panhard.axleEnd(), "bar, axle end");
    lift = collector.add(ride.proposed());
    found = collector.add(ride.found());
    bracket = fitted.bracket();
    if (bracket != null) {
      bracket.holes().forEach(hole -> rises.add(collector.add(hole.rise())));
    }
    newBar = fitted.bar();
    shortest = newBar == null ? -1 : collector.add(newBar.lengthFrom());
    longest = newBar == null ? -1 : collector.add(newBar.lengthTo());
    AxleProfile profile = build.vehicle().axle(axle);
    boolean travel =
        overTravel && profile.bumpTravel().isKnown() && profile.droopTravel().isKnown();
    bump = travel ? collector.add(profile.bumpTravel()) : -1;
    droop = travel ? collector.add(profile.droopTravel()) : -1;
    variables = collector.all();
    rooms = new BarRooms(variables, profile);
  }

  /** What of it nobody has given; null where all is there. */
  @Nullable Quantity missing() {
    return variables.missing();
  }

  void add(BarFacts facts) {
    Quantity missing = variables.missing();
    if (missing != null) {
      derivation.facts.add(facts.unmeasured(axle));
      Quantity unknown = Quantity.absent(LENGTH, Variables.absence(missing));
      panhard.rooms().forEach(room -> add(facts, new BarRooms.Room(room.obstacle(), unknown, "")));
      return;
    }
    Fitting chosen = chosen();
    Fitting best = best();
    Quantity shift = shift(chosen);
    Quantity bestShift = shift(best);
    derivation.facts.add(
        new AxleShift(
            Subject.of(axle),
            Standing.WORSE_OR_NEW,
            facts.numbers(axle),
            shift,
            chosen.toward(),
            slope(chosen),
            slope(found()),
            chosen.name,
            best.name,
            bestShift,
            chosen.name.equals(best.name)
                ? Constants.mm(0).called("shift lost by the hole")
                : lost(chosen, best),
            recenters(chosen)));
    rooms(chosen).forEach(room -> add(facts, room));
  }

  private void add(BarFacts facts, BarRooms.Room room) {
    derivation.facts.add(
        new trammel.fact.BarRoom(
            Subject.of(axle, room.obstacle().replace(' ', '-')),
            Standing.WORSE_OR_NEW,
            facts.numbers(axle),
            room.obstacle(),
            room.gap(),
            room.pose()));
  }

  /** What its lengths and angles depend on. */
  Variables variables() {
    return variables;
  }

  /** How far the axle stands off where it was surveyed, whichever way (mm). */
  Quantity shift(Fitting fitting) {
    return length(SHIFT, fitting.shift);
  }

  /**
   * How far the axle stands from where it was surveyed (mm), positive to the left; empty where the
   * bar does not reach.
   */
  Optional<Quantity> toLeft(Fitting fitting) {
    return bar()
        .shift(fitting.lift, fitting.change)
        .map(shift -> variables.quantity(SHIFT, LENGTH, shift));
  }

  /**
   * The bar against level in front view (degrees), positive with its frame end higher; empty where
   * it does not reach.
   */
  Optional<Quantity> frameEndHigher(Fitting fitting) {
    return bar()
        .angle(fitting.lift, fitting.change)
        .map(angle -> variables.quantity(SLOPE, ANGLE, angle));
  }

  /** How much more one fitting leaves than another (mm). */
  Quantity lost(Fitting fitting, Fitting against) {
    return LOST.linear(1, shift(fitting), -1, shift(against));
  }

  /** The bar against level in front view, whichever end is higher (degrees). */
  Quantity slope(Fitting fitting) {
    return bar()
        .angle(fitting.lift, fitting.change)
        .map(angle -> angle.getValue() < 0 ? angle.negate() : angle)
        .map(angle -> variables.quantity(SLOPE, ANGLE, angle))
        .orElseGet(() -> Constants.degrees(90));
  }

  /** Length of a bar that leaves the axle where it was surveyed (mm). */
  Quantity recenters(Fitting fitting) {
    return variables.quantity(
        RECENTERS, LENGTH, bar().lengthThatRecenters(fitting.lift, fitting.change));
  }

  /** How far the axle may still rise (mm); empty where its travel was not asked for or given. */
  Optional<Gradient> bumpLeft(Fitting fitting) {
    return bump < 0 ? Optional.empty() : Optional.of(variables.variable(bump).add(fitting.lift));
  }

  /** How far the axle may still drop (mm); empty where its travel was not asked for or given. */
  Optional<Gradient> droopLeft(Fitting fitting) {
    return droop < 0
        ? Optional.empty()
        : Optional.of(variables.variable(droop).subtract(fitting.lift));
  }

  /** What the bar leaves to what is near it over the travel. */
  List<BarRooms.Room> rooms(Fitting fitting) {
    return panhard.rooms().stream()
        .flatMap(room -> rooms.of(room, bar(), fitting.change).stream())
        .toList();
  }

  /** The bar as it was surveyed. */
  PanhardBar<Gradient> bar() {
    return new PanhardBar<>(
        variables.left(frameEnd, panhard.frameEnd()), variables.left(axleEnd, panhard.axleEnd()));
  }

  /** What is changed on the bar as proposed. */
  LinkChange<Gradient> proposed() {
    return chosen().change;
  }

  private Quantity length(Formula formula, Gradient signed) {
    return variables.quantity(formula, LENGTH, signed.getValue() < 0 ? signed.negate() : signed);
  }

  /**
   * One way the bar may be fitted: the hole it is in and what that makes of it.
   *
   * @param name of the hole; empty where there is no choice
   * @param lift of the frame over the axle
   * @param shift of the axle, positive to the left
   */
  record Fitting(String name, Gradient lift, LinkChange<Gradient> change, Gradient shift) {

    /** Which side the axle stands off to. */
    String toward() {
      return shift.getValue() >= 0 ? "left" : "right";
    }
  }

  /** The bar as surveyed, at the height as found. */
  Fitting found() {
    return at("", variables.variable(found), LinkChange.none(variables.constant(0).getField()));
  }

  /** Every way it may be fitted at the proposed height: one for each hole of the bracket. */
  List<Fitting> fittings() {
    List<Fitting> fittings = new ArrayList<>();
    if (bracket == null) {
      fittings.add(fitting("", variables.constant(0), BarEnd.AXLE));
    } else {
      for (int i = 0; i < rises.size(); i++) {
        Hole hole = bracket.holes().get(i);
        fittings.add(fitting(hole.name(), variables.variable(rises.get(i)), bracket.end()));
      }
    }
    return fittings;
  }

  private Fitting fitting(String name, Gradient rise, BarEnd end) {
    Gradient raised = variables.variable(lift);
    Gradient zero = variables.constant(0);
    LinkChange<Gradient> ends =
        end == BarEnd.AXLE
            ? new LinkChange<>(zero, zero, rise)
            : new LinkChange<>(zero, rise, zero);
    return at(
        name,
        raised,
        new LinkChange<>(longer(raised, ends), ends.frameEndRaised(), ends.axleEndRaised()));
  }

  private Fitting at(String name, Gradient raised, LinkChange<Gradient> change) {
    Gradient shift =
        bar().shift(raised, change).orElseGet(() -> variables.constant(Double.POSITIVE_INFINITY));
    return new Fitting(name, raised, change, shift);
  }

  /** How much longer the bar is: an adjustable one as near to centering as its thread goes. */
  private Gradient longer(Gradient raised, LinkChange<Gradient> ends) {
    if (newBar == null) {
      return variables.constant(0);
    }
    Gradient wanted = bar().lengthThatRecenters(raised, ends);
    Gradient length =
        wanted.getValue() < variables.valueOf(shortest)
            ? variables.variable(shortest)
            : wanted.getValue() > variables.valueOf(longest) ? variables.variable(longest) : wanted;
    return length.subtract(bar().length());
  }

  /** The hole that the sheet names; the best one where it names none. */
  Fitting chosen() {
    Optional<String> named = bracket == null ? Optional.empty() : build.hole(bracket);
    return named
        .flatMap(hole -> fittings().stream().filter(f -> f.name.equals(hole)).findFirst())
        .orElseGet(this::best);
  }

  /** The one that leaves the axle nearest to where it was surveyed. */
  Fitting best() {
    return fittings().stream().min(NEAREST_FIRST).orElseThrow();
  }
}
