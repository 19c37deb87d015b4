package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.catalog.PartKind;
import trammel.catalog.Support.BrakeValve;
import trammel.catalog.Support.LineRun;
import trammel.catalog.SuspensionPart.BrakeValveBracket;
import trammel.catalog.SuspensionPart.FlexibleLine;
import trammel.catalog.SuspensionPart.FlexibleLine.Carries;
import trammel.fact.BrakeValveRod;
import trammel.fact.LineReach;
import trammel.fact.Standing;
import trammel.quantity.Decision;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;
import trammel.subject.Subject;

/** Hoses, wires and breathers with the wheel hanging, and the rod of a load-sensing valve. */
final class LineFacts {
  private static final Formula MORE =
      new Formula("droop added", "hang as proposed − the book's droop travel", "definition");
  private static final Formula SPAN =
      new Formula(
          "span with the wheel hanging",
          "the book's span + droop added",
          "own derivation: no straight line grows by more than its end moves");
  private static final Formula SLACK = new Formula("slack", "free length − span", "definition");

  private final Derivation derivation;
  private final Build build;

  LineFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  void add(Position position, Standings standings) {
    List<LineRun> runs = new ArrayList<>(standings.after().axle().support().lines());
    if (runs.stream().noneMatch(run -> run.carries() == Carries.BRAKE_FLUID)) {
      runs.add(unmeasured(Carries.BRAKE_FLUID));
    }
    for (FlexibleLine line : added(position)) {
      if (runs.stream().noneMatch(run -> run.carries() == line.carries())) {
        runs.add(unmeasured(line.carries()));
      }
    }
    boolean beam = standings.after().axle().layout().beam();
    for (LineRun run : runs) {
      boolean ofTheWheel = run.carries() == Carries.BRAKE_FLUID || !beam;
      if (ofTheWheel || position.side().orElseThrow() == Side.LEFT) {
        run(position, standings, run, ofTheWheel);
      }
    }
  }

  private List<FlexibleLine> added(Position position) {
    return build.lines().stream()
        .filter(line -> line.at().contains(position))
        .map(Build.Line::part)
        .filter(FlexibleLine.class::isInstance)
        .map(FlexibleLine.class::cast)
        .toList();
  }

  private static LineRun unmeasured(Carries carries) {
    return new LineRun(
        carries,
        Figures.missing(
            LENGTH,
            "span of the " + words(carries) + " line",
            "nobody has measured it",
            Instrument.TAPE,
            "measure between its fixed ends with the wheel hanging, in both locks"));
  }

  private static String words(Carries carries) {
    return carries.toString().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private void run(Position position, Standings standings, LineRun run, boolean ofTheWheel) {
    CornerTravel travel = standings.after();
    @Nullable FlexibleLine fitted = null;
    // A new line stands after the one that it replaces.
    for (FlexibleLine line : travel.equipment().all(PartKind.FLEXIBLE_LINE, FlexibleLine.class)) {
      fitted = line.carries() == run.carries() ? line : fitted;
    }
    Quantity free =
        fitted != null
            ? fitted.length()
            : Figures.missing(
                LENGTH,
                "length of the " + words(run.carries()) + " line",
                "nobody says which is fitted",
                Instrument.TAPE,
                "measure it between its fixed ends, straight");
    Quantity more =
        TravelFacts.atLeastNothing(
            MORE.linear(1, travel.droop().hang(), -1, travel.axle().droopTravel()));
    Quantity span = TravelFacts.stays(more) ? run.span() : SPAN.linear(1, run.span(), 1, more);
    Quantity change = MORE.linear(1, travel.droop().hang(), -1, standings.before().droop().hang());
    boolean touched = build.changes(position, PartKind.FLEXIBLE_LINE) || !TravelFacts.stays(change);
    String detail = run.carries().toString().toLowerCase(Locale.ROOT).replace('_', '-');
    derivation.facts.add(
        new LineReach(
            ofTheWheel
                ? Subject.of(position, detail)
                : Subject.of(position.axle().orElseThrow(), detail),
            Standing.ofChange(touched || !free.isKnown() || !run.span().isKnown()),
            fitted == null ? List.of() : List.of(fitted.number()),
            fitted == null ? "" : fitted.number(),
            words(run.carries()),
            run.carries() == Carries.BRAKE_FLUID,
            free,
            span,
            SLACK.linear(1, free, -1, span),
            standings.lift()));
  }

  /** The rod of the rear axle's brake valve, where the axle is raised. */
  void brakeValve() {
    AxleRide ride = derivation.ride(Axle.REAR);
    @Nullable BrakeValve valve = build.vehicle().axle(Axle.REAR).support().brakeValve();
    if (!ride.moved() || valve == BrakeValve.NONE) {
      return;
    }
    Optional<BrakeValveBracket> bracket =
        build.after(Position.REAR_LEFT).one(PartKind.BRAKE_VALVE_BRACKET, BrakeValveBracket.class);
    Decision follows =
        bracket
            .map(
                fitted ->
                    ride.change()
                        .atLeast(fitted.liftFrom())
                        .decision()
                        .and(ride.change().atMost(fitted.liftTo()).decision()))
            .orElse(valve == null ? Decision.ABSENT : Decision.NOT_MET);
    derivation.facts.add(
        new BrakeValveRod(
            Subject.of(Axle.REAR),
            Standing.WORSE_OR_NEW,
            bracket.map(fitted -> List.of(fitted.number())).orElse(List.of()),
            ride.change(),
            bracket.map(BrakeValveBracket::number).orElse(""),
            follows));
  }
}
