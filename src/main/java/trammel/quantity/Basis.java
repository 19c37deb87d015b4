package trammel.quantity;

import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Uncertainty.Merge;
import trammel.quantity.Uncertainty.Shares;

/**
 * Known quantities that many others are derived from: what of each input stands where is told once.
 */
public final class Basis {
  private final Quantity[] operands;
  private final boolean known;

  private @Nullable Places places;
  private @Nullable Bounds bounds;

  /** The inputs of all operands, and where among them each operand's own stand. */
  private static final class Places {
    private final Input[] inputs;

    /** Of each operand's each input: which operand, what comes through it, its place. */
    private final int[] operand;

    private final double[] part;
    private final int[] place;

    Places(Input[] inputs, int[] operand, double[] part, int[] place) {
      this.inputs = inputs;
      this.operand = operand;
      this.part = part;
      this.place = place;
    }
  }

  /** Bounds of what comes through the operands. */
  private static final class Bounds {
    private final double[] most;

    /** Whether an operand was read, and none before it at the same place. */
    private final boolean[] alone;

    Bounds(Quantity[] operands) {
      most = new double[operands.length];
      alone = new boolean[operands.length];
      Set<Input> read = Collections.newSetFromMap(new IdentityHashMap<>());
      for (int i = 0; i < operands.length; i++) {
        most[i] = operands[i].uncertainty().most();
        Input input = operands[i].input();
        alone[i] = input != null && read.add(input);
      }
    }
  }

  /** Many quantities' common operands. */
  public Basis(Quantity... operands) {
    this.operands = operands.clone();
    known = Arrays.stream(operands).allMatch(Quantity::isKnown);
  }

  /**
   * A quantity by its formula, with one partial derivative for each operand; absent where an
   * operand is.
   *
   * @param partials kept, not copied
   * @throws IllegalArgumentException if there are more or fewer
   */
  public Quantity derive(Formula formula, Dimension dimension, double value, double[] partials) {
    return known && partials.length == operands.length
        ? Quantity.derived(formula, dimension, value, operands, Uncertainty.derived(partials, this))
        : Quantity.derived(formula, dimension, value, partials, operands);
  }

  /** What comes through each input with a partial derivative by each operand. */
  Shares shares(double[] partials) {
    Places found = places;
    if (found == null) {
      found = told();
      places = found;
    }
    double[] parts = new double[found.inputs.length];
    for (int i = 0; i < found.place.length; i++) {
      parts[found.place[i]] += partials[found.operand[i]] * found.part[i];
    }
    return new Shares(found.inputs, parts);
  }

  /**
   * A bound of what comes through all of them: values read, each by itself, add by their squares,
   * all else as though its errors were one with theirs.
   */
  double most(double[] partials) {
    Bounds found = bounds;
    if (found == null) {
      found = new Bounds(operands);
      bounds = found;
    }
    double squares = 0;
    double others = 0;
    for (int i = 0; i < operands.length; i++) {
      double part = partials[i] * found.most[i];
      if (found.alone[i]) {
        squares += part * part;
      } else {
        others += Math.abs(part);
      }
    }
    return Math.sqrt(squares) + others;
  }

  private Places told() {
    int all = 0;
    for (Quantity operand : operands) {
      all += operand.uncertainty().shares().inputs().length;
    }
    Merge merge = new Merge(all);
    for (Quantity operand : operands) {
      merge.add(operand.uncertainty().shares(), 1);
    }
    int[] operand = new int[all];
    double[] part = new double[all];
    int[] place = new int[all];
    int next = 0;
    for (int which = 0; which < operands.length; which++) {
      Shares shares = operands[which].uncertainty().shares();
      for (int i = 0; i < shares.inputs().length; i++) {
        operand[next] = which;
        part[next] = shares.parts()[i];
        place[next++] = merge.place(shares.inputs()[i]);
      }
    }
    return new Places(merge.shares().inputs(), operand, part, place);
  }
}
