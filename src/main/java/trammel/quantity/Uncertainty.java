package trammel.quantity;

import java.util.Arrays;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * What makes a quantity uncertain: the inputs behind it and how much comes through each.
 *
 * <p>Most quantities on the way to a verdict are asked for their value alone, or are so far from
 * every limit that a bound decides. Inputs are therefore gone through when they are first asked
 * for; several threads may then do so at once and find the same.
 */
final class Uncertainty {
  private static final Input[] NO_INPUTS = {};
  private static final double[] NO_PARTS = {};
  private static final Quantity[] NO_OPERANDS = {};

  private static final Shares EXACT = new Shares(NO_INPUTS, NO_PARTS);

  /** None: exact numbers and absent ones. */
  static final Uncertainty NONE = new Uncertainty(EXACT);

  private final double[] partials;
  private final Quantity[] operands;
  private final @Nullable Basis basis;
  private final @Nullable UnaryOperator<Input> twin;
  private @Nullable Shares shares;

  /** The bound; 0 until somebody asks. Volatile: no thread may see half a number. */
  private volatile double most;

  private Uncertainty(
      double[] partials,
      Quantity[] operands,
      @Nullable Basis basis,
      @Nullable UnaryOperator<Input> twin) {
    this.partials = partials;
    this.operands = operands;
    this.basis = basis;
    this.twin = twin;
  }

  private Uncertainty(Shares shares) {
    this(NO_PARTS, NO_OPERANDS, null, null);
    this.shares = shares;
  }

  /** That of a value that was read. */
  static Uncertainty read(Input input, double expanded) {
    return expanded == 0
        ? NONE
        : new Uncertainty(new Shares(new Input[] {input}, new double[] {expanded}));
  }

  /** That of a value derived from operands, with a partial derivative by each. */
  static Uncertainty derived(double[] partials, Quantity[] operands) {
    return new Uncertainty(partials, operands, null, null);
  }

  /** The same where many values have these operands in common. */
  static Uncertainty derived(double[] partials, Basis basis) {
    return new Uncertainty(partials, NO_OPERANDS, basis, null);
  }

  /** That of a quantity read once more, where each input counts as its twin. */
  static Uncertainty again(Quantity operand, UnaryOperator<Input> twin) {
    return new Uncertainty(new double[] {1}, new Quantity[] {operand}, null, twin);
  }

  /** What comes through each input. */
  Shares shares() {
    Shares found = shares;
    if (found == null) {
      found = basis == null ? merged() : basis.shares(partials);
      found = twin == null ? found : found.of(twin);
      shares = found;
    }
    return found;
  }

  /**
   * A bound of the expanded uncertainty that is quickly had: the sum of what comes through the
   * operands, as though all their errors were one.
   */
  double most() {
    Shares found = shares;
    if (found != null) {
      return found.expanded();
    }
    double known = most;
    if (known == 0) {
      known = basis == null ? sum() : basis.most(partials);
      most = known;
    }
    // What has no error has no shares either, and those are kept.
    return known == 0 ? shares().expanded() : known;
  }

  /** The sum of what comes through the operands. */
  private double sum() {
    double sum = 0;
    for (int i = 0; i < operands.length; i++) {
      sum += Math.abs(partials[i]) * operands[i].uncertainty().most();
    }
    return sum;
  }

  private Shares merged() {
    // The one with most inputs goes first: its list is taken as it is, and mostly has the others'.
    Shares longest = EXACT;
    int first = 0;
    int all = 0;
    for (int i = 0; i < operands.length; i++) {
      Shares each = operands[i].uncertainty().shares();
      all += each.count();
      if (each.count() > longest.count()) {
        longest = each;
        first = i;
      }
    }
    if (all == 0) {
      return EXACT;
    }
    return switch (all - longest.count()) {
      case 0 -> longest.times(partials[first]);
      case 1 -> withOne(longest, first);
      default -> withSeveral(longest, first, all);
    };
  }

  /** With the one input that all others of the operands have: more than half of all are such. */
  private Shares withOne(Shares longest, int first) {
    int other = 0;
    while (other == first || operands[other].uncertainty().shares().count() == 0) {
      other++;
    }
    Shares one = operands[other].uncertainty().shares();
    return longest.plus(partials[first], one.inputs[0], partials[other] * one.parts[0]);
  }

  private Shares withSeveral(Shares longest, int first, int all) {
    Merge merge = new Merge(all);
    merge.add(longest, partials[first]);
    for (int i = 0; i < operands.length; i++) {
      if (i != first) {
        merge.add(operands[i].uncertainty().shares(), partials[i]);
      }
    }
    return merge.shares();
  }

  /** How much comes through each input, and all of it together. */
  static final class Shares {
    private final Input[] inputs;
    private final double[] parts;

    /** All of it; 0 until somebody asks. Volatile: no thread may see half a number. */
    private volatile double expanded;

