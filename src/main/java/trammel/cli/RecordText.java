package trammel.cli;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Quantity;
import trammel.read.Place;
import trammel.read.QuantityWriter;
import trammel.read.Words;

/** A record of the catalog as an indented list of its keys, as files write them. */
final class RecordText {
  private final StringBuilder text = new StringBuilder();

  private RecordText() {}

  static String of(Record shown) {
    RecordText page = new RecordText();
    page.record(shown, "");
    return page.text.toString();
  }

  private void record(Record shown, String indent) {
    for (RecordComponent component : shown.getClass().getRecordComponents()) {
      value(Words.kebab(component.getName()), read(shown, component), indent);
    }
  }

  private static @Nullable Object read(Record shown, RecordComponent component) {
    try {
      return component.getAccessor().invoke(shown);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot read " + component, e);
    }
  }

  private void value(String key, @Nullable Object value, String indent) {
    if (value == null || value.equals(Optional.empty())) {
      return;
    }
    if (value instanceof Quantity quantity) {
      line(indent, key, quantity(quantity));
    } else if (value instanceof Place place) {
      line(indent, "stated in", place.toString());
    } else if (value instanceof Record inner && isOurs(inner)) {
      line(indent, key, "");
      record(inner, indent + "  ");
    } else if (value instanceof Collection<?> all) {
      collection(key, all, indent);
    } else if (value instanceof Map<?, ?> map) {
      if (!map.isEmpty()) {
        line(indent, key, "");
        map.forEach((name, inner) -> value(String.valueOf(name), inner, indent + "  "));
      }
    } else if (value instanceof Enum<?> choice) {
      line(indent, key, Words.kebab(choice.name()));
    } else {
      line(indent, key, value.toString());
    }
  }

  /** Records that files write as several keys; designations are one word and print themselves. */
  private static boolean isOurs(Record inner) {
    return inner.getClass().getPackageName().equals("trammel.catalog")
        && !(inner instanceof trammel.catalog.Money);
  }

  private void collection(String key, Collection<?> all, String indent) {
    if (all.isEmpty()) {
      return;
    }
    if (all.stream().noneMatch(Record.class::isInstance)) {
      line(indent, key, String.join(", ", all.stream().map(String::valueOf).toList()));
      return;
    }
    int number = 0;
    for (Object inner : all) {
      number++;
      value(key + " " + number, inner, indent);
    }
  }

  private static String quantity(Quantity quantity) {
    if (quantity.absence() == null) {
      return QuantityWriter.uncertain(quantity);
    }
    String how = quantity.absence().how();
    return "not known" + (how.isEmpty() ? "" : "; to get it: " + how);
  }

  private void line(String indent, String key, String value) {
    text.append(indent).append(key).append(':');
    text.append(value.isEmpty() ? "" : " ").append(value).append('\n');
  }
}
