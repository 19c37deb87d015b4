package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;

import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.FieldSinCos;
import trammel.catalog.BeamLocation.Links;
import trammel.catalog.SurveyPoint;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;

/** How the links of a beam axle slope in side view, with the axle turned and moved. */
final class LinkSlopes {
  private static final Formula SLOPE =
      new Formula(
          "slope of a link",
          "atan(rise / run) of its ends, the one on the axle turned and moved with it, + slope of"
              + " the frame",
          "own derivation: the axle is rigid");

  private LinkSlopes() {}

  /**
   * Slope of a link (degrees), positive with the end on the frame higher.
   *
   * @param lift of the frame over the axle (mm)
   * @param turned the axle at that lift
   * @param frame slope of the frame since the survey (degrees), positive with the front up
   */
  static Quantity of(
      Links links,
      SurveyPoint frameEnd,
      SurveyPoint axleEnd,
      Quantity lift,
      AxleTurns.Turned turned,
      Quantity frame) {
    Variables.Collector collector = new Variables.Collector();
    int[] from = collector.add(frameEnd, "link, frame");
    int[] to = collector.add(axleEnd, "link, axle");
    int[] wheel = collector.add(links.wheelCenter(), "wheel center");
    int raised = collector.add(lift);
    int frontUp = collector.add(turned.frontUp());
    int fore = collector.add(turned.fore());
    int nose = collector.add(frame);
    Variables variables = collector.all();
    Quantity missing = variables.missing();
    if (missing != null) {
      return Quantity.absent(ANGLE, Variables.absence(missing));
    }
    FieldVector3D<Gradient> center = variables.point(wheel);
    FieldVector3D<Gradient> arm = variables.point(to).subtract(center);
    FieldSinCos<Gradient> turn = variables.variable(frontUp).toRadians().sinCos();
    Gradient axleFore =
        center
            .getX()
            .add(variables.variable(fore))
            .add(arm.getX().multiply(turn.cos()))
            .subtract(arm.getZ().multiply(turn.sin()));
    Gradient axleUp =
        center
            .getZ()
            .subtract(variables.variable(raised))
            .add(arm.getX().multiply(turn.sin()))
            .add(arm.getZ().multiply(turn.cos()));
    Gradient run = variables.point(from).getX().subtract(axleFore);
    Gradient rise = variables.point(from).getZ().subtract(axleUp);
    Gradient slope = rise.atan2(run.abs()).toDegrees();
    // A link whose frame end is the fore one rises as the frame's front comes up.
    Gradient tilt = variables.variable(nose);
    return variables.quantity(
        SLOPE, ANGLE, run.getValue() > 0 ? slope.add(tilt) : slope.subtract(tilt));
  }
}
