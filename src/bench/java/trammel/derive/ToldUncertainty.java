package trammel.derive;

import java.lang.invoke.LambdaMetafactory;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import trammel.quantity.Quantity;

/**
 * Asks every quantity in a tree of records and lists for its uncertainty, as a page that prints
 * them does: quantities work it out when they are first asked. Accessors are called as a page calls
 * them, not by reflection, which would take a tenth of the time measured.
 */
final class ToldUncertainty {
  private static final ClassValue<Accessor[]> PARTS =
      new ClassValue<>() {
        @Override
        protected Accessor[] computeValue(Class<?> type) {
          return Arrays.stream(type.getRecordComponents())
              .filter(part -> mayTell(part.getGenericType()))
              .map(part -> Accessor.of(type, part))
              .toArray(Accessor[]::new);
        }
      };

  private ToldUncertainty() {}

  /** Whether there can be a quantity in something of a type: a page goes by no other parts. */
  private static boolean mayTell(Type type) {
    if (type instanceof ParameterizedType list) {
      return mayTell(list.getActualTypeArguments()[0]);
    }
    if (!(type instanceof Class<?> known)) {
      return true;
    }
    return known.isRecord()
        ? Arrays.stream(known.getRecordComponents())
            .anyMatch(part -> mayTell(part.getGenericType()))
        : known == Quantity.class || known.isInterface() || known == Object.class;
  }

  /** One component of a record. */
  private record Accessor(Function<Object, Object> read) {

    @SuppressWarnings("unchecked") // the factory makes what it is asked for
    static Accessor of(Class<?> type, RecordComponent part) {
      try {
        MethodHandles.Lookup lookup =
            MethodHandles.privateLookupIn(type, MethodHandles.lookup());
        MethodHandle accessor = lookup.unreflect(part.getAccessor());
        return new Accessor(
            (Function<Object, Object>)
                LambdaMetafactory.metafactory(
                        lookup,
                        "apply",
                        MethodType.methodType(Function.class),
                        MethodType.methodType(Object.class, Object.class),
                        accessor,
                        accessor.type())
                    .getTarget()
                    .invoke());
      } catch (Throwable e) {
        throw new IllegalStateException(e);
      }
    }
  }

  /** The sum of all, so that none is left out. */
  static double of(Object told) {
    if (told instanceof Quantity quantity) {
      return quantity.expanded();
    }
    double sum = 0;
    if (told instanceof Record) {
      for (Accessor part : PARTS.get(told.getClass())) {
        sum += of(part.read().apply(told));
      }
    } else if (told instanceof List<?> list) {
      for (Object each : list) {
        sum += of(each);
      }
    }
    return sum;
  }
}
