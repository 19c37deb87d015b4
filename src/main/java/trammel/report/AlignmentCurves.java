package trammel.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trammel.derive.BeamMap;
import trammel.derive.BeamPoint;
import trammel.derive.WheelMap;
import trammel.derive.WheelMap.CurvePoint;

/** How wheels and beam axles run over their travel, as comma-separated values. */
public final class AlignmentCurves {
  private static final String HEAD =
      "wheel,travel,camber,caster,kingpin-inclination,toe,scrub-radius,mechanical-trail,"
          + "half-track,roll-center,spring-ratio,damper-ratio,sensor-ratio,"
          + "axle-shift,bar-slope,nose-up,forward,steer";
  private static final String NO_BEAM = ",,,,,";

  private AlignmentCurves() {}

  /**
   * One table with a head line; lengths in mm, angles in degrees, travel up from the proposed
   * height. A row of a beam axle says {@code front} or {@code rear} and leaves empty what belongs
   * to independent wheels, and the other way about. The roll center of a wheel is counted from its
   * contact, that of a beam from the ground.
   */
  public static String csv(List<WheelMap> maps, List<BeamMap> beams) {
    List<String> lines = new ArrayList<>();
    lines.add(HEAD);
    for (WheelMap map : maps) {
      if (map.drawing() != null) {
        map.drawing().curve().forEach(point -> lines.add(row(map, point)));
      }
    }
    for (BeamMap beam : beams) {
      beam.curve().forEach(point -> lines.add(row(beam, point)));
    }
    return String.join("\n", lines) + "\n";
  }

  private static String row(WheelMap map, CurvePoint point) {
    return String.format(
            Locale.ROOT,
            "%s,%.1f,%.4f,%.4f,%.4f,%.4f,%.3f,%.3f,%.3f,%.2f,%s,%s,%s",
            map.position(),
            point.travel(),
            point.camber(),
            point.caster(),
            point.kingpinInclination(),
            point.toe(),
            point.scrub(),
            point.trail(),
            point.halfTrack(),
            point.rollCenter(),
            number(point.spring()),
            number(point.damper()),
            number(point.sensor()))
        + NO_BEAM;
  }

  private static String row(BeamMap beam, BeamPoint point) {
    return Stream.of(
            beam.axle().toString(),
            String.format(Locale.ROOT, "%.1f", point.travel()),
            "",
            number(point.caster()),
            "",
            "",
            "",
            "",
            "",
            number(point.rollCenter()),
            "",
            "",
            "",
            number(point.shift()),
            number(point.barSlope()),
            number(point.noseUp()),
            number(point.forward()),
            number(point.steer()))
        .collect(Collectors.joining(","));
  }

  private static String number(@Nullable Double value) {
    return value == null ? "" : String.format(Locale.ROOT, "%.4f", value);
  }
}
