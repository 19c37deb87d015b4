package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.build.BuildSheet.Printout;
import trammel.catalog.AlignmentSpec;
import trammel.catalog.SuspensionPart.UpperArm;
import trammel.derive.WheelAlignment.Depth;
import trammel.quantity.Absence;
import trammel.quantity.Constants;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;

/**
 * Alignment without hard points: two printouts at two heights give how a wheel's angles change, and
 * the rack shows what its adjusters reach; with less, the trade's estimate stands in, and what the
 * adjusters reach stays unknown.
 */
final class RackAlignment {
  private static final Formula CHANGE =
      new Formula(
          "change with height",
          "(a₂ − a₁)/(h₂ − h₁) · (height as proposed − nearest)",
          "two printouts; half of what is extrapolated is uncertainty");
  private static final Formula AFTER =
      new Formula("angle as proposed", "nearest printout + change + arm's claim", "definition");
  private static final Formula CLIMB =
      new Formula("height above the printout's", "as proposed − printout", "definition");
  private static final Formula ESTIMATE =
      new Formula(
          "estimated change",
          "rate · lift",
          "shared/reference/lift-and-alignment.csv: independent fronts; the sign is not certain");

  /** What an inch of lift does to caster (degrees) on an independent front, and how uncertain. */
  private static final Quantity CASTER_RATE = rate("caster for an inch of lift", -0.6, 0.6);

  private static final Quantity CAMBER_RATE = rate("camber for an inch of lift", 0.4, 0.6);
  private static final double INCH = 25.4;

  /** What is said of a suspension that no hard points solve. */
  static final String UNSOLVED = "this suspension is known from two alignment printouts only";

  private RackAlignment() {}

  private static Quantity rate(String name, double value, double expanded) {
    return Quantity.read(
        name,
        ANGLE,
        value,
        expanded,
        new Input(
            "RackAlignment",
            name,
            0,
            "shared/reference/lift-and-alignment.csv",
            Instrument.STATED));
  }

  /** Which angle of a printout is meant. */
  private enum Which {
    CAMBER,
    CASTER;

    Quantity of(Printout printout) {
      return this == CAMBER ? printout.angles().camber() : printout.angles().caster();
    }

    Quantity from(Printout printout) {
      return this == CAMBER ? printout.camberFrom() : printout.casterFrom();
    }

    Quantity to(Printout printout) {
      return this == CAMBER ? printout.camberTo() : printout.casterTo();
    }

    Quantity claim(UpperArm arm) {
      return this == CAMBER ? arm.camberChange() : arm.casterChange();
    }
  }

  private record Angle(Quantity best, Quantity reserve, boolean low) {}

  /**
   * The alignment of a wheel.
   *
   * @param printouts of this wheel
   * @param height hub to fender as proposed
   * @param lift how much of that the changes bring
   * @param arm the arm that is new; null where none is
   * @param solved whether hard points would solve a suspension of this layout
   */
  static WheelAlignment of(
      List<Printout> printouts,
      AlignmentSpec spec,
      Quantity height,
      Quantity lift,
      @Nullable UpperArm arm,
      boolean solved) {
    boolean rack =
        printouts.stream()
                .filter(p -> p.height().isKnown())
                .map(p -> p.height().value())
                .distinct()
                .count()
            >= 2;
    Angle camber = angle(Which.CAMBER, printouts, spec.camber(), height, lift, arm, rack, solved);
    Angle caster = angle(Which.CASTER, printouts, spec.caster(), height, lift, arm, rack, solved);
    return new WheelAlignment(
        rack ? Depth.RACK : Depth.TAPE,
        camber.best,
        caster.best,
        camber.reserve,
        camber.low,
        caster.reserve,
        caster.low,
        solved
            ? "set it on the rack: no hard points tell which adjuster does what"
            : "set it on the rack: " + UNSOLVED,
        true,
        Quantity.absent(
            Dimension.LENGTH,
            new Absence(
                "change of the tie rod",
                "its hard points are not surveyed",
                Instrument.HARD_POINT,
                "survey the front hard points")));
  }

  /** A printout without what its adjusters gave, for where they stay as they are. */
  static Printout withoutEnds(Printout printout) {
    Quantity camber = unreached(Which.CAMBER, true);
    Quantity caster = unreached(Which.CASTER, true);
    return new Printout(
        printout.place(),
        printout.at(),
        printout.state(),
        printout.height(),
        printout.angles(),
        camber,
        camber,
        caster,
        caster);
  }

