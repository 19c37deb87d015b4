package trammel.geometry;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The joints of a corner, and what they carry. */
public enum HardPoint {
  UPPER_FRONT_PIVOT,
  UPPER_REAR_PIVOT,
  UPPER_BALL_JOINT,
  LOWER_FRONT_PIVOT,
  LOWER_REAR_PIVOT,
  LOWER_BALL_JOINT,
  TIE_ROD_INNER,
  TIE_ROD_OUTER,
  WHEEL_CENTER,
  /** Center of a strut's top mount, fixed to the body. */
  STRUT_TOP,
  /**
   * Another point on the strut's axis, fixed to the knuckle: the middle of its tube's lower end.
   */
  STRUT_FOOT,
  /** The upper of two bolts that clamp a strut to its knuckle. */
  KNUCKLE_UPPER_BOLT,
  /** The lower of the two. */
  KNUCKLE_LOWER_BOLT;

  private static final List<HardPoint> WISHBONES =
      List.of(
          UPPER_FRONT_PIVOT,
          UPPER_REAR_PIVOT,
          UPPER_BALL_JOINT,
          LOWER_FRONT_PIVOT,
          LOWER_REAR_PIVOT,
          LOWER_BALL_JOINT,
          TIE_ROD_INNER,
          TIE_ROD_OUTER,
          WHEEL_CENTER);

  private static final List<HardPoint> STRUT =
      List.of(
          STRUT_TOP,
          STRUT_FOOT,
          LOWER_FRONT_PIVOT,
          LOWER_REAR_PIVOT,
          LOWER_BALL_JOINT,
          TIE_ROD_INNER,
          TIE_ROD_OUTER,
          WHEEL_CENTER);

  /** The joints that a double wishbone is solved from. */
  public static List<HardPoint> ofWishbones() {
    return WISHBONES;
  }

  /** The joints that a strut is solved from; the bolts at its knuckle only where they adjust. */
  public static List<HardPoint> ofStrut() {
    return STRUT;
  }

  /** The upper end of the steering axis, whichever a corner has; null where it is not there. */
  public static <P> @Nullable P upperPoint(Map<HardPoint, P> points) {
    P ball = points.get(UPPER_BALL_JOINT);
    return ball == null ? points.get(STRUT_TOP) : ball;
  }

  /** Whether only a corner with two arms has it. */
  public boolean ofUpperArm() {
    return this == UPPER_FRONT_PIVOT || this == UPPER_REAR_PIVOT || this == UPPER_BALL_JOINT;
  }

  /** Whether only a strut corner has it. */
  public boolean ofStrutAlone() {
    return this == STRUT_TOP || this == STRUT_FOOT || ofKnuckleBolt();
  }

  /** Whether it is one of the bolts between strut and knuckle. */
  public boolean ofKnuckleBolt() {
    return this == KNUCKLE_UPPER_BOLT || this == KNUCKLE_LOWER_BOLT;
  }

  /** In a fitter's words. */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ').replace("tie rod", "tie-rod");
  }
}
