package trammel.geometry;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * What a number grows by with the places that it was surveyed from: for each millimeter that a
 * place lies farther fore, out and up, and for each degree of the wheel's angles.
 *
 * <p>In one order: the {@link #JOINTS}, the mount's end on the body, its other end, camber, toe.
 */
public final class ByPlace {
  /** The joints that have a say: of a wheel that keeps its toe all but the tie rod's. */
  public static final List<HardPoint> JOINTS =
      HardPoint.ofWishbones().stream()
          .filter(joint -> joint != HardPoint.TIE_ROD_INNER && joint != HardPoint.TIE_ROD_OUTER)
          .toList();

  /** How many slopes there are. */
  public static final int COUNT = 3 * (JOINTS.size() + 2) + 2;

  private final double[] slopes;

  private ByPlace(double[] slopes) {
    this.slopes = slopes;
  }

  /**
   * By all places.
   *
   * @param joints one for each of {@link #JOINTS}
   * @param body by the mount's end on the body
   * @param moving by its other end
   * @param camber by the wheel's camber as surveyed
   * @param toe by its toe as surveyed
   */
  static ByPlace of(
      List<Vector3D> joints, Vector3D body, Vector3D moving, double camber, double toe) {
    double[] slopes = new double[COUNT];
    int next = 0;
    for (Vector3D joint : joints) {
      next = put(slopes, next, joint);
    }
    next = put(slopes, next, body);
    next = put(slopes, next, moving);
    slopes[next] = camber;
    slopes[next + 1] = toe;
    return new ByPlace(slopes);
  }

  /** By the ends of the mount alone. */
  public static ByPlace ofMount(Vector3D body, Vector3D moving) {
    return of(JOINTS.stream().map(joint -> Vector3D.ZERO).toList(), body, moving, 0, 0);
  }

  private static int put(double[] slopes, int at, Vector3D slope) {
    slopes[at] = slope.getX();
    slopes[at + 1] = slope.getY();
    slopes[at + 2] = slope.getZ();
    return at + 3;
  }

  /** What it changes by on the way to another, times a number. */
  ByPlace change(ByPlace to, double times) {
    double[] change = new double[COUNT];
    for (int i = 0; i < COUNT; i++) {
      change[i] = times * (to.slopes[i] - slopes[i]);
    }
    return new ByPlace(change);
  }

  /** Itself and another, times a number. */
  public ByPlace plus(double times, ByPlace other) {
    double[] sum = new double[COUNT];
    for (int i = 0; i < COUNT; i++) {
      sum[i] = slopes[i] + times * other.slopes[i];
    }
    return new ByPlace(sum);
  }

  /** All in their order, with room for others behind them. */
  public double[] slopes(int room) {
    return Arrays.copyOf(slopes, COUNT + room);
  }
}