  private static Angle angle(
      Which which,
      List<Printout> printouts,
      AlignmentSpec.Window window,
      Quantity height,
      Quantity lift,
      @Nullable UpperArm arm,
      boolean rack,
      boolean solved) {
    Quantity claim = arm == null ? Constants.degrees(0).called("no new arm") : which.claim(arm);
    Optional<Printout> nearest = nearest(printouts, height);
    Quantity start = nearest.map(which::of).orElseGet(() -> unknown(which));
    Quantity change =
        rack
            ? change(which, printouts, nearest.orElseThrow(), height)
            : ESTIMATE.product(
                ANGLE, 1 / INCH, which == Which.CASTER ? CASTER_RATE : CAMBER_RATE, lift);
    Quantity predicted = AFTER.linear(1, start, 1, change, 1, claim);
    if (nearest.isEmpty()
        || !which.from(nearest.get()).isKnown()
        || !which.to(nearest.get()).isKnown()) {
      return new Angle(predicted, unreached(which, solved), true);
    }
    Quantity least = AFTER.linear(1, which.from(nearest.get()), 1, change, 1, claim);
    Quantity greatest = AFTER.linear(1, which.to(nearest.get()), 1, change, 1, claim);
    Quantity overLow = WheelAlignment.reserve(greatest, window, true);
    Quantity underHigh = WheelAlignment.reserve(least, window, false);
    boolean low =
        !overLow.isKnown() || !underHigh.isKnown() || overLow.value() <= underHigh.value();
    return new Angle(within(predicted, least, greatest, window), low ? overLow : underHigh, low);
  }

  /** The preferred value where the adjusters reach it, else the nearer end of what they reach. */
  private static Quantity within(
      Quantity predicted, Quantity least, Quantity greatest, AlignmentSpec.Window window) {
    if (!least.isKnown() || !greatest.isKnown() || !window.preferred().isKnown()) {
      return predicted;
    }
    double wanted = window.preferred().value();
    if (wanted < least.value()) {
      return least;
    }
    return wanted > greatest.value() ? greatest : window.preferred();
  }

  private static Optional<Printout> nearest(List<Printout> printouts, Quantity height) {
    return printouts.stream()
        .min(
            Comparator.comparingDouble(
                p ->
                    p.height().isKnown() && height.isKnown()
                        ? Math.abs(p.height().value() - height.value())
                        : Double.MAX_VALUE));
  }

  /** The change from the nearest printout to the proposed height, by the two farthest apart. */
  private static Quantity change(
      Which which, List<Printout> printouts, Printout nearest, Quantity height) {
    Comparator<Printout> byHeight = Comparator.comparingDouble(p -> p.height().value());
    List<Printout> known = printouts.stream().filter(p -> p.height().isKnown()).toList();
    Printout low = known.stream().min(byHeight).orElseThrow();
    Printout high = known.stream().max(byHeight).orElseThrow();
    if (!height.isKnown() || !which.of(low).isKnown() || !which.of(high).isKnown()) {
      return CHANGE.linear(1, which.of(low), 1, which.of(high), 0, Constants.degrees(0));
    }
    Quantity climb = CLIMB.linear(1, height, -1, nearest.height());
    double span = high.height().value() - low.height().value();
    double slope = (which.of(high).value() - which.of(low).value()) / span;
    double share = climb.value() / span;
    double outside =
        Math.max(0, height.value() - high.height().value())
            + Math.max(0, low.height().value() - height.value());
    Quantity extrapolated =
        Quantity.read(
            "extrapolation beyond the printouts",
            ANGLE,
            0,
            0.5 * Math.abs(slope * outside),
            new Input(
                "RackAlignment", "extrapolation", 0, "design: half of it", Instrument.STATED));
    return CHANGE.of(
        ANGLE,
        slope * climb.value(),
        new double[] {share, -share, slope, -slope * share, slope * share, 1},
        which.of(high),
        which.of(low),
        climb,
        high.height(),
        low.height(),
        extrapolated);
  }

  private static Quantity unknown(Which which) {
    String name = which == Which.CAMBER ? "camber as found" : "caster as found";
    return Quantity.absent(
        ANGLE,
        new Absence(
            name,
            "no printout of this wheel",
            which == Which.CAMBER ? Instrument.CAMBER_RACK : Instrument.CASTER_RACK,
            "put it on an alignment rack as it stands"));
  }

  private static Quantity unreached(Which which, boolean solved) {
    String name = which == Which.CAMBER ? "camber" : "caster";
    return Quantity.absent(
        ANGLE,
        new Absence(
            "what the adjusters reach in " + name,
            solved
                ? "neither hard points nor a printout of the adjusters' ends"
                : UNSOLVED + ", and none shows the adjusters' ends",
            which == Which.CAMBER ? Instrument.CAMBER_RACK : Instrument.CASTER_RACK,
            "two printouts at two heights, with the adjusters turned from end to end"));
  }
}
