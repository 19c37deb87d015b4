package trammel.build;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.build.BuildSheet.AsFound;
import trammel.build.BuildSheet.Where;
import trammel.read.Place;
import trammel.read.Required;

/**
 * The counter's short form: what is ordered, for which vehicle, and what is known of it.
 *
 * @param order its title or number
 */
public record OrderFile(
    Place place,
    @Required String order,
    @Nullable String catalog,
    @Required String vehicle,
    AsFound asFound,
    List<Line> lines) {

  /**
   * One line.
   *
   * @param quantity units, each of which may hold several pieces
   * @param at where it goes; empty to take it from the part and the quantity
   */
  public record Line(
      Place place, @Required String part, @Required Integer quantity, List<Where> at) {}
}
