package trammel.geometry;

import org.hipparchus.CalculusFieldElement;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;
import org.hipparchus.util.FieldSinCos;
import org.jspecify.annotations.Nullable;

/** What holds a wheel's heading. */
public sealed interface Heading<T extends CalculusFieldElement<T>> {

  /** The same in plain numbers. */
  Heading<Binary64> plain();

  /**
   * The tie rod keeps its length and its inner end is here: steering, and bump steer.
   *
   * @param inner the tie rod's inner end (mm)
   * @param length of the tie rod (mm); null for the length it was surveyed with
   */
  record ByTieRod<T extends CalculusFieldElement<T>>(FieldVector3D<T> inner, @Nullable T length)
      implements Heading<T> {

    /** A tie rod as long as it was surveyed. */
    public ByTieRod(FieldVector3D<T> inner) {
      this(inner, null);
    }

    @Override
    public ByTieRod<Binary64> plain() {
      return new ByTieRod<>(
          Corner.plain(inner), length == null ? null : new Binary64(length.getReal()));
    }
  }

  /** The tie rod is adjusted until the wheel has a toe, straight ahead: an alignment. */
  final class Reset<T extends CalculusFieldElement<T>> implements Heading<T> {
    private final T toe;
    private final FieldSinCos<T> turn;

    /**
     * An alignment to a toe.
     *
     * @param toe of this wheel (degrees), positive toward the inside
     */
    public Reset(T toe) {
      this.toe = toe;
      this.turn = toe.toRadians().sinCos();
    }

    /** Sine and cosine of the toe, the same in every pose. */
    FieldSinCos<T> turn() {
      return turn;
    }

    @Override
    public Reset<Binary64> plain() {
      if (toe.getField().equals(Binary64Field.getInstance())) {
        @SuppressWarnings("unchecked") // T is what its field says
        Reset<Binary64> same = (Reset<Binary64>) this;
        return same;
      }
      return new Reset<>(new Binary64(toe.getReal()));
    }
  }
}
