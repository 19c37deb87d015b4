package trammel.geometry;

import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The range that is left of something that sets camber and caster.
 *
 * @param perMillimeter where its hard points go for each mm of it; see {@link DoubleWishbone} and
 *     {@link Strut} for what a shift of each means
 * @param from least shift (mm); 0 is as surveyed
 * @param to greatest shift (mm)
 */
public record AdjusterRange(Map<HardPoint, Vector3D> perMillimeter, double from, double to) {
  public AdjusterRange {
    if (!(from <= to)) {
      throw new IllegalArgumentException("an adjuster's range runs from " + from + " to " + to);
    }
    perMillimeter = Map.copyOf(perMillimeter);
  }
}
