package trammel.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/**
 * The law of propagation (JCGM 100:2008, 5.1.2) over chains of random quantities, against plain
 * vectors of the mathematics library that hold one number for every input always.
 */
class UncertaintyTest {
  private static final Formula STEP = new Formula("step", "sum", "definition");

  /** A quantity beside its contributions by the library's vectors. */
  private record Both(Quantity quantity, RealVector parts) {}

  /** Random values read, then random sums of two or three of all that is there. */
  private static List<Both> chain(Random random, int inputs, int sums) {
    List<Both> all = new ArrayList<>();
    for (int i = 0; i < inputs; i++) {
      double expanded = random.nextInt(8) == 0 ? 0 : random.nextDouble() * 3;
      Input input = new Input("car.build.yaml", "value " + i, i + 1, null, Instrument.TAPE);
      RealVector parts = new ArrayRealVector(inputs);
      parts.setEntry(i, expanded);
      double value = random.nextGaussian() * 10;
      all.add(
          new Both(Quantity.read("value " + i, Dimension.LENGTH, value, expanded, input), parts));
    }
    for (int i = 0; i < sums; i++) {
      all.add(random.nextBoolean() ? sum(random, all) : based(random, all));
    }
    return all;
  }

  private static Both sum(Random random, List<Both> all) {
    double[] partials = random.doubles(random.nextInt(2) + 2L, -1, 1).toArray();
    List<Both> operands = drawn(random, all, partials.length);
    return new Both(
        STEP.linear(partials, operands.stream().map(Both::quantity).toArray(Quantity[]::new)),
        combined(partials, operands));
  }

  private static Both based(Random random, List<Both> all) {
    double[] partials = random.doubles(random.nextInt(20) + 1L, -1, 1).toArray();
    List<Both> operands = drawn(random, all, partials.length);
    Basis basis = new Basis(operands.stream().map(Both::quantity).toArray(Quantity[]::new));
    double value = 0;
    for (int i = 0; i < partials.length; i++) {
      value += partials[i] * operands.get(i).quantity().value();
    }
    return new Both(
        basis.derive(STEP, Dimension.LENGTH, value, partials), combined(partials, operands));
  }

  private static List<Both> drawn(Random random, List<Both> all, int count) {
    return random.ints(count, 0, all.size()).mapToObj(all::get).toList();
  }

  private static RealVector combined(double[] partials, List<Both> operands) {
    RealVector sum = new ArrayRealVector(operands.get(0).parts().getDimension());
    for (int i = 0; i < partials.length; i++) {
      sum = sum.add(operands.get(i).parts().mapMultiply(partials[i]));
    }
    return sum;
  }

  @Property(tries = 300)
  void aChainOfQuantitiesFollowsTheLawOfPropagation(
      @ForAll Random random, @ForAll @IntRange(min = 1, max = 40) int inputs) {
    List<Both> all = chain(random, inputs, 40);
    // Bounds first, the last of them first: bounds of bounds, before anything is gone through.
    for (int i = all.size() - 1; i >= 0; i--) {
      Both both = all.get(i);
      assertThat(both.quantity().uncertainty().most())
          .isGreaterThanOrEqualTo(both.parts().getNorm() * (1 - 1e-12));
    }
    for (Both both : all) {
      double norm = both.parts().getNorm();
      assertThat(both.quantity().expanded()).isCloseTo(norm, within(1e-12 * (1 + norm)));
    }
  }

  /** A bound that is quickly had decides only what all inputs gone through would decide too. */
  @Property(tries = 300)
  void aBoundDecidesAsTheWholeDoes(
      @ForAll Random random, @ForAll @IntRange(min = 1, max = 40) int inputs) {
    List<Both> all = chain(random, inputs, 40);
    for (int i = 0; i < 60; i++) {
      Both one = all.get(random.nextInt(all.size()));
      Both other = all.get(random.nextInt(all.size()));
      double margin = one.quantity().value() - other.quantity().value();
      double expanded = one.parts().subtract(other.parts()).getNorm();
      if (Math.abs(Math.abs(margin) - expanded) > 1e-9 * (1 + expanded)) {
        assertThat(one.quantity().atLeast(other.quantity()).decision())
            .isEqualTo(
                margin > expanded
                    ? Decision.MET
                    : margin < -expanded ? Decision.NOT_MET : Decision.UNDECIDED);
      }
    }
  }

  /** Each twice the last, by two ways: a bound that is not kept would be worked out 2⁶⁰ times. */
  @Example
  void aBoundOfExactNumbersIsWorkedOutOnce() {
    Quantity doubled = Quantity.exact(Dimension.LENGTH, 1);
    for (int i = 0; i < 60; i++) {
      doubled = STEP.linear(1, doubled, 1, doubled);
    }
    Quantity last = doubled;
    assertThat(
            assertTimeoutPreemptively(
                Duration.ofSeconds(20), () -> last.atLeast(Quantity.exact(Dimension.LENGTH, 2))))
        .extracting(Comparison::decision)
        .isEqualTo(Decision.MET);
  }

  /** Read once more, a quantity has errors of its own, but for those that both readings share. */
  @Property(tries = 100)
  void aSecondReadingSharesOnlyWhatItIsToldTo(
      @ForAll Random random, @ForAll @IntRange(min = 1, max = 40) int inputs) {
    Both both = chain(random, inputs, 40).get(inputs + random.nextInt(40));
    IdentityHashMap<Input, Input> twins = new IdentityHashMap<>();
    double shared = 0;
    for (Input input : both.quantity().uncertainInputs()) {
      if (random.nextBoolean()) {
        twins.put(
            input, new Input(input.file(), input.path() + " (right)", 1, null, input.instrument()));
      } else {
        double part = both.quantity().contribution(input);
        shared += part * part;
      }
    }
    Quantity again = both.quantity().again(STEP, input -> twins.getOrDefault(input, input));
    assertThat(again.value()).isEqualTo(both.quantity().value());
    assertThat(again.expanded()).isEqualTo(both.quantity().expanded());
    double own = Math.max(0, both.parts().dotProduct(both.parts()) - shared);
    double norm = both.parts().getNorm();
    assertThat(STEP.linear(1, both.quantity(), -1, again).expanded())
        .isCloseTo(Math.sqrt(2 * own), within(1e-7 * (1 + norm)));
  }

  @Example
  void whatFollowsFromNothingIsExact() {
    Quantity none = STEP.of(Dimension.LENGTH, 3, new double[0]);
    assertThat(none.value()).isEqualTo(3);
    assertThat(none.expanded()).isZero();
    assertThat(none.uncertainInputs()).isEmpty();
  }
}
