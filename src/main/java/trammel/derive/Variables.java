package trammel.derive;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.jspecify.annotations.Nullable;
import trammel.catalog.SurveyPoint;
import trammel.quantity.Absence;
import trammel.quantity.Basis;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Side;

/**
 * The quantities that a piece of geometry depends on, as variables of its derivatives: what is
 * computed from them comes back as a quantity with one partial derivative for each.
 */
final class Variables {
  private final Quantity[] quantities;
  private @Nullable Basis basis;

  private Variables(List<Quantity> quantities) {
    this.quantities = quantities.toArray(Quantity[]::new);
  }

  /** Collects quantities; the index of each is its variable. */
  static final class Collector {
    private final List<Quantity> quantities = new ArrayList<>();

    /** A value that was read and added before is the same variable. */
    int add(Quantity quantity) {
      for (int i = 0; quantity.input() != null && i < quantities.size(); i++) {
        if (quantities.get(i) == quantity) {
          return i;
        }
      }
      quantities.add(quantity);
      return quantities.size() - 1;
    }

    /** A surveyed point: the indices of fore, out and up. */
    int[] add(SurveyPoint point, String name) {
      return new int[] {
        add(point.fore().called(name + ", fore")),
        add(point.out().called(name + ", out")),
        add(point.up().called(name + ", up"))
      };
    }

    /** All that were added. */
    Variables all() {
      return new Variables(quantities);
    }
  }

  /** The first that nobody has given; null where all are there. */
  @Nullable Quantity missing() {
    for (Quantity quantity : quantities) {
      if (!quantity.isKnown()) {
        return quantity;
      }
    }
    return null;
  }

  /** Why a missing value is missing. */
  static Absence absence(@Nullable Quantity missing) {
    Absence absence = missing == null ? null : missing.absence();
    return absence == null
        ? new Absence("value", "nobody has given it", Instrument.READ, "give it")
        : absence;
  }

  /** One as a variable. */
  Gradient variable(int index) {
    return Gradient.variable(quantities.length, index, quantities[index].value());
  }

  /** The plain values of all. */
  List<Double> values() {
    return Arrays.stream(quantities).map(Quantity::value).toList();
  }

  /** The plain value of one. */
  double valueOf(int index) {
    return quantities[index].value();
  }

  /** A point of a corner: fore, out, up. */
  FieldVector3D<Gradient> point(int[] index) {
    return new FieldVector3D<>(variable(index[0]), variable(index[1]), variable(index[2]));
  }

  /** A point of the whole vehicle: fore, left, up, whichever side it was surveyed on. */
  FieldVector3D<Gradient> left(int[] index, SurveyPoint point) {
    FieldVector3D<Gradient> out = point(index);
    return point.side() == Side.RIGHT
        ? new FieldVector3D<>(out.getX(), out.getY().negate(), out.getZ())
        : out;
  }

  /** A plain number. */
  Gradient constant(double value) {
    return Gradient.constant(quantities.length, value);
  }

  /** What was computed, as a quantity of another value but the same derivatives. */
  Quantity quantity(Formula formula, Dimension dimension, double value, Gradient derivatives) {
    if (basis == null) {
      basis = new Basis(quantities);
    }
    return basis.derive(formula, dimension, value, derivatives.getGradient());
  }

  /** What was computed, as a quantity. */
  Quantity quantity(Formula formula, Dimension dimension, Gradient computed) {
    return quantity(formula, dimension, computed.getValue(), computed);
  }

  /**
   * A sum of computed numbers, each times a factor, as one quantity.
   *
   * @throws IllegalArgumentException if there are more factors than numbers, or fewer
   */
  Quantity combined(
      Formula formula, Dimension dimension, double[] factors, List<Gradient> computed) {
    if (factors.length != computed.size()) {
      throw new IllegalArgumentException(formula.name() + ": one factor for each number, please");
    }
    Gradient sum = constant(0);
    for (int i = 0; i < factors.length; i++) {
      sum = sum.add(computed.get(i).multiply(factors[i]));
    }
    return quantity(formula, dimension, sum);
  }

  /**
   * The same variables read once more: two sides of one profile are two sources of error, unless
   * both were measured on this vehicle.
   */
  Variables again(String which, Set<Integer> shared) {
    List<Quantity> copies = new ArrayList<>();
    for (int i = 0; i < quantities.length; i++) {
      Quantity quantity = quantities[i];
      Input input = quantity.input();
      copies.add(
          input == null || shared.contains(i)
              ? quantity
              : Quantity.read(
                  quantity.name() + " " + which,
                  quantity.dimension(),
                  quantity.value(),
                  quantity.expanded(),
                  new Input(
                      input.file(),
                      input.path() + " (" + which + ")",
                      input.line(),
                      input.source(),
                      input.instrument())));
    }
    return new Variables(copies);
  }
}
