package trammel.quantity;

import java.util.Arrays;
import java.util.List;

/**
 * How a quantity follows from others.
 *
 * @param name what the result is, as a fitter would say it
 * @param expression the relation in words and signs
 * @param source the document the relation is from, or <em>common practice</em>, or
 *     <em>definition</em>
 */
public record Formula(String name, String expression, String source) {

  /** A quantity whose partial derivatives the caller states, one for each operand. */
  public Quantity of(Dimension dimension, double value, double[] partials, Quantity... operands) {
    return derived(dimension, value, partials.clone(), operands);
  }

  private Quantity derived(
      Dimension dimension, double value, double[] partials, Quantity... operands) {
    return Quantity.derived(this, dimension, value, partials, operands);
  }

  /** {@code a·q}. */
  public Quantity linear(double a, Quantity q) {
    return derived(q.dimension(), a * q.raw(), new double[] {a}, q);
  }

  /** {@code a·q + b·r}. */
  public Quantity linear(double a, Quantity q, double b, Quantity r) {
    return derived(q.dimension(), a * q.raw() + b * r.raw(), new double[] {a, b}, q, r);
  }

  /** {@code a·q + b·r + c·s}. */
  public Quantity linear(double a, Quantity q, double b, Quantity r, double c, Quantity s) {
    return derived(
        q.dimension(), a * q.raw() + b * r.raw() + c * s.raw(), new double[] {a, b, c}, q, r, s);
  }

  /** The sum of all operands, each with its coefficient. */
  public Quantity linear(double[] coefficients, Quantity... operands) {
    double sum = 0;
    for (int i = 0; i < operands.length; i++) {
      sum += coefficients[i] * operands[i].raw();
    }
    return of(operands[0].dimension(), sum, coefficients, operands);
  }

  /** The sum of all operands, of which there is at least one. */
  public Quantity sum(List<Quantity> operands) {
    double[] ones = new double[operands.size()];
    Arrays.fill(ones, 1);
    return linear(ones, operands.toArray(Quantity[]::new));
  }

  /** {@code a·q / r}. */
  public Quantity quotient(Dimension dimension, double a, Quantity q, Quantity r) {
    double value = a * q.raw() / r.raw();
    return derived(dimension, value, new double[] {a / r.raw(), -value / r.raw()}, q, r);
  }

  /** {@code a·q·r}. */
  public Quantity product(Dimension dimension, double a, Quantity q, Quantity r) {
    return derived(dimension, a * q.raw() * r.raw(), new double[] {a * r.raw(), a * q.raw()}, q, r);
  }
}
