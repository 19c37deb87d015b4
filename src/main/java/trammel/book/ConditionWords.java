package trammel.book;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trammel.fact.PartOnVehicle;
import trammel.fact.Vehicle;
import trammel.quantity.Comparison;
import trammel.quantity.Decision;
import trammel.quantity.Quantity;
import trammel.read.QuantityWriter;
import trammel.read.Words;

/** Conditions, and how they came out, in words. */
public final class ConditionWords {
  private ConditionWords() {}

  /** A condition as half a sentence: {@code gap at least 12 mm}. */
  public static String of(Condition condition) {
    if (condition instanceof Condition.All all) {
      return joined(all.parts(), " and ");
    } else if (condition instanceof Condition.Any any) {
      return any.parts().isEmpty() ? "nothing" : joined(any.parts(), " or ");
    } else if (condition instanceof Condition.None none) {
      return "not "
          + (none.parts().size() == 1
              ? "(" + joined(none.parts(), "") + ")"
              : "any of ("
                  + none.parts().stream().map(ConditionWords::of).collect(Collectors.joining("; "))
                  + ")");
    } else if (condition instanceof Condition.Some some) {
      return other(some);
    } else if (condition instanceof Condition.Compare compare) {
      return compare.term().component().words()
          + " "
          + compare.sense().words()
          + " "
          + limit(compare.limit());
    }
    Condition.Is is = (Condition.Is) condition;
    return is.term().component().words()
        + (is.not() ? " is not " : " is ")
        + Words.anyOf(is.names());
  }

  private static String other(Condition.Some some) {
    if (some.fact().type() == Vehicle.class) {
      return some.leaves().stream()
          .map(ConditionWords::clause)
          .map(leaf -> leaf.startsWith("vehicle ") ? "the " + leaf : "the vehicle's " + leaf)
          .collect(Collectors.joining(" and "));
    }
    String fact =
        some.fact().type() == PartOnVehicle.class ? "part" : Words.spaced(some.fact().name());
    return "there is "
        + Words.withArticle(fact)
        + where(some.of())
        + " whose "
        + some.leaves().stream().map(ConditionWords::clause).collect(Collectors.joining(" and "));
  }

  /** A condition on one value with its verb. */
  private static String clause(Condition.Leaf leaf) {
    return leaf instanceof Condition.Compare compare
        ? compare.term().component().words()
            + " is "
            + compare.sense().words()
            + " "
            + limit(compare.limit())
        : of(leaf);
  }

  private static String joined(List<Condition> parts, String by) {
    return parts.stream()
        .map(part -> group(part) && parts.size() > 1 ? "(" + of(part) + ")" : of(part))
        .collect(Collectors.joining(by));
  }

  private static boolean group(Condition condition) {
    return condition instanceof Condition.All || condition instanceof Condition.Any;
  }

  /** Where another fact stands, with a space before it. */
  static String where(Of of) {
    return switch (of) {
      case SAME_WHEEL -> " at the same wheel";
      case SAME_AXLE -> " on the same axle";
      case VEHICLE -> " of the vehicle";
      case ANY -> " anywhere";
    };
  }

  /** What a quantity is held against, in words. */
  static String limit(Limit limit) {
    if (limit instanceof Limit.Stated stated) {
      return exact(stated.value());
    }
    Limit.Following following = (Limit.Following) limit;
    return (following.times() == 1 ? "" : following.times() + " times ")
        + following.term().component().words()
        + (following.plus().value() == 0 ? "" : " plus " + exact(following.plus()));
  }

  private static String exact(Quantity quantity) {
    return QuantityWriter.shortest(quantity.dimension(), quantity.value());
  }

  /** How a condition came out. */
  public static String outcome(Decision decision) {
    return switch (decision) {
      case MET -> "holds";
      case NOT_MET -> "does not hold";
      case UNDECIDED -> "too close to call";
      case ABSENT -> "not known";
    };
  }

  /**
   * What was found of a value, and by how much it keeps or misses its limit: {@code 8 ± 2 mm, 4 mm
   * outside}.
   */
  public static String margin(Comparison comparison) {
    String found = QuantityWriter.uncertain(comparison.quantity());
    if (!comparison.quantity().isKnown()) {
      return found;
    }
    Quantity limit = comparison.limit();
    String stated =
        limit.expanded() == 0 && limit.isKnown()
            ? found
            : found + ", the limit " + QuantityWriter.uncertain(limit);
    if (!limit.isKnown()) {
      return stated;
    }
    double margin = comparison.margin().value();
    String size = QuantityWriter.value(Quantity.exact(limit.dimension(), Math.abs(margin)));
    return stated
        + ", "
        + size
        + (margin < 0 ? " outside" : " inside")
        + (comparison.decision() == Decision.UNDECIDED ? ", less than its ±" : "");
  }

  /** What a fact holds in a component, in words. */
  public static String value(@Nullable Object value) {
    if (value instanceof Quantity quantity) {
      return QuantityWriter.uncertain(quantity);
    } else if (value instanceof Decision decision) {
      return switch (decision) {
        case MET -> "yes";
        case NOT_MET -> "no";
        case UNDECIDED -> "undecided";
        case ABSENT -> "not known";
      };
    } else if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    } else if (value instanceof Enum<?> token) {
      return Words.kebab(token.name());
    } else if (value instanceof List<?> texts) {
      return texts.isEmpty()
          ? "none"
          : texts.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
    return value == null || value.toString().isBlank() ? "not stated" : value.toString();
  }
}
