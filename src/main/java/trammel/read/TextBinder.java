package trammel.read;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Binds single values. */
final class TextBinder {
  private static final int LONGEST_COUNT = 9;

  /** The public {@code parse} of each token type, looked up once. */
  private static final ClassValue<Method> PARSERS =
      new ClassValue<>() {
        @Override
        protected Method computeValue(Class<?> type) {
          Method parser = TypeShape.parser(type);
          if (parser == null) {
            throw new IllegalStateException(type.getName() + " has no parse(String)");
          }
          parser.setAccessible(true);
          return parser;
        }
      };

  private final Problems problems;

  TextBinder(Problems problems) {
    this.problems = problems;
  }

  /** The value, or null if it was refused. */
  @Nullable Object bind(TypeShape shape, Node node) {
    if (!(node instanceof TextNode scalar)) {
      return refuse(node, shape, "Write one value after the \":\".");
    }
    String text = scalar.text();
    if (text.isBlank()) {
      return refuse(node, shape, "Write a value between the quotes, or remove the line.");
    }
    return switch (shape.kind()) {
      case TEXT -> text;
      case YES_NO -> yesNo(shape, node, text);
      case COUNT -> count(shape, node, text);
      case DATE -> date(shape, node, text);
      case CHOICE -> {
        var choices = Choices.of(shape.type());
        String name = choice(node, choices.keySet());
        yield name == null ? null : choices.get(name);
      }
      case TOKEN -> token(shape, node, text);
      default -> throw new IllegalStateException(shape + " is no single value");
    };
  }

  private @Nullable Object refuse(Node node, TypeShape shape, String advice) {
    problems.add(
        node.place(),
        node.where() + ": found " + node.words() + "; expected " + expected(shape, null),
        advice);
    return null;
  }

  private @Nullable Object yesNo(TypeShape shape, Node node, String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "yes", "true" -> true;
      case "no", "false" -> false;
      default -> refuse(node, shape, "Write yes or no.");
    };
  }

  private @Nullable Object count(TypeShape shape, Node node, String text) {
    String digits = text.startsWith("-") ? text.substring(1) : text;
    boolean whole =
        !digits.isEmpty()
            && digits.length() <= LONGEST_COUNT
            && digits.chars().allMatch(c -> c >= '0' && c <= '9');
    return whole ? Integer.valueOf(text) : refuse(node, shape, "Write digits only, for example 5.");
  }

  private @Nullable Object date(TypeShape shape, Node node, String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      return refuse(node, shape, "Write year, month and day with hyphens.");
    }
  }

  /** The choice that a text names, or null if it names none. */
  @Nullable String choice(Node node, Collection<String> choices) {
    if (node instanceof TextNode scalar && choices.contains(scalar.text())) {
      return scalar.text();
    }
    String advice = "Write one of these values.";
    problems.add(
        node.place(),
        node.where() + ": found " + node.words() + "; expected " + Words.anyOf(choices),
        node instanceof TextNode scalar
            ? Words.didYouMean(scalar.text(), choices, advice)
            : advice);
    return null;
  }

  private @Nullable Object token(TypeShape shape, Node node, String text) {
    try {
      return PARSERS.get(shape.type()).invoke(null, text);
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof IllegalArgumentException complaint) {
        Refusal refusal = Refusal.of(complaint, "Correct the value.");
        problems.add(node.place(), node.where() + ": " + refusal.what(), refusal.advice());
        return null;
      }
      throw new IllegalStateException(shape.type().getName() + " cannot be parsed", e.getCause());
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(shape.type().getName() + " cannot be parsed", e);
    }
  }

  /** What a value should be, in words. */
  String expected(TypeShape shape, RecordShape.@Nullable Component component) {
    return switch (shape.kind()) {
      case TEXT -> "a text";
      case YES_NO -> "yes or no";
      case COUNT -> "a whole number";
      case DATE -> "a date such as 2026-11-25";
      case CHOICE -> Words.anyOf(Choices.of(shape.type()).keySet());
      case TOKEN -> Words.withArticle(Words.spaced(Words.kebab(shape.type().getSimpleName())));
      case QUANTITY ->
          component == null || component.measured() == null
              ? "a quantity"
              : Words.withArticle(component.measured().value().words()) + " with its unit";
      case LIST -> "a list";
      case MAP, RECORD, VARIANT, PLACE, NODE -> "keys and values";
    };
  }
}
