package trammel.judge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trammel.catalog.AssumedValue;
import trammel.fact.Evidence;
import trammel.fact.Fact;
import trammel.quantity.Input;
import trammel.quantity.Quantity;
import trammel.vocabulary.Component;
import trammel.vocabulary.Vocabulary;

/**
 * Says of what a safety-critical rule leaves open which assumed values bear on it: those that the
 * same fact rests on where they are accepted.
 */
final class NotAccepted {
  private final List<AssumedValue> assumed;
  private final Map<String, Fact> accepting;

  NotAccepted(Evidence evidence) {
    this.assumed = evidence.assumed();
    this.accepting =
        evidence.facts().stream()
            .collect(
                Collectors.toMap(NotAccepted::key, Function.identity(), (first, other) -> first));
  }

  private static String key(Fact fact) {
    return fact.getClass().getName() + "@" + fact.subject();
  }

  /** A finding by what is given, with what is not accepted for it. */
  Finding told(Finding finding) {
    Fact other = accepting.get(key(finding.fact()));
    if (!finding.decision().isOpen() || other == null) {
      return finding;
    }
    Set<AssumedValue> bearing = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Component component : Vocabulary.fact(other.getClass()).components()) {
      bearing.addAll(bearing(component.of(finding.fact()), component.of(other)));
    }
    return finding.told(assumed.stream().filter(bearing::contains).toList());
  }

  /** What makes a value another than what is given; all of it where the value does not tell. */
  private List<AssumedValue> bearing(@Nullable Object given, @Nullable Object with) {
    if (!(given instanceof Quantity known) || !(with instanceof Quantity value)) {
      return Objects.equals(given, with) ? List.of() : assumed;
    }
    if (!value.isKnown()) {
      return List.of();
    }
    Set<Input> inputs = Collections.newSetFromMap(new IdentityHashMap<>());
    collect(value, inputs, Collections.newSetFromMap(new IdentityHashMap<>()));
    List<AssumedValue> found = new ArrayList<>();
    for (AssumedValue one : assumed) {
      if (one.is().input() != null && inputs.contains(one.is().input())) {
        found.add(one);
      }
    }
    return found.isEmpty() && !known.isKnown() ? assumed : found;
  }

  private static void collect(Quantity quantity, Set<Input> inputs, Set<Quantity> seen) {
    if (!seen.add(quantity)) {
      return;
    }
    inputs.addAll(quantity.uncertainInputs());
    Input own = quantity.input();
    if (own != null) {
      inputs.add(own);
    }
    quantity.operands().forEach(operand -> collect(operand, inputs, seen));
  }
}
