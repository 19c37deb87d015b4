package trammel.quantity;

import java.util.Arrays;
import java.util.List;
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
  private static final Input[] NO_INPUTS = {};
  private static final double[] NO_PARTS = {};
  private static final Quantity[] NO_OPERANDS = {};

  private final Dimension dimension;
  private final double value;
  private final Input[] inputs;
  private final double[] parts;
  private final double expanded;
  private final String name;
  private final @Nullable Formula formula;
  private final @Nullable Input input;
  private final Quantity[] operands;
  private final @Nullable Absence absence;

  private Quantity(
      Dimension dimension,
      double value,
      Input[] inputs,
      double[] parts,
      String name,
      @Nullable Formula formula,
      @Nullable Input input,
      Quantity[] operands,
      @Nullable Absence absence) {
    this.dimension = dimension;
    this.value = value;
    this.inputs = inputs;
    this.parts = parts;
    this.expanded = rootSumOfSquares(parts);
    this.name = name;
    this.formula = formula;
    this.input = input;
    this.operands = operands;
    this.absence = absence;
  }

  private static double rootSumOfSquares(double[] parts) {
    double sum = 0;
    for (double part : parts) {
      sum += part * part;
    }
    return Math.sqrt(sum);
  }

  /** An exact number that a rule or a definition states. */
  public static Quantity exact(Dimension dimension, double value) {
    return new Quantity(dimension, value, NO_INPUTS, NO_PARTS, "", null, null, NO_OPERANDS, null);
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
    boolean sure = expanded == 0;
    return new Quantity(
        dimension,
        value,
        sure ? NO_INPUTS : new Input[] {input},
        sure ? NO_PARTS : new double[] {expanded},
        name,
        null,
        input,
        NO_OPERANDS,
        null);
  }

  /** A value that nobody has given. */
  public static Quantity absent(Dimension dimension, Absence absence) {
    return new Quantity(
        dimension,
        Double.NaN,
        NO_INPUTS,
        NO_PARTS,
        absence.what(),
        null,
        null,
        NO_OPERANDS,
        absence);
  }

  static Quantity derived(
      Formula formula, Dimension dimension, double value, double[] partials, Quantity... operands) {
    if (partials.length != operands.length) {
      throw new IllegalArgumentException(
          formula.name() + ": one partial derivative for each operand, please");
    }
    for (Quantity operand : operands) {
      if (operand.absence != null) {
        return new Quantity(
            dimension,
            Double.NaN,
            NO_INPUTS,
            NO_PARTS,
            formula.name(),
            formula,
            null,
            operands,
            operand.absence);
      }
    }
    if (!Double.isFinite(value)) {
      Absence senseless =
          new Absence(
              formula.name(),
              "its inputs give no finite number",
              Instrument.READ,
              "check the inputs of " + formula.name());
      return new Quantity(
          dimension,
          Double.NaN,
          NO_INPUTS,
          NO_PARTS,
          formula.name(),
          formula,
          null,
          operands,
          senseless);
    }
    Merge merge = new Merge(operands);
    for (int i = 0; i < operands.length; i++) {
      merge.add(operands[i], partials[i]);
    }
    return derived(formula, dimension, value, merge.inputs(), merge.parts(), operands);
  }

  private static Quantity derived(
      Formula formula,
      Dimension dimension,
      double value,
      Input[] inputs,
      double[] parts,
      Quantity[] operands) {
    return new Quantity(
        dimension, value, inputs, parts, formula.name(), formula, null, operands, null);
  }

  /**
   * Known quantities that many others are derived from: what of each input stands where is told
   * once.
   */
  public static final class Basis {
    private final Quantity[] operands;
    private final Input[] inputs;

    /** Place among the inputs of each operand's own, operand by operand. */
    private final int[] places;

    private final boolean known;

    /** Many quantities' common operands. */
    public Basis(Quantity... operands) {
      this.operands = operands.clone();
      Merge merge = new Merge(operands);
      int all = 0;
      for (Quantity operand : operands) {
        merge.add(operand, 1);
        all += operand.inputs.length;
      }
      known = Arrays.stream(operands).allMatch(Quantity::isKnown);
      inputs = merge.inputs();
      places = new int[all];
      int place = 0;
      for (Quantity operand : operands) {
        for (Input input : operand.inputs) {
          places[place++] = merge.find(input, inputs.length);
        }
      }
    }

    /**
     * A quantity by its formula, with one partial derivative for each operand; absent where an
     * operand is.
     *
     * @throws IllegalArgumentException if there are more or fewer
     */
    public Quantity derive(Formula formula, Dimension dimension, double value, double[] partials) {
      if (!known || partials.length != operands.length || !Double.isFinite(value)) {
        return Quantity.derived(formula, dimension, value, partials, operands);
      }
      double[] parts = new double[inputs.length];
      int place = 0;
      for (int i = 0; i < operands.length; i++) {
        for (double part : operands[i].parts) {
          parts[places[place++]] += partials[i] * part;
        }
      }
      return Quantity.derived(formula, dimension, value, inputs, parts, operands);
    }
  }

  /** Adds contributions input by input. */
  private static final class Merge {
    private final Input[] inputs;
    private final double[] parts;
    private int count;
    private Input @Nullable [] first;

    /** Where the next one is looked for first: operands mostly have their inputs in one order. */
    private int next;

    Merge(Quantity[] operands) {
      int most = 0;
      for (Quantity operand : operands) {
        most += operand.inputs.length;
      }
      inputs = most == 0 ? NO_INPUTS : new Input[most];
      parts = most == 0 ? NO_PARTS : new double[most];
    }

    void add(Quantity operand, double partial) {
      if (operand.inputs == first) {
        // Of one basis, as where two ends of one linkage are compared.
        for (int i = 0; i < operand.parts.length; i++) {
          parts[i] += partial * operand.parts[i];
        }
        return;
      }
      first = count == 0 ? operand.inputs : first;
      int before = count;
      next = 0;
      for (int i = 0; i < operand.inputs.length; i++) {
        int at = find(operand.inputs[i], before);
        if (at < 0) {
          inputs[count] = operand.inputs[i];
          parts[count++] = partial * operand.parts[i];
        } else {
          parts[at] += partial * operand.parts[i];
          next = at + 1;
        }
      }
    }

    private int find(Input input, int end) {
      for (int i = next; i < end; i++) {
        if (inputs[i] == input) {
          return i;
        }
      }
      for (int i = Math.min(next, end) - 1; i >= 0; i--) {
        if (inputs[i] == input) {
          return i;
        }
      }
      return -1;
    }

    Input[] inputs() {
      return count == inputs.length ? inputs : Arrays.copyOf(inputs, count);
    }

    double[] parts() {
      return count == parts.length ? parts : Arrays.copyOf(parts, count);
    }
  }

  /** The same quantity under another name, keeping its working. */
  public Quantity called(String newName) {
    return new Quantity(
        dimension, value, inputs, parts, newName, formula, input, operands, absence);
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
    return expanded;
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
    for (int i = 0; i < inputs.length; i++) {
      if (inputs[i] == of) {
        return parts[i];
      }
    }
    return 0;
  }

  /** The inputs that make it uncertain. */
  public List<Input> uncertainInputs() {
    return List.of(inputs);
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
    String unit = dimension.unit().symbol();
    return value + (unit.isEmpty() ? "" : " " + unit) + (expanded > 0 ? " ± " + expanded : "");
  }
}
