package trammel.book;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trammel.fact.Fact;
import trammel.quantity.Comparison;
import trammel.quantity.Decision;
import trammel.read.Words;
import trammel.subject.Subject;
import trammel.vocabulary.FactType;

/**
 * A condition of a sheet, in Kleene's logic: met, not met, or open (undecided or absent).
 *
 * <p>Two of its texts are equal only where the conditions are.
 */
public sealed interface Condition {

  /** Says how each condition on other facts comes out. */
  @FunctionalInterface
  interface Joins {
    Decision of(Some some);
  }

  /**
   * How it comes out for a fact. Total: it throws on no pattern of absence.
   *
   * @param joins how the conditions on other facts come out
   */
  Decision decide(Fact about, Joins joins);

  /** All hold. */
  record All(List<Condition> parts) implements Condition {
    public All {
      parts = List.copyOf(parts);
    }

    @Override
    public Decision decide(Fact about, Joins joins) {
      Decision all = Decision.MET;
      for (Condition part : parts) {
        all = all.and(part.decide(about, joins));
      }
      return all;
    }

    @Override
    public String toString() {
      return "all" + parts;
    }
  }

  /** At least one holds; of none, none does. */
  record Any(List<Condition> parts) implements Condition {
    public Any {
      parts = List.copyOf(parts);
    }

    @Override
    public Decision decide(Fact about, Joins joins) {
      Decision any = Decision.NOT_MET;
      for (Condition part : parts) {
        any = any.or(part.decide(about, joins));
      }
      return any;
    }

    @Override
    public String toString() {
      return "any" + parts;
    }
  }

  /** None holds. */
  record None(List<Condition> parts) implements Condition {
    public None {
      parts = List.copyOf(parts);
    }

    @Override
    public Decision decide(Fact about, Joins joins) {
      return new Any(parts).decide(about, joins).not();
    }

    @Override
    public String toString() {
      return "none" + parts;
    }
  }

  /**
   * There is some other fact for which all of it holds.
   *
   * @param of where that fact stands
   * @param fact what kind of fact it is
   */
  record Some(Of of, FactType fact, List<Leaf> leaves) implements Condition {
    public Some {
      leaves = List.copyOf(leaves);
    }

    /** How it comes out for one of the other facts. */
    public Decision decide(Fact about, Fact other) {
      Decision all = Decision.MET;
      for (Leaf leaf : leaves) {
        all = all.and(leaf.decide(about, other));
      }
      return all;
    }

    @Override
    public Decision decide(Fact about, Joins joins) {
      return joins.of(this);
    }

    /** Whether another fact is one of those that it speaks of. */
    public boolean speaksOf(Fact about, Fact other) {
      return fact.type().isInstance(other) && of.holds(about.subject(), other.subject());
    }

    @Override
    public String toString() {
      return "some " + fact.name() + " of " + of + leaves;
    }
  }

  /** A condition on one value. */
  sealed interface Leaf extends Condition {
    /** How it comes out for a fact and, where it speaks of one, another. */
    Decision decide(Fact about, @Nullable Fact joined);

    @Override
    default Decision decide(Fact about, Joins joins) {
      return decide(about, (Fact) null);
    }
  }

  /** A quantity is held against a limit. */
  record Compare(Term term, Comparison.Sense sense, Limit limit) implements Leaf {
    /** The comparison itself. */
    public Comparison comparison(Fact about, @Nullable Fact joined) {
      return comparison(about, joined, sense);
    }

    /** The same, asked the other way round: its margin is what is missing. */
    Comparison opposite(Fact about, @Nullable Fact joined) {
      return comparison(
          about,
          joined,
          switch (sense) {
            case AT_LEAST -> Comparison.Sense.BELOW;
            case AT_MOST -> Comparison.Sense.ABOVE;
            case ABOVE -> Comparison.Sense.AT_MOST;
            case BELOW -> Comparison.Sense.AT_LEAST;
          });
    }

    private Comparison comparison(Fact about, @Nullable Fact joined, Comparison.Sense asked) {
      var bound = limit.of(about, joined);
      var value = term.quantity(about, joined, bound.dimension());
      return switch (asked) {
        case AT_LEAST -> value.atLeast(bound);
        case AT_MOST -> value.atMost(bound);
        case ABOVE -> value.above(bound);
        case BELOW -> value.below(bound);
      };
    }

    @Override
    public Decision decide(Fact about, @Nullable Fact joined) {
      return comparison(about, joined).decision();
    }

    @Override
    public String toString() {
      return term + " " + sense.words() + " " + limit;
    }
  }

  /**
   * A token, text, count, or yes or no is one of some names, or none of them. A blank text is
   * absent; of a list of texts one is enough; a place is named by itself or by what it belongs to.
   *
   * @param not whether it must be none of them
   */
  record Is(Term term, boolean not, List<String> names) implements Leaf {
    public Is {
      names = List.copyOf(names);
    }

    @Override
    public Decision decide(Fact about, @Nullable Fact joined) {
      Decision is = is(term.value(about, joined));
      return not ? is.not() : is;
    }

    private Decision is(@Nullable Object value) {
      if (value instanceof Decision decision) {
        return names.contains("yes") ? decision : decision.not();
      } else if (value instanceof Boolean yes) {
        return Decision.of(names.contains(yes ? "yes" : "no"));
      } else if (value instanceof Enum<?> token) {
        return Decision.of(names.contains(Words.kebab(token.name())));
      } else if (value instanceof List<?> texts) {
        return Decision.of(texts.stream().anyMatch(names::contains));
      } else if (value instanceof Subject subject) {
        return Decision.of(
            names.contains(subject.toString())
                || names.contains(subject.where())
                || names.contains(Of.axle(subject)));
      } else if (value == null || value.toString().isBlank()) {
        return Decision.ABSENT;
      }
      return Decision.of(names.contains(value.toString()));
    }

    @Override
    public String toString() {
      return term
          + (not ? " is not " : " is ")
          + names.stream().map(name -> '"' + name + '"').collect(Collectors.joining(" or "));
    }
  }
}
