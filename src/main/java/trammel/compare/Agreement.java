package trammel.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import trammel.build.MeasuredFile;
import trammel.derive.Predictions;
import trammel.quantity.Input;
import trammel.quantity.Quantity;

/**
 * A finished vehicle against what was predicted of it.
 *
 * @param deviations of every measured value that was predicted
 * @param unforetold measured values that nothing foretells
 * @param explanations values whose shift would settle all deviations, likeliest first; empty where
 *     all agree, and where nothing on the sheet explains what does not
 * @param holes other holes of a bracket with which all would agree
 */
public record Agreement(
    List<Deviation> deviations,
    List<Pair> unforetold,
    List<Explanation> explanations,
    List<Predictions.OtherHole> holes) {
  /** More than a person would follow up. */
  private static final int MOST = 3;

  /** Holds every measured value against its prediction. */
  public static Agreement of(MeasuredFile file, Predictions predictions) {
    Agreement stated = of(pairs(file, predictions));
    if (stated.deviations.stream().allMatch(Deviation::agrees)) {
      return stated;
    }
    return new Agreement(
        stated.deviations,
        stated.unforetold,
        stated.explanations,
        predictions.otherHoles().stream()
            .filter(other -> of(pairs(file, other.then())).agrees())
            .toList());
  }

  private static List<Pair> pairs(MeasuredFile file, Predictions predictions) {
    return Arrays.stream(Kind.values())
        .flatMap(kind -> kind.pairs(file, predictions).stream())
        .toList();
  }

  /** Holds pairs of measured and predicted values against each other. */
  public static Agreement of(List<Pair> pairs) {
    List<Deviation> deviations =
        pairs.stream().filter(pair -> pair.predicted().isKnown()).map(Deviation::of).toList();
    return new Agreement(
        deviations,
        pairs.stream().filter(pair -> !pair.predicted().isKnown()).toList(),
        deviations.stream().allMatch(Deviation::agrees) ? List.of() : explain(deviations),
        List.of());
  }

  /** Whether there is something to compare, and all of it agrees. */
  public boolean agrees() {
    return !deviations.isEmpty() && deviations.stream().allMatch(Deviation::agrees);
  }

  private static List<Explanation> explain(List<Deviation> deviations) {
    double[] differences = deviations.stream().mapToDouble(Deviation::difference).toArray();
    double[][] covariance = covariance(deviations);
    record Tried(Explanation explanation, double implausibility) {}
    List<Tried> tried = new ArrayList<>();
    for (Map.Entry<Input, Quantity> each : inputs(deviations).entrySet()) {
      double[] sensitivity =
          deviations.stream()
              .mapToDouble(each2 -> each2.pair().predicted().contribution(each.getKey()) / 2)
              .toArray();
      SingleShift fit = SingleShift.of(differences, covariance, sensitivity);
      if (Math.abs(fit.shift()) <= Explanation.LIKELY && fit.settlesAll()) {
        Quantity read = each.getValue();
        double wanted = read.value() + fit.shift() * read.expanded() / 2;
        tried.add(new Tried(new Explanation(read, fit.shift(), wanted), fit.implausibility()));
      }
    }
    return tried.stream()
        .sorted(Comparator.comparingDouble(Tried::implausibility))
        .limit(MOST)
        .map(Tried::explanation)
        .toList();
  }

  /**
   * The covariance of the deviations: what predictions share by input, and each reading's own
   * variance (JCGM 100:2008, F.1.2.3, for the shared part).
   */
  static double[][] covariance(List<Deviation> deviations) {
    int count = deviations.size();
    double[][] covariance = new double[count][count];
    for (int i = 0; i < count; i++) {
      Quantity one = deviations.get(i).pair().predicted();
      for (int j = 0; j <= i; j++) {
        Quantity other = deviations.get(j).pair().predicted();
        double sum = 0;
        for (Input input : one.uncertainInputs()) {
          sum += one.contribution(input) / 2 * (other.contribution(input) / 2);
        }
        covariance[i][j] = sum;
        covariance[j][i] = sum;
      }
      double reading = deviations.get(i).pair().measured().expanded() / 2;
      covariance[i][i] += reading * reading;
    }
    return covariance;
  }

  /** Every uncertain input that a prediction depends on, with the value that was read there. */
  private static Map<Input, Quantity> inputs(List<Deviation> deviations) {
    Map<Input, Quantity> read = new LinkedHashMap<>();
    Set<Quantity> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Stream<Quantity> predicted = deviations.stream().map(each -> each.pair().predicted());
    predicted.forEach(quantity -> collect(quantity, read, seen));
    Set<Input> moves = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Deviation deviation : deviations) {
      Quantity quantity = deviation.pair().predicted();
      quantity.uncertainInputs().stream()
          .filter(input -> quantity.contribution(input) != 0)
          .forEach(moves::add);
    }
    read.keySet().retainAll(moves);
    return read;
  }

  private static void collect(Quantity quantity, Map<Input, Quantity> read, Set<Quantity> seen) {
    if (!seen.add(quantity)) {
      return;
    }
    Input input = quantity.input();
    if (input != null && quantity.expanded() > 0) {
      read.putIfAbsent(input, quantity);
    }
    quantity.operands().forEach(operand -> collect(operand, read, seen));
  }
}
