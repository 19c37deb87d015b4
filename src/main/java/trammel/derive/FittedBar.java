package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.AxleProfile;
import trammel.catalog.BeamLocation.BarRoom;
import trammel.catalog.BeamLocation.Panhard;
import trammel.catalog.PartKind;
import trammel.catalog.SurveyPoint;
import trammel.catalog.SuspensionPart;
import trammel.catalog.SuspensionPart.PanhardBracket;
import trammel.catalog.SuspensionPart.PanhardBracket.BarEnd;
import trammel.catalog.SuspensionPart.PanhardBracket.Hole;
import trammel.fact.AxleShift;
import trammel.fact.Standing;
import trammel.geometry.LinkChange;
import trammel.geometry.PanhardBar;
import trammel.geometry.Rods;
import trammel.quantity.Absence;
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
  private static final Formula ROOM =
      new Formula("gap", "distance of the axes − both radii", "definition");
  private static final int STEPS = 12;

  private final Build build;
  private final Derivation derivation;
  private final Axle axle;
  private final Panhard panhard;
  private final AxleProfile profile;
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

  FittedBar(Derivation derivation, Axle axle, Panhard panhard, AxleRide ride) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.axle = axle;
    this.panhard = panhard;
    this.profile = build.vehicle().axle(axle);
    Variables.Collector collector = new Variables.Collector();
    frameEnd = collector.add(panhard.frameEnd(), "bar, frame end");
    axleEnd = collector.add(panhard.axleEnd(), "bar, axle end");
    lift = collector.add(ride.proposed());
    found = collector.add(ride.found());
    Equipment after = build.after(Position.of(axle, Side.LEFT));
    bracket = after.one(PartKind.PANHARD_BRACKET, PanhardBracket.class).orElse(null);
    if (bracket != null) {
      bracket.holes().forEach(hole -> rises.add(collector.add(hole.rise())));
    }
    newBar =
        build.changes(axle, PartKind.PANHARD_BAR)
            ? after.one(PartKind.PANHARD_BAR, SuspensionPart.PanhardBar.class).orElse(null)
            : null;
    shortest = newBar == null ? -1 : collector.add(newBar.lengthFrom());
    longest = newBar == null ? -1 : collector.add(newBar.lengthTo());
    variables = collector.all();
  }

  /** What of it nobody has given; null where all is there. */
  @Nullable Quantity missing() {
    return variables.missing();
  }

  void add(BarFacts facts) {
    Quantity missing = variables.missing();
    if (missing != null) {
      derivation.facts.add(facts.unmeasured(axle));
      panhard.rooms().forEach(room -> room(facts, room, unknown(Variables.absence(missing)), ""));
      return;
    }
    PanhardBar<Gradient> bar =
        new PanhardBar<>(
            variables.left(frameEnd, panhard.frameEnd()),
            variables.left(axleEnd, panhard.axleEnd()));
    List<Fitting> fittings = fittings(bar);
    Fitting chosen = chosen(fittings);
    Fitting best =
        fittings.stream()
            .min(Comparator.comparingDouble(f -> Math.abs(f.shift.getValue())))
            .orElse(chosen);
    Quantity shift = length(SHIFT, chosen.shift);
    Quantity bestShift = length(SHIFT, best.shift);
    LinkChange<Gradient> none = LinkChange.none(chosen.shift.getField());
    derivation.facts.add(
        new AxleShift(
            Subject.of(axle),
            Standing.WORSE_OR_NEW,
            facts.numbers(axle),
            shift,
            chosen.shift.getValue() >= 0 ? "left" : "right",
            angle(bar, variables.variable(lift), chosen.change),
            angle(bar, variables.variable(found), none),
            chosen.name,
            best.name,
            bestShift,
            chosen.equals(best)
                ? Constants.mm(0).called("shift lost by the hole")
                : LOST.linear(1, shift, -1, bestShift),
            variables.quantity(
                RECENTERS,
                LENGTH,
                bar.lengthThatRecenters(variables.variable(lift), chosen.change))));
    panhard.rooms().forEach(room -> room(facts, room, bar, chosen));
  }

  private PanhardBar<Gradient> bar() {
    return new PanhardBar<>(
        variables.left(frameEnd, panhard.frameEnd()), variables.left(axleEnd, panhard.axleEnd()));
  }

  /** What is changed on the bar as proposed. */
  LinkChange<Gradient> proposed() {
    return chosen(fittings(bar())).change;
  }

  private Quantity length(Formula formula, Gradient signed) {
    return variables.quantity(formula, LENGTH, signed.getValue() < 0 ? signed.negate() : signed);
  }

  private Quantity angle(PanhardBar<Gradient> bar, Gradient at, LinkChange<Gradient> change) {
    return bar.angle(at, change)
        .map(angle -> angle.getValue() < 0 ? angle.negate() : angle)
        .map(angle -> variables.quantity(SLOPE, ANGLE, angle))
        .orElseGet(() -> Constants.degrees(90));
  }

  /** One way the bar may be fitted: the hole it is in and what that makes of it. */
  private record Fitting(String name, LinkChange<Gradient> change, Gradient shift) {}

  private List<Fitting> fittings(PanhardBar<Gradient> bar) {
    List<Fitting> fittings = new ArrayList<>();
    if (bracket == null) {
      fittings.add(fitting(bar, "", variables.constant(0), BarEnd.AXLE));
    } else {
      for (int i = 0; i < rises.size(); i++) {
        Hole hole = bracket.holes().get(i);
        fittings.add(fitting(bar, hole.name(), variables.variable(rises.get(i)), bracket.end()));
      }
    }
    return fittings;
  }

  private Fitting fitting(PanhardBar<Gradient> bar, String name, Gradient rise, BarEnd end) {
    Gradient raised = variables.variable(lift);
    Gradient zero = variables.constant(0);
    LinkChange<Gradient> ends =
        end == BarEnd.AXLE
            ? new LinkChange<>(zero, zero, rise)
            : new LinkChange<>(zero, rise, zero);
    LinkChange<Gradient> change =
        new LinkChange<>(longer(bar, raised, ends), ends.frameEndRaised(), ends.axleEndRaised());
    Gradient shift =
        bar.shift(raised, change).orElseGet(() -> variables.constant(Double.POSITIVE_INFINITY));
    return new Fitting(name, change, shift);
  }

  /** How much longer the bar is: an adjustable one as near to centering as its thread goes. */
  private Gradient longer(PanhardBar<Gradient> bar, Gradient raised, LinkChange<Gradient> ends) {
    if (newBar == null) {
      return variables.constant(0);
    }
    Gradient wanted = bar.lengthThatRecenters(raised, ends);
    Gradient length =
        wanted.getValue() < variables.valueOf(shortest)
            ? variables.variable(shortest)
            : wanted.getValue() > variables.valueOf(longest) ? variables.variable(longest) : wanted;
    return length.subtract(bar.length());
  }

  /** The hole that the sheet names; the best one where it names none. */
  private Fitting chosen(List<Fitting> fittings) {
    Optional<String> named = bracket == null ? Optional.empty() : build.hole(bracket);
    return named
        .flatMap(hole -> fittings.stream().filter(f -> f.name.equals(hole)).findFirst())
        .orElseGet(
            () ->
                fittings.stream()
                    .min(Comparator.comparingDouble(f -> Math.abs(f.shift.getValue())))
                    .orElseThrow());
  }

  private static Quantity unknown(Absence why) {
    return Quantity.absent(LENGTH, why);
  }

  private void room(BarFacts facts, BarRoom room, Quantity gap, String pose) {
    derivation.facts.add(
        new trammel.fact.BarRoom(
            Subject.of(axle, room.obstacle().replace(' ', '-')),
            Standing.WORSE_OR_NEW,
            facts.numbers(axle),
            room.obstacle(),
            gap,
            pose));
  }

  private void room(BarFacts facts, BarRoom room, PanhardBar<Gradient> bar, Fitting fitting) {
    Optional<Quantity> missing = missing(room);
    if (missing.isPresent()) {
      room(facts, room, unknown(Variables.absence(missing.get())), "");
      return;
    }
    @Nullable Rods closest = null;
    double where = 0;
    double low = -profile.bumpTravel().value();
    double high = profile.droopTravel().value();
    Vector3D from = left(room.from());
    Vector3D to = left(room.to());
    for (int step = 0; step <= STEPS; step++) {
      double at = low + (high - low) * step / STEPS;
      Optional<Rods> rods =
          ends(bar, fitting, variables.constant(at), room.onAxle())
              .map(e -> Rods.closest(e.get(0).toVector3D(), e.get(1).toVector3D(), from, to));
      if (rods.isPresent() && (closest == null || rods.get().distance() < closest.distance())) {
        closest = rods.get();
        where = at;
      }
    }
    if (closest != null) {
      room(
          facts,
          room,
          gap(room, bar, fitting, closest, where),
          where <= low + 1 ? "on the bump stop" : where >= high - 1 ? "hanging" : "in between");
    }
  }

  /** Both ends of the bar at a lift: against the body, or against the axle. */
  private Optional<List<FieldVector3D<Gradient>>> ends(
      PanhardBar<Gradient> bar, Fitting fitting, Gradient at, boolean onAxle) {
    return bar.shift(at, fitting.change)
        .map(
            shift -> {
              FieldVector3D<Gradient> axleMove =
                  new FieldVector3D<>(variables.constant(0), shift, at.negate());
              FieldVector3D<Gradient> frame = up(bar.frameEnd(), fitting.change.frameEndRaised());
              FieldVector3D<Gradient> end = up(bar.axleEnd(), fitting.change.axleEndRaised());
              return onAxle
                  ? List.of(frame.subtract(axleMove), end)
                  : List.of(frame, end.add(axleMove));
            });
  }

  private FieldVector3D<Gradient> up(FieldVector3D<Gradient> point, Gradient by) {
    return new FieldVector3D<>(point.getX(), point.getY(), point.getZ().add(by));
  }

  private Quantity gap(
      BarRoom room, PanhardBar<Gradient> bar, Fitting fitting, Rods closest, double where) {
    List<FieldVector3D<Gradient>> ends =
        ends(bar, fitting, variables.constant(where), room.onAxle()).orElseThrow();
    FieldVector3D<Gradient> on =
        ends.get(0).scalarMultiply(1 - closest.firstShare()).add(closest.firstShare(), ends.get(1));
    double distance = closest.distance();
    Vector3D unit =
        distance > 0 ? closest.onFirst().subtract(closest.onSecond()).normalize() : Vector3D.PLUS_K;
    Gradient along =
        on.getX()
            .multiply(unit.getX())
            .add(on.getY().multiply(unit.getY()))
            .add(on.getZ().multiply(unit.getZ()));
    Quantity bars = variables.quantity(ROOM, LENGTH, along);
    double share = closest.secondShare();
    double outFrom = room.from().side() == Side.RIGHT ? -1 : 1;
    double outTo = room.to().side() == Side.RIGHT ? -1 : 1;
    return ROOM.of(
        LENGTH,
        distance - room.radius().value(),
        new double[] {
          1,
          -unit.getX() * (1 - share),
          -unit.getY() * (1 - share) * outFrom,
          -unit.getZ() * (1 - share),
          -unit.getX() * share,
          -unit.getY() * share * outTo,
          -unit.getZ() * share,
          -1
        },
        bars,
        room.from().fore(),
        room.from().out(),
        room.from().up(),
        room.to().fore(),
        room.to().out(),
        room.to().up(),
        room.radius());
  }

  private Optional<Quantity> missing(BarRoom room) {
    return Stream.of(
            profile.bumpTravel(),
            profile.droopTravel(),
            room.radius(),
            room.from().fore(),
            room.from().out(),
            room.from().up(),
            room.to().fore(),
            room.to().out(),
            room.to().up())
        .filter(quantity -> !quantity.isKnown())
        .findFirst();
  }

  private static Vector3D left(SurveyPoint point) {
    double out = point.out().value();
    return new Vector3D(
        point.fore().value(), point.side() == Side.RIGHT ? -out : out, point.up().value());
  }
}
