package trammel.catalog;

import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import trammel.geometry.HardPoint;

/**
 * Finds a strut's foot that lies off its axis, and bolts that cannot clamp it. All limits are
 * common practice, drawn wide.
 */
final class StrutAxisCheck {
  private static final double LEAST_STRUT = 100;
  private static final double LEAST_BOLTS = 30;

  /** A bolt farther from the strut's axis than this holds another thing (mm). */
  private static final double MOST_ASIDE = 150;

  /** No strut leans farther than this from its steering axis (degrees). */
  private static final double MOST_APART = 20;

  private final SurveyFaults faults;

  StrutAxisCheck(SurveyFaults faults) {
    this.faults = faults;
  }

  void check(Map<HardPoint, SurveyPoint> points) {
    SurveyPoint top = points.get(HardPoint.STRUT_TOP);
    SurveyPoint foot = points.get(HardPoint.STRUT_FOOT);
    SurveyPoint ball = points.get(HardPoint.LOWER_BALL_JOINT);
    if (top == null || foot == null || ball == null) {
      return;
    }
    Vector3D along = top.vector().subtract(foot.vector());
    if (along.getNorm() < LEAST_STRUT) {
      faults.at(
          foot.up(),
          "puts the strut's foot "
              + SurveyFaults.length(along.getNorm())
              + " from its top; expected "
              + SurveyFaults.length(LEAST_STRUT)
              + " or more",
          "Measure it again, at the lower end of the tube; was one point copied from the other?");
      return;
    }
    double apart = Math.toDegrees(Vector3D.angle(along, top.vector().subtract(ball.vector())));
    if (apart > MOST_APART) {
      faults.at(
          foot.out(),
          "leans the strut by "
              + SurveyFaults.angle(apart)
              + " from the steering axis; expected "
              + SurveyFaults.angle(MOST_APART)
              + " at the most",
          "Is it a bolt at the knuckle, and not on the strut's axis? Measure the middle of the"
              + " tube's lower end.");
      return;
    }
    bolts(points, foot.vector(), along.normalize());
  }

  private void bolts(Map<HardPoint, SurveyPoint> points, Vector3D foot, Vector3D along) {
    SurveyPoint upper = points.get(HardPoint.KNUCKLE_UPPER_BOLT);
    SurveyPoint lower = points.get(HardPoint.KNUCKLE_LOWER_BOLT);
    if (upper == null || lower == null) {
      return;
    }
    double spacing = upper.vector().distance(lower.vector());
    if (spacing < LEAST_BOLTS) {
      faults.at(
          lower.up(),
          "puts the bolts at the knuckle "
              + SurveyFaults.length(spacing)
              + " apart; expected "
              + SurveyFaults.length(LEAST_BOLTS)
              + " or more",
          "Measure it again; was one point copied from the other?");
    }
    for (SurveyPoint bolt : new SurveyPoint[] {upper, lower}) {
      double aside = bolt.vector().subtract(foot).crossProduct(along).getNorm();
      if (aside > MOST_ASIDE) {
        faults.at(
            bolt.out(),
            "is a bolt "
                + SurveyFaults.length(aside)
                + " aside of the strut's axis; expected "
                + SurveyFaults.length(MOST_ASIDE)
                + " at the most",
            "Is it a bolt of another part? The two that clamp the strut to the knuckle are meant.");
      }
    }
  }
}
