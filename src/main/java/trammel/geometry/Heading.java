package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;

/** What holds a wheel's heading. */
public sealed interface Heading<T extends CalculusFieldElement<T>> {

  /**
   * The tie rod keeps its length and its inner end is here (mm): steering, and bump steer.
   *
   * @param inner the tie rod's inner end
   */
  record ByTieRod<T extends CalculusFieldElement<T>>(FieldVector3D<T> inner)
      implements Heading<T> {}

  /**
   * The tie rod is adjusted until the wheel has this toe, straight ahead: an alignment.
   *
   * @param toe of this wheel (degrees), positive toward the inside
   */
  record Reset<T extends CalculusFieldElement<T>>(T toe) implements Heading<T> {}
}
