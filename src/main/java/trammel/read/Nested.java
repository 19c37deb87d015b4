package trammel.read;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Quantity;

/** A quantity in records within records, by the keys that files lead to it with. */
public final class Nested {
  private Nested() {}

  /**
   * The quantity that keys lead to; empty where a record on the way is not there at all.
   *
   * @throws IllegalArgumentException if keys lead to no quantity in records of this class
   */
  public static Optional<Quantity> at(Record record, List<String> keys) {
    Object value = value(record, index(record, keys.get(0)));
    if (keys.size() > 1) {
      return value instanceof Record inner ? at(inner, rest(keys)) : Optional.empty();
    }
    if (value instanceof Quantity quantity) {
      return Optional.of(quantity);
    }
    throw new IllegalArgumentException(keys.get(0) + " is no quantity of " + record.getClass());
  }

  /**
   * The same record with another quantity where keys lead.
   *
   * @throws IllegalArgumentException if they lead to none
   */
  public static <T extends Record> T with(T record, List<String> keys, Quantity quantity) {
    RecordShape shape = RecordShape.of(record.getClass());
    int at = index(record, keys.get(0));
    List<@Nullable Object> values = new ArrayList<>();
    for (int i = 0; i < shape.components().size(); i++) {
      values.add(value(record, i));
    }
    Object old = values.get(at);
    if (keys.size() > 1 && old instanceof Record inner) {
      values.set(at, with(inner, rest(keys), quantity));
    } else if (keys.size() == 1 && old instanceof Quantity) {
      values.set(at, quantity);
    } else {
      throw new IllegalArgumentException(keys + " lead to no quantity of " + record.getClass());
    }
    try {
      @SuppressWarnings("unchecked") // made by the constructor of the record's own class
      T changed = (T) shape.constructor().newInstance(values.toArray());
      return changed;
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot make a " + record.getClass(), e);
    }
  }

  private static List<String> rest(List<String> keys) {
    return keys.subList(1, keys.size());
  }

  private static int index(Record record, String key) {
    List<RecordShape.Component> components = RecordShape.of(record.getClass()).components();
    for (int i = 0; i < components.size(); i++) {
      if (components.get(i).isWritten() && components.get(i).key().equals(key)) {
        return i;
      }
    }
    throw new IllegalArgumentException(key + " is no key of " + record.getClass());
  }

  private static @Nullable Object value(Record record, int index) {
    RecordComponent component = record.getClass().getRecordComponents()[index];
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot read " + component.getName(), e);
    }
  }
}
