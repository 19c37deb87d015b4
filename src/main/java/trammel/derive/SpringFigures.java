package trammel.derive;

import static trammel.quantity.Dimension.FORCE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.catalog.SuspensionPart.Spring;
import trammel.catalog.SuspensionPart.TestPoint;
import trammel.physics.SpringCurve;
import trammel.quantity.Constants;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;

/**
 * Force over deflection of a catalog's spring, as quantities: straight between points, of which
 * each is worked out from what its maker states. Below its free length it gives no force; beyond
 * the last point the last slope goes on.
 */
final class SpringFigures {
  private static final Formula CHANGE =
      new Formula("force at the change of rate", "first rate · deflection there", "definition");
  private static final Formula FORCE_AT =
      new Formula("spring force", "by the spring's rate or table", "definition of a spring rate");
  private static final Formula DEFLECTION =
      new Formula("deflection", "by the spring's rate or table", "definition of a spring rate");
  private static final Formula SLOPE =
      new Formula("spring rate there", "slope of the spring's table", "definition");

  private static final Quantity FREE = Constants.mm(0).called("no deflection");
  private static final Quantity NO_FORCE = Quantity.exact(FORCE, 0).called("no force");

  private SpringFigures() {}

  /** A stretch of one rate from a point on. */
  private record Stretch(Quantity deflection, Quantity force, Quantity rate) {

    /** What of it nobody has given. */
    Optional<Quantity> missing() {
      return unknown(deflection).or(() -> unknown(force)).or(() -> unknown(rate));
    }
  }

  private static List<Stretch> stretches(Spring spring) {
    List<Stretch> stretches = new ArrayList<>();
    if (!spring.curve().isEmpty()) {
      Quantity deflection = FREE;
      Quantity force = NO_FORCE;
      for (TestPoint point : spring.curve()) {
        boolean first = point.deflection().isKnown() && point.deflection().value() <= 0;
        if (!first) {
          stretches.add(new Stretch(deflection, force, slope(deflection, force, point)));
        }
        deflection = first ? FREE : point.deflection();
        force = first ? NO_FORCE : point.force();
      }
      return stretches;
    }
    stretches.add(new Stretch(FREE, NO_FORCE, spring.rate()));
    if (spring.secondRate().isKnown() || spring.secondRateFrom().isKnown()) {
      Quantity from = spring.secondRateFrom();
      stretches.add(
          new Stretch(from, CHANGE.product(FORCE, 1, spring.rate(), from), spring.secondRate()));
    }
    return stretches;
  }

  private static Quantity slope(Quantity deflection, Quantity force, TestPoint to) {
    double run = number(to.deflection()) - number(deflection);
    double slope = (number(to.force()) - number(force)) / run;
    return SLOPE.of(
        RATE,
        slope,
        new double[] {1 / run, -1 / run, -slope / run, slope / run},
        to.force(),
        force,
        to.deflection(),
        deflection);
  }

  /** What of its curve nobody has given. */
  static Optional<Quantity> missing(Spring spring) {
    return missing(stretches(spring));
  }

  private static Optional<Quantity> missing(List<Stretch> stretches) {
    for (Stretch stretch : stretches) {
      Optional<Quantity> missing = stretch.missing();
      if (missing.isPresent()) {
        return missing;
      }
    }
    return Optional.empty();
  }

  /** The same in plain numbers; only where nothing is missing. */
  static SpringCurve curve(Spring spring) {
    List<SpringCurve.Point> points = new ArrayList<>();
    List<Stretch> stretches = stretches(spring);
    for (Stretch stretch : stretches) {
      points.add(new SpringCurve.Point(stretch.deflection.value(), stretch.force.value()));
    }
    Stretch last = stretches.get(stretches.size() - 1);
    points.add(
        new SpringCurve.Point(last.deflection.value() + 1, last.force.value() + last.rate.value()));
    return new SpringCurve(points);
  }

  /** Force (N) at a deflection; 0 where the spring is loose. */
  static Quantity force(Spring spring, Quantity deflection) {
    List<Stretch> stretches = stretches(spring);
    Optional<Quantity> missing = missing(stretches).or(() -> unknown(deflection));
    if (missing.isPresent()) {
      return absent(FORCE, "spring force", missing.get());
    }
    double x = deflection.value();
    if (x <= 0) {
      return NO_FORCE.called("spring force (the coil is loose)");
    }
    Stretch s = at(stretches, x, 0);
    double run = x - s.deflection.value();
    double k = s.rate.value();
    return FORCE_AT.of(
        FORCE,
        s.force.value() + k * run,
        new double[] {k, 1, run, -k},
        deflection,
        s.force,
        s.rate,
        s.deflection);
  }

  /** Deflection (mm) under a force. */
  static Quantity deflection(Spring spring, Quantity force) {
    List<Stretch> stretches = stretches(spring);
    Optional<Quantity> missing = missing(stretches).or(() -> unknown(force));
    if (missing.isPresent()) {
      return absent(LENGTH, "deflection of the spring", missing.get());
    }
    Stretch s = at(stretches, 0, force.value());
    double k = s.rate.value();
    double rise = force.value() - s.force.value();
    return DEFLECTION.of(
        LENGTH,
        s.deflection.value() + rise / k,
        new double[] {1 / k, -1 / k, -rise / (k * k), 1},
        force,
        s.force,
        s.rate,
        s.deflection);
  }

  /** Rate (N/mm) at a deflection. */
  static Quantity rate(Spring spring, Quantity deflection) {
    List<Stretch> stretches = stretches(spring);
    Optional<Quantity> missing = missing(stretches).or(() -> unknown(deflection));
    return missing.isPresent()
        ? absent(RATE, "spring rate there", missing.get())
        : at(stretches, deflection.value(), 0).rate;
  }

  /** The last stretch that begins at or under a deflection or a force, whichever is beyond 0. */
  private static Stretch at(List<Stretch> stretches, double deflection, double force) {
    Stretch found = stretches.get(0);
    for (Stretch stretch : stretches) {
      boolean reached = deflection > stretch.deflection.value() || force > stretch.force.value();
      found = reached ? stretch : found;
    }
    return found;
  }

  private static Optional<Quantity> unknown(Quantity quantity) {
    return quantity.isKnown() ? Optional.empty() : Optional.of(quantity);
  }

  static Quantity absent(Dimension dimension, String name, Quantity missing) {
    return Quantity.absent(dimension, Variables.absence(missing)).called(name);
  }

  private static double number(Quantity quantity) {
    return quantity.isKnown() ? quantity.value() : Double.NaN;
  }
}
