package trammel.geometry;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;

/** Invented corners of a 4x4's proportions, every joint somewhere else within 25 to 40 mm. */
final class RandomLinkage {
  private RandomLinkage() {}

  static HardPoints<Binary64> wishbones(Random random) {
    Map<HardPoint, Vector3D> points = new EnumMap<>(HardPoint.class);
    points.put(HardPoint.UPPER_FRONT_PIVOT, near(random, 120, 430, 620));
    points.put(HardPoint.UPPER_REAR_PIVOT, near(random, -140, 440, 600));
    points.put(HardPoint.UPPER_BALL_JOINT, near(random, -15, 690, 640));
    points.put(HardPoint.LOWER_FRONT_PIVOT, near(random, 180, 320, 330));
    points.put(HardPoint.LOWER_REAR_PIVOT, near(random, -180, 320, 330));
    points.put(HardPoint.LOWER_BALL_JOINT, near(random, 5, 745, 300));
    points.put(HardPoint.TIE_ROD_INNER, near(random, -150, 380, 400));
    points.put(HardPoint.TIE_ROD_OUTER, near(random, -145, 740, 390));
    points.put(HardPoint.WHEEL_CENTER, near(random, 0, 820, 400));
    return HardPoints.of(points, between(random, -2, 2), between(random, -0.5, 0.5));
  }

  static HardPoints<Binary64> strut(Random random) {
    Map<HardPoint, Vector3D> points = new EnumMap<>(HardPoint.class);
    points.put(HardPoint.LOWER_FRONT_PIVOT, near(random, 150, 360, 290));
    points.put(HardPoint.LOWER_REAR_PIVOT, near(random, -180, 360, 290));
    points.put(HardPoint.LOWER_BALL_JOINT, near(random, 5, 720, 260));
    points.put(HardPoint.STRUT_TOP, near(random, -30, 580, 880));
    points.put(HardPoint.STRUT_FOOT, near(random, -10, 650, 430));
    points.put(HardPoint.TIE_ROD_INNER, near(random, -160, 380, 330));
    points.put(HardPoint.TIE_ROD_OUTER, near(random, -150, 690, 320));
    points.put(HardPoint.WHEEL_CENTER, near(random, 0, 780, 340));
    return HardPoints.of(points, between(random, -2, 2), between(random, -0.5, 0.5));
  }

  static double between(Random random, double least, double most) {
    return least + (most - least) * random.nextDouble();
  }

  static FieldVector3D<Binary64> in(Vector3D point) {
    return new FieldVector3D<>(Binary64Field.getInstance(), point);
  }

  private static Vector3D near(Random random, double fore, double out, double up) {
    return new Vector3D(
        fore + between(random, -25, 25),
        out + between(random, -25, 25),
        up + between(random, -25, 25));
  }
}
