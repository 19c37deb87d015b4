package trammel.derive;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/**
 * An answer that is worked out when it is first asked for. Where two threads ask at once both may
 * work it out, and both get what was ready first.
 *
 * @param <T> the answer
 */
final class Once<T> {
  private final Supplier<? extends T> work;
  private final AtomicReference<T> answer = new AtomicReference<>();

  Once(Supplier<? extends T> work) {
    this.work = work;
  }

  /** The answer. */
  T get() {
    T known = answer.get();
    if (known != null) {
      return known;
    }
    T worked = work.get();
    return answer.compareAndSet(null, worked) ? worked : answer.get();
  }
}
