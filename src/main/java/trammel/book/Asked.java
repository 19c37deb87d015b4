package trammel.book;

import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trammel.vocabulary.Component;

/** What conditions ask of. */
public final class Asked {
  private Asked() {}

  /** Every component that a condition asks of, in the order of reading. */
  public static Set<Component> of(@Nullable Condition condition) {
    Set<Component> found = new LinkedHashSet<>();
    if (condition != null) {
      collect(condition, found);
    }
    return found;
  }

  private static void collect(Condition condition, Set<Component> found) {
    if (condition instanceof Condition.All all) {
      all.parts().forEach(part -> collect(part, found));
    } else if (condition instanceof Condition.Any any) {
      any.parts().forEach(part -> collect(part, found));
    } else if (condition instanceof Condition.None none) {
      none.parts().forEach(part -> collect(part, found));
    } else if (condition instanceof Condition.Some some) {
      some.leaves().forEach(leaf -> collect(leaf, found));
    } else if (condition instanceof Condition.Compare compare) {
      found.add(compare.term().component());
      if (compare.limit() instanceof Limit.Following following) {
        found.add(following.term().component());
      }
    } else if (condition instanceof Condition.Is is) {
      found.add(is.term().component());
    }
  }
}
