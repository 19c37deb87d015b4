package trammel.geometry;

import java.util.Locale;

/** The joints of a double-wishbone corner, and what they carry. */
public enum HardPoint {
  UPPER_FRONT_PIVOT,
  UPPER_REAR_PIVOT,
  UPPER_BALL_JOINT,
  LOWER_FRONT_PIVOT,
  LOWER_REAR_PIVOT,
  LOWER_BALL_JOINT,
  TIE_ROD_INNER,
  TIE_ROD_OUTER,
  WHEEL_CENTER;

  /** In a fitter's words. */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ').replace("tie rod", "tie-rod");
  }
}
