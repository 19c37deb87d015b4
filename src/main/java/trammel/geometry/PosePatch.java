package trammel.geometry;

/**
 * Three by three poses of a tire, and what lies between them: center and axis as polynomials of
 * second degree in travel and steering. A linkage is smooth where the gap to an obstacle is not, so
 * it is the pose that is interpolated.
 */
final class PosePatch {
  /** Center and axis. */
  static final int NUMBERS = 6;

  final double[] travel;
  final double[] steer;
  private final double[][][] poses;

  private final double[] travelShare = new double[3];
  private final double[] travelSlope = new double[3];
  private final double[] steerShare = new double[3];
  private final double[] steerSlope = new double[3];

  /** Interpolated center and axis, the axis of unit length; and their derivatives. */
  final double[] pose = new double[NUMBERS];

  final double[] perTravel = new double[NUMBERS];
  final double[] perSteer = new double[NUMBERS];

  /**
   * @param travel three, rising, or all equal
   * @param steer three, rising, or all equal
   * @param poses by travel, by steer: center and axis
   */
  PosePatch(double[] travel, double[] steer, double[][][] poses) {
    this.travel = travel;
    this.steer = steer;
    this.poses = poses;
  }

  /** Computes pose and derivatives. */
  void interpolate(double atTravel, double atSteer) {
    shares(travel, atTravel, travelShare, travelSlope);
    shares(steer, atSteer, steerShare, steerSlope);
    for (int n = 0; n < NUMBERS; n++) {
      double value = 0;
      double alongTravel = 0;
      double alongSteer = 0;
      for (int i = 0; i < 3; i++) {
        double[][] row = poses[i];
        double a = row[0][n];
        double b = row[1][n];
        double c = row[2][n];
        double level = steerShare[0] * a + steerShare[1] * b + steerShare[2] * c;
        value += travelShare[i] * level;
        alongTravel += travelSlope[i] * level;
        alongSteer += travelShare[i] * (steerSlope[0] * a + steerSlope[1] * b + steerSlope[2] * c);
      }
      pose[n] = value;
      perTravel[n] = alongTravel;
      perSteer[n] = alongSteer;
    }
    straighten();
  }

  /** Between poses the interpolated axis is not quite a unit vector. */
  private void straighten() {
    double length = Math.sqrt(pose[3] * pose[3] + pose[4] * pose[4] + pose[5] * pose[5]);
    double stretchTravel = 0;
    double stretchSteer = 0;
    for (int n = 3; n < NUMBERS; n++) {
      pose[n] /= length;
      stretchTravel += pose[n] * perTravel[n];
      stretchSteer += pose[n] * perSteer[n];
    }
    for (int n = 3; n < NUMBERS; n++) {
      perTravel[n] = (perTravel[n] - stretchTravel * pose[n]) / length;
      perSteer[n] = (perSteer[n] - stretchSteer * pose[n]) / length;
    }
  }

  /** Lagrange's weights and their derivatives. */
  private static void shares(double[] nodes, double at, double[] share, double[] slope) {
    double a = nodes[0];
    double b = nodes[1];
    double c = nodes[2];
    if (!(a < c)) {
      share[0] = 1;
      return;
    }
    double atA = 1 / ((a - b) * (a - c));
    double atB = 1 / ((b - a) * (b - c));
    double atC = 1 / ((c - a) * (c - b));
    share[0] = (at - b) * (at - c) * atA;
    share[1] = (at - a) * (at - c) * atB;
    share[2] = (at - a) * (at - b) * atC;
    slope[0] = (2 * at - b - c) * atA;
    slope[1] = (2 * at - a - c) * atB;
    slope[2] = (2 * at - a - b) * atC;
  }
}
