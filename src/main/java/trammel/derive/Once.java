package trammel.derive;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * An answer that is worked out when it is first asked for. Where two threads ask at once both may
 * work it out: only for what follows from quantities without a new source of error.
 *
 * @param <T> the answer
 */
final class Once<T> {
  private final Supplier<T> work;
  private volatile @Nullable T answer;

  Once(Supplier<T> work) {
    this.work = work;
  }

  /** The answer. */
  T get() {
    T known = answer;
    if (known == null) {
      known = work.get();
      answer = known;
    }
    return known;
  }
}
