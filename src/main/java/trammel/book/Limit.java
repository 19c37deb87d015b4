package trammel.book;

import org.jspecify.annotations.Nullable;
import trammel.fact.Fact;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;

/** What a quantity is held against. */
public sealed interface Limit {

  /** The limit where these facts are judged. */
  Quantity of(Fact about, @Nullable Fact joined);

  /**
   * A limit that the rule states.
   *
   * @param value exact, in its own dimension
   */
  record Stated(Quantity value) implements Limit {
    @Override
    public Quantity of(Fact about, @Nullable Fact joined) {
      return value;
    }

    @Override
    public String toString() {
      return value.toString();
    }
  }

  /**
   * A limit that follows from another value: {@code times · term + plus}.
   *
   * @param plus exact, in the term's dimension
   */
  record Following(Term term, double times, Quantity plus) implements Limit {
    private static final Formula LIMIT =
        new Formula("limit", "factor · value + addition", "the rule states it");

    @Override
    public Quantity of(Fact about, @Nullable Fact joined) {
      Quantity value = term.quantity(about, joined, plus.dimension());
      return times == 1 && plus.value() == 0 ? value : LIMIT.linear(times, value, 1, plus);
    }

    @Override
    public String toString() {
      return times + " · " + term + " + " + plus;
    }
  }
}