    /**
     * Shares of inputs.
     *
     * @param inputs each once
     * @param parts of the expanded uncertainty (k = 2), signed, one for each input
     */
    Shares(Input[] inputs, double[] parts) {
      this.inputs = inputs;
      this.parts = parts;
    }

    private static double rootSumOfSquares(double[] parts) {
      double sum = 0;
      for (double part : parts) {
        sum += part * part;
      }
      return Math.sqrt(sum);
    }

    /** Each of them through the input's twin. */
    private Shares of(UnaryOperator<Input> twin) {
      Input[] twins = new Input[inputs.length];
      for (int i = 0; i < inputs.length; i++) {
        twins[i] = twin.apply(inputs[i]);
      }
      return new Shares(twins, parts);
    }

    /** Each of them times a factor. */
    private Shares times(double factor) {
      if (factor == 1) {
        return this;
      }
      return new Shares(inputs, scaled(factor, parts.length));
    }

    /** Each of them times a factor, and what comes through one input, theirs or another. */
    private Shares plus(double factor, Input input, double part) {
      for (int i = 0; i < inputs.length; i++) {
        if (inputs[i] == input) {
          double[] sum = scaled(factor, inputs.length);
          sum[i] += part;
          return new Shares(inputs, sum);
        }
      }
      Input[] more = Arrays.copyOf(inputs, inputs.length + 1);
      more[inputs.length] = input;
      double[] sum = scaled(factor, more.length);
      sum[inputs.length] = part;
      return new Shares(more, sum);
    }

    private double[] scaled(double factor, int room) {
      double[] scaled = new double[room];
      for (int i = 0; i < parts.length; i++) {
        scaled[i] = factor * parts[i];
      }
      return scaled;
    }

    private int count() {
      return parts.length;
    }

    /** The inputs; not to be changed. */
    Input[] inputs() {
      return inputs;
    }

    /** One for each input; not to be changed. */
    double[] parts() {
      return parts;
    }

    /** All of it, k = 2. */
    double expanded() {
      double known = expanded;
      if (known == 0) {
        known = rootSumOfSquares(parts);
        expanded = known;
      }
      return known;
    }

    /** What comes through one input. */
    double of(Input input) {
      for (int i = 0; i < inputs.length; i++) {
        if (inputs[i] == input) {
          return parts[i];
        }
      }
      return 0;
    }
  }

  /** Adds contributions input by input. */
  static final class Merge {
    private Input[] inputs = NO_INPUTS;
    private final double[] parts;
    private int count;

    /**
     * Nothing yet.
     *
     * @param most how many will be added at the most
     */
    Merge(int most) {
      parts = new double[most];
    }

    /** Adds an operand's contributions, each times a factor. */
    void add(Shares operand, double partial) {
      if (count == 0) {
        inputs = operand.inputs;
        count = inputs.length;
        for (int i = 0; i < count; i++) {
          parts[i] = partial * operand.parts[i];
        }
      } else if (operand.inputs == inputs) {
        // Of one basis, as where two ends of one linkage are compared.
        for (int i = 0; i < count; i++) {
          parts[i] += partial * operand.parts[i];
        }
      } else {
        addEach(operand, partial);
      }
    }

    private void addEach(Shares operand, double partial) {
      int before = count;
      int last = operand.inputs.length;
      int same = sameBeginning(operand.inputs);
      for (int i = 0; i < same; i++) {
        parts[i] += partial * operand.parts[i];
      }
      // Where the next one is looked for first: operands mostly have their inputs in one order.
      int next = same;
      for (int i = same; i < last; i++) {
        Input input = operand.inputs[i];
        int at = find(input, next, before);
        if (at >= 0) {
          parts[at] += partial * operand.parts[i];
          next = at + 1;
        } else {
          makeRoom();
          inputs[count] = input;
          parts[count++] = partial * operand.parts[i];
        }
      }
    }

    /** How many inputs of another list stand where they stand in this one. */
    private int sameBeginning(Input[] others) {
      int end = Math.min(count, others.length);
      int same = 0;
      while (same < end && inputs[same] == others[same]) {
        same++;
      }
      return same;
    }

    /**
     * A list with room for all, in place of the first operand's own, which is not to be changed.
     */
    private void makeRoom() {
      if (inputs.length < parts.length) {
        inputs = Arrays.copyOf(inputs, parts.length);
      }
    }

    private int find(Input input, int from, int end) {
      for (int i = from; i < end; i++) {
        if (inputs[i] == input) {
          return i;
        }
      }
      for (int i = Math.min(from, end) - 1; i >= 0; i--) {
        if (inputs[i] == input) {
          return i;
        }
      }
      return -1;
    }

    /** Where an input that was added stands. */
    int place(Input input) {
      return find(input, 0, count);
    }

    Shares shares() {
      return new Shares(
          count == inputs.length ? inputs : Arrays.copyOf(inputs, count),
          count == parts.length ? parts : Arrays.copyOf(parts, count));
    }
  }
}
