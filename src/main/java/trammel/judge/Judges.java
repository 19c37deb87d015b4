package trammel.judge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.book.Book;
import trammel.catalog.AssumedValue;

/**
 * All rule books at hand. Which of them judge depends on the vehicle and on where it is registered:
 * for each vehicle and such set one {@link Judge}, built when it is first asked for; the last few
 * are kept. Safe for several threads; close it when done.
 */
public final class Judges implements AutoCloseable {
  private static final int KEPT = 8;

  private final List<Book> books;

  /** By their books and the vehicle, the one asked for last at the end. */
  private final Map<List<String>, Judge> kept = new LinkedHashMap<>(16, 0.75f, true);

  private Judges(List<Book> books) {
    this.books = List.copyOf(books);
  }

  /** The base book and these, which were read and checked together. */
  public static Judges of(List<Book> books) {
    return new Judges(books);
  }

  /**
   * Who judges a vehicle. It stays open as long as this does, or until several others were asked
   * for.
   *
   * @param vehicle the name of its profile
   * @param registeredAt where it is registered; empty where the sheet does not say
   */
  public Judge over(String vehicle, String registeredAt) {
    List<Book> applicable = applicable(vehicle, registeredAt);
    List<String> key = key(vehicle, applicable);
    synchronized (kept) {
      Judge judge = kept.get(key);
      if (judge == null) {
        judge = Judge.over(vehicle, applicable);
        kept.put(key, judge);
        if (kept.size() > KEPT) {
          // Not shut down: another thread may still be judging by it.
          kept.remove(kept.keySet().iterator().next());
        }
      }
      return judge;
    }
  }

  /** Whether who judges a vehicle is built already. */
  public boolean hasBuilt(String vehicle, String registeredAt) {
    synchronized (kept) {
      return kept.containsKey(key(vehicle, applicable(vehicle, registeredAt)));
    }
  }

  private static List<String> key(String vehicle, List<Book> applicable) {
    List<String> key = new ArrayList<>(applicable.stream().map(Book::name).toList());
    if (!applicable.isEmpty()) {
      key.add("over " + vehicle);
    }
    return key;
  }

  /**
   * What the books that apply assume where nobody gives a value, in their order; no judge is built
   * for it.
   *
   * @param vehicle the name of its profile
   * @param registeredAt where it is registered; empty where the sheet does not say
   */
  public List<AssumedValue> assumed(String vehicle, String registeredAt) {
    return applicable(vehicle, registeredAt).stream()
        .flatMap(book -> book.defaults().stream())
        .toList();
  }

  private List<Book> applicable(String vehicle, String registeredAt) {
    return books.stream().filter(book -> book.manifest().appliesTo(vehicle, registeredAt)).toList();
  }

  /** Every book at hand besides the base book, whether or not it applies to some vehicle. */
  public List<Book> books() {
    return books;
  }

  /** Every rule of every book, by book, the base book first. */
  public Collection<Rule> rules() {
    List<Rule> rules = new ArrayList<>(BaseBook.rules(BaseBook.models()));
    books.forEach(book -> rules.addAll(Judge.rules(book)));
    return rules;
  }

  @Override
  public void close() {
    synchronized (kept) {
      kept.values().forEach(Judge::close);
      kept.clear();
    }
  }
}
