package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.util.Binary64;
import org.jspecify.annotations.Nullable;

/**
 * Sums of two or three products, in one go where the kind of number is known: term by term, each
 * step would make a number of its own, with thirty derivatives where there are derivatives, and
 * making them takes longer than working them out. Any other number goes term by term.
 */
final class SumOfProducts {
  private SumOfProducts() {}

  /** a b + c d. */
  static <T extends CalculusFieldElement<T>> T of(T a, T b, T c, T d) {
    return of(null, a, b, 1, c, d, null, null);
  }

  /** a b − c d. */
  static <T extends CalculusFieldElement<T>> T difference(T a, T b, T c, T d) {
    return of(null, a, b, -1, c, d, null, null);
  }

  /** a b + c d + e f. */
  static <T extends CalculusFieldElement<T>> T of(T a, T b, T c, T d, T e, T f) {
    return of(null, a, b, 1, c, d, e, f);
  }

  /** start + (a b + c d). */
  static <T extends CalculusFieldElement<T>> T from(T start, T a, T b, T c, T d) {
    return of(start, a, b, 1, c, d, null, null);
  }

  /** start + (a b + c d + e f). */
  static <T extends CalculusFieldElement<T>> T from(T start, T a, T b, T c, T d, T e, T f) {
    return of(start, a, b, 1, c, d, e, f);
  }

  @SuppressWarnings("unchecked") // numbers of one sum are of one kind, and so is what comes of them
  private static <T extends CalculusFieldElement<T>> T of(
      @Nullable T start, T a, T b, int sign, T c, T d, @Nullable T e, @Nullable T f) {
    if (a instanceof Binary64) {
      double sum = a.getReal() * b.getReal() + sign * c.getReal() * d.getReal();
      if (e != null && f != null) {
        sum += e.getReal() * f.getReal();
      }
      return (T) new Binary64(start == null ? sum : start.getReal() + sum);
    }
    if (a instanceof Gradient first) {
      return (T)
          gradient(
              (Gradient) start,
              first,
              (Gradient) b,
              sign,
              (Gradient) c,
              (Gradient) d,
              (Gradient) e,
              (Gradient) f);
    }
    T second = c.multiply(d);
    T sum = sign > 0 ? a.multiply(b).add(second) : a.multiply(b).subtract(second);
    sum = e == null || f == null ? sum : sum.add(e.multiply(f));
    return start == null ? sum : start.add(sum);
  }

  private static Gradient gradient(
      @Nullable Gradient start,
      Gradient a,
      Gradient b,
      int sign,
      Gradient c,
      Gradient d,
      @Nullable Gradient e,
      @Nullable Gradient f) {
    double[] slopes = start == null ? new double[a.getFreeParameters()] : start.getGradient();
    double sum = a.getValue() * b.getValue() + sign * c.getValue() * d.getValue();
    add(slopes, a.getValue(), b, b.getValue(), a);
    add(slopes, sign * c.getValue(), d, sign * d.getValue(), c);
    if (e != null && f != null) {
      sum += e.getValue() * f.getValue();
      add(slopes, e.getValue(), f, f.getValue(), e);
    }
    return new Gradient(start == null ? sum : start.getValue() + sum, slopes);
  }

  private static void add(
      double[] slopes, double share, Gradient of, double otherShare, Gradient other) {
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] += share * of.getPartialDerivative(i) + otherShare * other.getPartialDerivative(i);
    }
  }
}
