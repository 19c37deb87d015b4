package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.FastMath;

/** What is left beside a square, in one go where the kind of number is known. */
final class Squares {
  private Squares() {}

  /** a − b². */
  @SuppressWarnings("unchecked") // both are of one kind, and so is what comes of them
  static <T extends CalculusFieldElement<T>> T less(T a, T b) {
    if (a instanceof Binary64) {
      return (T) new Binary64(a.getReal() - b.getReal() * b.getReal());
    }
    if (a instanceof Gradient from && b instanceof Gradient of) {
      double[] slopes = from.getGradient();
      double twice = 2 * of.getValue();
      for (int i = 0; i < slopes.length; i++) {
        slopes[i] -= twice * of.getPartialDerivative(i);
      }
      return (T) new Gradient(from.getValue() - of.getValue() * of.getValue(), slopes);
    }
    return a.subtract(b.square());
  }

  /** √(1 − a²): the cosine of the acute angle, up or down, whose sine is a. */
  @SuppressWarnings("unchecked") // what comes of a number is of its kind
  static <T extends CalculusFieldElement<T>> T cosine(T sine) {
    double a = sine.getReal();
    double cosine = FastMath.sqrt(1 - a * a);
    if (sine instanceof Binary64) {
      return (T) new Binary64(cosine);
    }
    return sine instanceof Gradient slopes
        ? (T) slopes.compose(cosine, -a / cosine)
        : sine.square().negate().add(1).sqrt();
  }
}
