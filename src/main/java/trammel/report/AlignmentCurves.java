package trammel.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.derive.BeamMap;
import trammel.derive.BeamPoint;
import trammel.derive.WheelMap;
import trammel.derive.WheelMap.CurvePoint;

/** How wheels and beam axles run over their travel, as comma-separated values. */
public final class AlignmentCurves {
  private static final List<String> HEAD =
      List.of(
          "wheel",
          "travel",
          "camber",
          "caster",
          "kingpin-inclination",
          "toe",
          "scrub-radius",
          "mechanical-trail",
          "half-track",
          "roll-center",
          "spring-ratio",
          "damper-ratio",
          "sensor-ratio",
          "axle-shift",
          "bar-slope",
          "nose-up",
          "forward",
          "steer",
          "assumed");

  private final String assumed;

  private AlignmentCurves(String assumed) {
    this.assumed = assumed;
  }

  /**
   * One table with a head line; lengths in mm, angles in degrees, travel up from the proposed
   * height. A row of a beam axle says {@code front} or {@code rear} and leaves empty what belongs
   * to independent wheels, and the other way about. The roll center of a wheel is counted from its
   * contact, that of a beam from the ground. Each row says what is assumed of the vehicle.
   */
  public static String csv(Build build, List<WheelMap> maps, List<BeamMap> beams) {
    AlignmentCurves curves = new AlignmentCurves(CsvText.words(Assumed.cell(Assumed.of(build))));
    List<List<String>> rows = new ArrayList<>();
    for (WheelMap map : maps) {
      if (map.drawing() != null) {
        map.drawing().curve().forEach(point -> rows.add(curves.row(map, point)));
      }
    }
    for (BeamMap beam : beams) {
      beam.curve().forEach(point -> rows.add(curves.row(beam, point)));
    }
    return CsvText.of(HEAD, rows);
  }

  private List<String> row(WheelMap map, CurvePoint point) {
    return List.of(
        map.position().toString(),
        number(point.travel(), 1),
        number(point.camber(), 4),
        number(point.caster(), 4),
        number(point.kingpinInclination(), 4),
        number(point.toe(), 4),
        number(point.scrub(), 3),
        number(point.trail(), 3),
        number(point.halfTrack(), 3),
        number(point.rollCenter(), 2),
        number(point.spring(), 4),
        number(point.damper(), 4),
        number(point.sensor(), 4),
        "",
        "",
        "",
        "",
        "",
        assumed);
  }

  private List<String> row(BeamMap beam, BeamPoint point) {
    return List.of(
        beam.axle().toString(),
        number(point.travel(), 1),
        "",
        number(point.caster(), 4),
        "",
        "",
        "",
        "",
        "",
        number(point.rollCenter(), 4),
        "",
        "",
        "",
        number(point.shift(), 4),
        number(point.barSlope(), 4),
        number(point.noseUp(), 4),
        number(point.forward(), 4),
        number(point.steer(), 4),
        assumed);
  }

  private static String number(@Nullable Double value, int places) {
    return value == null ? "" : String.format(Locale.ROOT, "%." + places + "f", value);
  }
}
