package trammel.book;

import org.jspecify.annotations.Nullable;
import trammel.fact.Fact;
import trammel.quantity.Absence;
import trammel.quantity.Dimension;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.vocabulary.Component;

/**
 * A component that a condition asks of.
 *
 * @param other whether it is of the joined fact rather than of the one that is judged
 */
public record Term(Component component, boolean other) {

  /** What the fact holds there. */
  @Nullable Object value(Fact about, @Nullable Fact joined) {
    return component.of(other && joined != null ? joined : about);
  }

  /** The quantity there; absent, never an error, where the fact holds none. */
  Quantity quantity(Fact about, @Nullable Fact joined, Dimension expected) {
    return value(about, joined) instanceof Quantity quantity && quantity.dimension() == expected
        ? quantity
        : Quantity.absent(
            expected,
            new Absence(component.words(), "the fact does not hold it", Instrument.READ, ""));
  }

  @Override
  public String toString() {
    return component.name();
  }
}
