package trammel.derive;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A {@link Memo} that keeps only the answers that were asked for last: of builds derived one after
 * another, most ask for the same.
 *
 * @param <K> a question
 * @param <V> its answer
 */
final class Latest<K, V> {
  /** How many answers are kept. */
  private static final int KEPT = 32;

  private final Map<K, V> answers = new LinkedHashMap<>(16, 0.75f, true);

  /** The answer to a question, worked out if nobody has asked for long. */
  V get(K question, Supplier<? extends V> work) {
    V known = known(question);
    return known == null ? first(question, work.get()) : known;
  }

  private synchronized @Nullable V known(K question) {
    return answers.get(question);
  }

  private synchronized V first(K question, V worked) {
    V earlier = answers.putIfAbsent(question, worked);
    if (answers.size() > KEPT) {
      answers.remove(answers.keySet().iterator().next());
    }
    return earlier == null ? worked : earlier;
  }
}
