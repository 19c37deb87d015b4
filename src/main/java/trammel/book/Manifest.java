package trammel.book;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trammel.read.Named;
import trammel.read.Place;
import trammel.read.Required;
import trammel.vocabulary.Version;

/**
 * What a rule book says of itself: {@code book.yaml} in its folder.
 *
 * @param name what reports call it by
 * @param title in a line
 * @param version its own version
 * @param author who answers for it
 * @param license under which others may use it
 * @param kind whether it holds a shop's experience or the law of a place
 * @param vehicles the vehicles it is for; empty where it is for any
 * @param place where it stands
 * @param of the place whose law it holds, under the key {@code place}
 * @param alsoCalled other names of that place
 * @param authority who decides there
 * @param vocabulary the version of the fact vocabulary that it was written against
 * @param readOn the day its texts were read
 */
public record Manifest(
    Place place,
    @Named("book") @Required String name,
    @Required String title,
    @Required Version version,
    @Required String author,
    @Required String license,
    @Required Kind kind,
    List<String> vehicles,
    @Named("place") @Nullable String of,
    List<String> alsoCalled,
    @Nullable String authority,
    @Required Version vocabulary,
    @Nullable LocalDate readOn) {

  /** What a book holds. */
  public enum Kind {
    SHOP,
    LAW
  }

  /**
   * Whether its rules hold for a vehicle.
   *
   * @param vehicle the name of its profile
   * @param registeredAt where it is registered; empty where the sheet does not say
   */
  public boolean appliesTo(String vehicle, String registeredAt) {
    boolean ofVehicle = vehicles.isEmpty() || vehicles.contains(vehicle);
    return ofVehicle && (kind != Kind.LAW || names(registeredAt));
  }

  /** Whether it holds the law of a place that a sheet names so. */
  boolean names(String registeredAt) {
    String wanted = registeredAt.strip().toLowerCase(Locale.ROOT);
    return Stream.concat(Stream.ofNullable(of), alsoCalled.stream())
        .anyMatch(name -> name.strip().toLowerCase(Locale.ROOT).equals(wanted));
  }
}
