package trammel.geometry;

import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Corners, tires and obstacles as they may be met, at random. */
final class RandomCorner {
  private final Random random;
  final SimpleCorner corner;
  final TireSolid tire;
  final SweepRange range;

  RandomCorner(long seed) {
    random = new Random(seed);
    double radius = within(350, 460);
    tire = new TireSolid(radius, within(205, 330), within(20, 50));
    corner =
        new SimpleCorner(
            random.nextBoolean() ? 1 : -1,
            within(8, 15),
            within(-2, 8),
            within(-20, 60),
            0.96 * radius,
            within(300, 500));
    double lock = within(28, 40);
    range = new SweepRange(within(-100, -40), within(40, 90), -lock, lock);
  }

  double within(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  Vector3D direction() {
    return new Vector3D(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
        .normalize();
  }

  /** A pose of the corner, at random. */
  Stance pose() {
    return corner
        .at(
            within(range.lowestTravel(), range.highestTravel()),
            within(range.fullRight(), range.fullLeft()))
        .orElseThrow();
  }

  /** A point some way off the tire's surface, at a pose at random. */
  Vector3D besideTire(double from, double to) {
    Stance stance = pose();
    Vector3D away = direction();
    Vector3D inside = stance.center().add(within(0, 0.8 * tire.radius()), away);
    Vector3D onTire = tire.nearest(stance.center(), stance.axis(), inside);
    Vector3D outward = onTire.subtract(inside);
    return onTire.add(within(from, to), outward.getNorm() > 1e-9 ? outward.normalize() : away);
  }

  /** An obstacle of one of the four kinds. */
  Obstacle obstacle(int kind) {
    Vector3D at = besideTire(-30, 150);
    Vector3D along = direction();
    Vector3D across = along.orthogonal();
    Vector3D last = along.crossProduct(across);
    Obstacle.Shape shape =
        switch (kind) {
          case 0 -> new Obstacle.Point(at);
          case 1 -> new Obstacle.Segment(at, at.add(within(10, 400), along));
          case 2 ->
              new Obstacle.Box(
                  at,
                  along.scalarMultiply(within(1, 150)),
                  across.scalarMultiply(within(1, 100)),
                  last.scalarMultiply(within(1, 60)));
          default -> new Obstacle.Disc(at, along, within(5, 120));
        };
    double part = random.nextDouble();
    return new Obstacle(
        shape,
        part < 0.7
            ? Obstacle.FixedTo.BODY
            : part < 0.85 ? Obstacle.FixedTo.ARM : Obstacle.FixedTo.KNUCKLE);
  }
}
