package trammel.geometry;

import java.util.Optional;

/** What a linkage does with a wheel over travel and steering. Several threads may ask at once. */
@FunctionalInterface
public interface Stances {

  /**
   * Where the wheel stands; empty where the linkage cannot reach. Smooth where it is not empty.
   *
   * @param travel rise of the wheel (mm), bump positive
   * @param steer steering input in the caller's unit, left positive
   */
  Optional<Stance> at(double travel, double steer);
}
