package trammel.derive;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.function.Function;

/**
 * Answers, each worked out once for its question. Where two threads ask at once both may work it
 * out, and both get what was ready first: one value read is one source of error, whoever asks.
 *
 * @param <K> a question
 * @param <V> its answer
 */
final class Memo<K, V> {
  /** Mostly twelve at the most, four wheels in three stages: such a table need not grow. */
  private static final int ROOM = 16;

  private final ConcurrentMap<K, V> answers = new ConcurrentHashMap<>(ROOM);

  /** The answer to a question, worked out if nobody has asked before. */
  V get(K question, Function<? super K, ? extends V> work) {
    V known = answers.get(question);
    if (known != null) {
      return known;
    }
    V worked = work.apply(question);
    V first = answers.putIfAbsent(question, worked);
    return first == null ? worked : first;
  }
}
