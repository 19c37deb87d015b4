package trammel.designation;

import java.util.Optional;

/**
 * Load index, single and dual, and speed symbol.
 *
 * @param single the index of a tire that runs alone on its side of the axle
 * @param dual the index of each of two tires side by side
 * @param speed the speed symbol; a tire without one carries an incomplete mark
 * @param bracketed whether the mark stands in brackets, as on tires for more than the symbol's
 *     speed
 */
public record ServiceDescription(
    LoadIndex single, Optional<LoadIndex> dual, Optional<SpeedSymbol> speed, boolean bracketed) {

  /** Throws {@link IllegalArgumentException} where the dual index exceeds the single one. */
  public ServiceDescription {
    if (dual.isPresent() && dual.get().compareTo(single) > 0) {
      throw Unreadable.found(
          "dual load index " + dual.get() + " above single load index " + single,
          "the single index first, and the dual one no higher",
          "Write them as stamped, for example 121/118S");
    }
  }

  @Override
  public String toString() {
    String mark =
        single
            + dual.map(index -> "/" + index).orElse("")
            + speed.map(SpeedSymbol::toString).orElse("");
    return bracketed ? "(" + mark + ")" : mark;
  }
}
