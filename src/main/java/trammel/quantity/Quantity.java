package trammel.quantity;

import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A number with its dimension, its uncertainty by input and its working; or the absence of one,
 * with the reason.
 *
 * <p>Uncertainty is first order (JCGM 100:2008, 5.1.2): a quantity keeps, for every input it
 * depends on, the partial derivative times that input's expanded uncertainty (k = 2). Contributions
 * of one input add before they are squared, so that an input used twice counts once and a
 * difference of two uses cancels.
 *
 * <p>Immutable and safe to share.
 */
public final class Quantity {
  private static final Quantity[] NO_OPERANDS = {};

  private final Dimension dimension;
  private final double value;
  private final Uncertainty uncertainty;
  private final String name;
  private final @Nullable Formula formula;
  private final @Nullable Input input;
  private final Quantity[] operands;
  private final @Nullable Absence absence;

  private Quantity(
      Dimension dimension,
      double value,
      Uncertainty uncertainty,
      String name,
      @Nullable Formula formula,
      @Nullable Input input,
      Quantity[] operands,
      @Nullable Absence absence) {
    this.dimension = dimension;
    this.value = value;
    this.uncertainty = uncertainty;
    this.name = name;
    this.formula = formula;
    this.input = input;
    this.operands = operands;
    this.absence = absence;
  }

  /** An exact number that a rule or a definition states. */
  public static Quantity exact(Dimension dimension, double value) {
    return new Quantity(dimension, value, Uncertainty.NONE, "", null, null, NO_OPERANDS, null);
  }

  /**
   * A value that was read or measured.
   *
   * @param name what it is, as a fitter would say it
   * @param expanded its expanded uncertainty, k = 2, in the dimension's kept unit
   */
  public static Quantity read(
      String name, Dimension dimension, double value, double expanded, Input input) {
    if (!Double.isFinite(value) || !(expanded >= 0)) {
      throw new IllegalArgumentException(
          name + " must be a finite number, not " + value + " ± " + expanded);
    }
    return new Quantity(
        dimension, value, Uncertainty.read(input, expanded), name, null, input, NO_OPERANDS, null);
  }

  /** A value that nobody has given. */
  public static Quantity absent(Dimension dimension, Absence absence) {
    return absent(dimension, absence.what(), null, NO_OPERANDS, absence);
  }

  private static Quantity absent(
      Dimension dimension,
      String name,
      @Nullable Formula formula,
      Quantity[] operands,
      Absence absence) {
    return new Quantity(
        dimension, Double.NaN, Uncertainty.NONE, name, formula, null, operands, absence);
  }

  /**
   * A quantity by its formula; absent where an operand is.
   *
   * @param partials one partial derivative for each operand; kept, not copied
   */
  static Quantity derived(
      Formula formula, Dimension dimension, double value, double[] partials, Quantity... operands) {
    if (partials.length != operands.length) {
      throw new IllegalArgumentException(
          formula.name() + ": one partial derivative for each operand, please");
    }
    for (Quantity operand : operands) {
      if (operand.absence != null) {
        return absent(dimension, formula.name(), formula, operands, operand.absence);
      }
    }
    return derived(formula, dimension, value, operands, Uncertainty.derived(partials, operands));
  }

  /** The same from operands that are known, with an uncertainty that follows from them. */
  static Quantity derived(
      Formula formula,
      Dimension dimension,
      double value,
      Quantity[] operands,
      Uncertainty uncertainty) {
    if (!Double.isFinite(value)) {
      Absence senseless =
          new Absence(
              formula.name(),
              "its inputs give no finite number",
              Instrument.READ,
              "check the inputs of " + formula.name());
      return absent(dimension, formula.name(), formula, operands, senseless);
    }
    return new Quantity(
        dimension, value, uncertainty, formula.name(), formula, null, operands, null);
  }

  /**
   * The same value read once more, with errors of its own: what comes through an input comes
   * through the input's twin instead. Absent where this is.
   *
   * @param twin one input for each, or the input itself where both readings share its error; the
   *     same one whenever it is asked
   */
  public Quantity again(Formula formula, UnaryOperator<Input> twin) {
    return absence == null
        ? derived(formula, dimension, value, new Quantity[] {this}, Uncertainty.again(this, twin))
        : this;
  }

  /** The same quantity under another name, keeping its working. */
  public Quantity called(String newName) {
    return new Quantity(dimension, value, uncertainty, newName, formula, input, operands, absence);
  }

  public Dimension dimension() {
    return dimension;
  }

  public boolean isKnown() {
    return absence == null;
  }

  /**
   * The number, in the dimension's kept unit.
   *
   * @throws IllegalStateException if the quantity is absent
   */
  public double value() {
    if (absence != null) {
      throw new IllegalStateException(name + " is absent: " + absence.reason());
    }
    return value;
  }

  /** The number, or NaN where absent: for formulas, which carry absence by their operands. */
  double raw() {
    return value;
  }

  /** Expanded uncertainty (k = 2), in the kept unit; 0 for an exact or absent quantity. */
  public double expanded() {
    return uncertainty.shares().expanded();
  }

  /** What makes it uncertain. */
  Uncertainty uncertainty() {
    return uncertainty;
  }

  /** What it is, as a fitter would say it; empty for an exact number. */
  public String name() {
    return name;
  }

  /** Why it is missing, or null where it is not. */
  public @Nullable Absence absence() {
    return absence;
  }

  /** How it follows from its operands, or null for a value that was read. */
  public @Nullable Formula formula() {
    return formula;
  }

  /** Where it was read, or null for a derived or exact value. */
  public @Nullable Input input() {
    return input;
  }

  /** What it was derived from. */
  public List<Quantity> operands() {
    return List.of(operands);
  }

  /**
   * The part of the expanded uncertainty that comes through one input, signed, in the kept unit.
   */
  public double contribution(Input of) {
    return uncertainty.shares().of(of);
  }

  /** The inputs that make it uncertain. */
  public List<Input> uncertainInputs() {
    return List.of(uncertainty.shares().inputs());
  }

  /** Holds it against a lower limit: met if it is at least the limit. */
  public Comparison atLeast(Quantity limit) {
    return Comparison.of(this, limit, Comparison.Sense.AT_LEAST);
  }

  /** Holds it against an upper limit: met if it is at most the limit. */
  public Comparison atMost(Quantity limit) {
    return Comparison.of(this, limit, Comparison.Sense.AT_MOST);
  }

  /** Holds it against a strict lower limit: met if it is above the limit. */
  public Comparison above(Quantity limit) {
    return Comparison.of(this, limit, Comparison.Sense.ABOVE);
  }

  /** Holds it against a strict upper limit: met if it is below the limit. */
  public Comparison below(Quantity limit) {
    return Comparison.of(this, limit, Comparison.Sense.BELOW);
  }

  @Override
  public String toString() {
    if (absence != null) {
      return "absent (" + absence.reason() + ")";
    }
    double expanded = expanded();
    String unit = dimension.unit().symbol();
    return value + (unit.isEmpty() ? "" : " " + unit) + (expanded > 0 ? " ± " + expanded : "");
  }
}
