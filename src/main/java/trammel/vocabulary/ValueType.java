package trammel.vocabulary;

import java.lang.reflect.RecordComponent;
import java.util.List;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;
import trammel.subject.Subject;

/** What kind of value a component of a fact holds, which decides how a condition may ask of it. */
public enum ValueType {
  /** A number with unit and uncertainty: held against limits. */
  QUANTITY("a quantity"),
  /** Met, not met or open: asked by yes or no. */
  DECISION("yes or no"),
  YES_NO("yes or no"),
  COUNT("a whole number"),
  TEXT("a text"),
  /** One of a closed list of names. */
  TOKEN("one of a list of names"),
  /** Several texts: asked whether one of them is there. */
  TEXTS("a list of texts"),
  /** The place that a fact is about. */
  SUBJECT("a place on the vehicle");

  private final String words;

  ValueType(String words) {
    this.words = words;
  }

  /** As a message says it. */
  public String words() {
    return words;
  }

  static ValueType of(RecordComponent component) {
    Class<?> type = component.getType();
    if (type == Quantity.class) {
      return QUANTITY;
    } else if (type == Decision.class) {
      return DECISION;
    } else if (type == boolean.class) {
      return YES_NO;
    } else if (type == int.class) {
      return COUNT;
    } else if (type == String.class) {
      return TEXT;
    } else if (type.isEnum()) {
      return TOKEN;
    } else if (type == Subject.class) {
      return SUBJECT;
    } else if (type == List.class) {
      return TEXTS;
    }
    throw new IllegalStateException(component + " holds what no rule can ask of");
  }
}
