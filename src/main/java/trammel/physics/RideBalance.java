package trammel.physics;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import trammel.physics.RidePosition.Balanced;
import trammel.physics.RidePosition.Limit;
import trammel.physics.RidePosition.Limited;

/**
 * Ride height of a wheel on a steel spring alone, from the balance of forces: MR(z) · F(z) = W. Own
 * derivation from virtual work. In closed form where the ratio is constant, else by a bracketed
 * solver to 1e-9 of the load.
 *
 * <p>Where a falling ratio would allow several positions, it is the lowest stable one: where the
 * wheel comes to rest as the vehicle is let down onto it.
 */
public final class RideBalance {
  private static final int STEPS = 64;
  private static final int EVALUATIONS = 200;
  private static final int ORDER = 5;
  private static final double RELATIVE = 1e-15;
  private static final double TRAVEL = 1e-13;
  private static final double BELOW_ANY_FORCE = 1e-15;

  private RideBalance() {}

  /**
   * Where the wheel comes to rest between its stops.
   *
   * @param load W, of the body on the wheel, the unsprung weight taken off (N)
   * @param droop travel at the droop stop (mm)
   * @param bump travel at the bump stop, above that (mm)
   * @throws IllegalArgumentException if the load is not above 0, the stops are not in order, or the
   *     path does not close the seats as the wheel rises
   */
  public static RidePosition of(
      FittedSpring spring, SpringPath path, double load, double droop, double bump) {
    Require.positive("wheel load", load);
    if (!(droop < bump && droop > Double.NEGATIVE_INFINITY && bump < Double.POSITIVE_INFINITY)) {
      throw Require.refused("travel at the bump stop", bump, "more than at the droop stop");
    }
    if (surplus(spring, path, load, droop) > 0) {
      return limited(
          bound(spring, path, droop) ? Limit.COIL_BOUND : Limit.DROOP_STOP,
          spring,
          path,
          load,
          droop);
    }
    double solid = boundTravel(spring, path, droop, bump).orElse(bump);
    OptionalDouble travel =
        path instanceof SpringPath.Constant constant
            ? closedForm(spring, constant, load, solid)
            : searched(spring, path, load, droop, solid);
    if (travel.isPresent()) {
      return balanced(spring, path, load, travel.getAsDouble());
    }
    return limited(atTop(spring, path, solid), spring, path, load, solid);
  }

  /**
   * Travel at which the coil is solid (mm), if within the stops: at the droop stop for one that
   * cannot even be fitted.
   */
  public static OptionalDouble boundTravel(
      FittedSpring spring, SpringPath path, double droop, double bump) {
    if (!bound(spring, path, bump)) {
      return OptionalDouble.empty();
    }
    if (bound(spring, path, droop)) {
      return OptionalDouble.of(droop);
    }
    return OptionalDouble.of(
        path instanceof SpringPath.Constant constant
            ? constant.travelAt(spring.solidSeatDistance())
            : root(z -> spring.solidSeatDistance() - path.seatDistance(z), droop, bump));
  }

  private static OptionalDouble closedForm(
      FittedSpring spring, SpringPath.Constant path, double load, double highest) {
    double deflection = spring.curve().deflection(load / path.ratio());
    double travel = path.travelAt(spring.seatDistance(deflection));
    return travel <= highest ? OptionalDouble.of(travel) : OptionalDouble.empty();
  }

  private static OptionalDouble searched(
      FittedSpring spring, SpringPath path, double load, double lowest, double highest) {
    double lower = lowest;
    for (int i = 1; i <= STEPS; i++) {
      double upper = i == STEPS ? highest : lowest + i * (highest - lowest) / STEPS;
      if (surplus(spring, path, load, upper) >= 0) {
        return OptionalDouble.of(root(z -> surplus(spring, path, load, z), lower, upper));
      }
      lower = upper;
    }
    return OptionalDouble.empty();
  }

  private static Balanced balanced(
      FittedSpring spring, SpringPath path, double load, double travel) {
    double ratio = ratio(path, travel);
    double deflection = spring.deflection(path.seatDistance(travel));
    double force = spring.curve().force(deflection);
    double slope = spring.curve().slope(deflection);
    double wheelRate = ratio * ratio * slope + path.ratioPerTravel(travel) * force;
    return new Balanced(
        travel,
        force,
        deflection,
        wheelRate,
        1 / wheelRate,
        -ratio * slope / wheelRate,
        ratio * slope / wheelRate,
        -load / wheelRate,
        -force / wheelRate);
  }

  private static Limited limited(
      Limit limit, FittedSpring spring, SpringPath path, double load, double travel) {
    return new Limited(
        limit,
        travel,
        spring.force(path.seatDistance(travel)),
        -surplus(spring, path, load, travel));
  }

  private static Limit atTop(FittedSpring spring, SpringPath path, double travel) {
    return switch (spring.coil(path.seatDistance(travel))) {
      case BOUND -> Limit.COIL_BOUND;
      case SLACK -> Limit.COIL_SLACK;
      case WORKING -> Limit.BUMP_STOP;
    };
  }

  private static boolean bound(FittedSpring spring, SpringPath path, double travel) {
    return spring.coil(path.seatDistance(travel)) == FittedSpring.Coil.BOUND;
  }

  private static double surplus(FittedSpring spring, SpringPath path, double load, double travel) {
    return ratio(path, travel) * spring.force(path.seatDistance(travel)) - load;
  }

  private static double ratio(SpringPath path, double travel) {
    double ratio = path.ratio(travel);
    Require.positive("motion ratio of the spring", ratio);
    return ratio;
  }

  private static double root(DoubleUnaryOperator function, double lower, double upper) {
    return new BracketingNthOrderBrentSolver(RELATIVE, TRAVEL, BELOW_ANY_FORCE, ORDER)
        .solve(EVALUATIONS, function::applyAsDouble, lower, upper);
  }
}
