package trammel.book;

import trammel.quantity.Quantity;
import trammel.read.Place;

/**
 * A value that a book gives where a sheet and its catalog have none.
 *
 * @param value the keys that lead to it in a vehicle's profile, such as {@code
 *     front.support.unsprung}
 * @param is the value with its expanded uncertainty
 * @param because why it may be taken
 * @param source who says so
 */
public record Default(Place place, String value, Quantity is, String because, String source) {}
