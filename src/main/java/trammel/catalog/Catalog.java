package trammel.catalog;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything the checker knows of vehicles and parts, each by the name files call it by.
 *
 * @param name what the catalog calls itself
 * @param currency what prices are in
 * @param vehicles by vehicle name, in file order
 * @param parts by part number, in file order
 */
public record Catalog(
    String name, String currency, Map<String, VehicleProfile> vehicles, Map<String, Part> parts) {

  /** The vehicle of this name. */
  public Optional<VehicleProfile> vehicle(String vehicleName) {
    return Optional.ofNullable(vehicles.get(vehicleName));
  }

  /** The part of this number. */
  public Optional<Part> part(String number) {
    return Optional.ofNullable(parts.get(number));
  }

  /** Every part of a kind, in file order. */
  public <T extends Part> List<T> parts(Class<T> kind) {
    return parts.values().stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
