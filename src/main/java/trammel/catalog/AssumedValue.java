package trammel.catalog;

import java.util.Arrays;
import java.util.List;
import trammel.quantity.Quantity;
import trammel.read.Place;

/**
 * A value that a rule book gives where nobody has given one: assumed, never measured.
 *
 * @param place where the book has it
 * @param key the keys that lead to it in a vehicle's profile, such as {@code
 *     front.support.unsprung}
 * @param is the value with its expanded uncertainty
 * @param book the book's name
 * @param version the book's version
 * @param because why it may be taken
 * @param source who says so
 */
public record AssumedValue(
    Place place,
    String key,
    Quantity is,
    String book,
    String version,
    String because,
    String source) {

  /** The keys one by one. */
  public List<String> keys() {
    return Arrays.asList(key.split("\\.", -1));
  }

  /** Whose it is: {@code book shop-example 1.2}. */
  public String whose() {
    return "book " + book + " " + version;
  }
}
