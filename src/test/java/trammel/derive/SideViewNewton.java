package trammel.derive;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A beam axle on lower and upper links in side view, by Newton's method on both lengths: nothing of
 * the program's solution is in it. Points in mm as the profile has them: fore, out, up.
 */
record SideViewNewton(
    Vector3D lowerFrame,
    Vector3D lowerAxle,
    Vector3D upperFrame,
    Vector3D upperAxle,
    Vector3D center) {

  /** The Stonecrop's rear links. */
  static final SideViewNewton STONECROP_REAR =
      new SideViewNewton(
          new Vector3D(760, 0, 420),
          new Vector3D(20, 0, 300),
          new Vector3D(560, 0, 545),
          new Vector3D(-15, 0, 495),
          new Vector3D(0, 0, 366));

  /** Its front links. */
  static final SideViewNewton STONECROP_FRONT =
      new SideViewNewton(
          new Vector3D(-760, 0, 400),
          new Vector3D(-20, 0, 290),
          new Vector3D(-650, 0, 525),
          new Vector3D(20, 0, 455),
          new Vector3D(0, 0, 366));

  /**
   * Where the axle is.
   *
   * @param lift of the frame over it (mm)
   * @param fore shift of the wheels' center (mm)
   * @param turn of the axle (radians), positive with its front up
   */
  record Moved(Vector3D center, double lift, double fore, double turn) {

    /** Where a point of the axle has gone, the frame standing still. */
    Vector3D at(Vector3D surveyed) {
      Vector3D arm = surveyed.subtract(center);
      return new Vector3D(
          center.getX() + fore + arm.getX() * Math.cos(turn) - arm.getZ() * Math.sin(turn),
          surveyed.getY(),
          center.getZ() - lift + arm.getX() * Math.sin(turn) + arm.getZ() * Math.cos(turn));
    }
  }

  /** The axle with the frame raised over it by a lift (mm). */
  Moved at(double lift) {
    double fore = 0;
    double turn = 0;
    double step = 1e-6;
    for (int i = 0; i < 30; i++) {
      double[] off = off(new Moved(center, lift, fore, turn));
      double[] byFore = off(new Moved(center, lift, fore + step, turn));
      double[] byTurn = off(new Moved(center, lift, fore, turn + step));
      double a = (byFore[0] - off[0]) / step;
      double b = (byTurn[0] - off[0]) / step;
      double c = (byFore[1] - off[1]) / step;
      double d = (byTurn[1] - off[1]) / step;
      double determinant = a * d - b * c;
      fore -= (d * off[0] - b * off[1]) / determinant;
      turn -= (a * off[1] - c * off[0]) / determinant;
    }
    return new Moved(center, lift, fore, turn);
  }

  private double[] off(Moved moved) {
    return new double[] {
      moved.at(lowerAxle).distance(lowerFrame) - lowerAxle.distance(lowerFrame),
      moved.at(upperAxle).distance(upperFrame) - upperAxle.distance(upperFrame)
    };
  }
}
