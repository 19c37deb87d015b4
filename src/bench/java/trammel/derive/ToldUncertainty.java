package trammel.derive;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import trammel.quantity.Quantity;

/**
 * Asks every quantity in a tree of records and lists for its uncertainty, as a page that prints
 * them does: quantities work it out when they are first asked.
 */
final class ToldUncertainty {
  private static final ClassValue<Method[]> PARTS =
      new ClassValue<>() {
        @Override
        protected Method[] computeValue(Class<?> type) {
          Method[] parts =
              Arrays.stream(type.getRecordComponents())
                  .map(RecordComponent::getAccessor)
                  .toArray(Method[]::new);
          Arrays.stream(parts).forEach(part -> part.setAccessible(true));
          return parts;
        }
      };

  private ToldUncertainty() {}

  /** The sum of all, so that none is left out. */
  static double of(Object told) {
    if (told instanceof Quantity quantity) {
      return quantity.expanded();
    }
    double sum = 0;
    if (told instanceof List<?> list) {
      for (Object each : list) {
        sum += of(each);
      }
    } else if (told instanceof Record) {
      for (Method part : PARTS.get(told.getClass())) {
        try {
          sum += of(part.invoke(told));
        } catch (ReflectiveOperationException e) {
          throw new IllegalStateException(e);
        }
      }
    }
    return sum;
  }
}
