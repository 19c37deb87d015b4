package trammel.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;

/**
 * Every camber and caster that a corner's adjusters give at one ride height, each with toe reset:
 * the image of what range is left.
 *
 * <p>The set is told by its outline. To first order it is a sum of one segment for each adjuster,
 * so its outline runs along one adjuster after another, in the order of their directions; every
 * point of the outline is then worked out on the true linkage.
 */
public final class AlignmentMap {
  /** Points along each stretch of the outline: arms are short arcs, so few do. */
  private static final int ALONG_A_STRETCH = 4;

  /** Step of the slopes (mm). */
  private static final double STEP = 0.05;

  private final HardPoints<Binary64> points;
  private final Map<HardPoint, Vector3D> fixed;
  private final List<AdjusterRange> adjusters;
  private final double travel;
  private final Heading<Binary64> toe;

  /**
   * The map of a corner.
   *
   * @param fixed shifts that are there whatever the adjusters do: an arm of another shape (mm)
   * @param travel of the wheel at the ride height meant (mm); a lift of d is −d
   * @param toe of this wheel that is set (degrees), positive toward the inside
   */
  public AlignmentMap(
      HardPoints<Binary64> points,
      Map<HardPoint, Vector3D> fixed,
      List<AdjusterRange> adjusters,
      double travel,
      double toe) {
    this.points = points;
    this.fixed = Map.copyOf(fixed);
    this.adjusters = List.copyOf(adjusters);
    this.travel = travel;
    this.toe = new Heading.Reset<>(new Binary64(toe));
  }

  /** Camber and caster (degrees) at settings of the adjusters (mm), in their order. */
  public record Angles(double camber, double caster, List<Double> settings) {}

  /** The adjusters, in order. */
  public List<AdjusterRange> adjusters() {
    return adjusters;
  }

  /**
   * Camber and caster at settings of the adjusters (mm); empty where the linkage cannot reach the
   * ride height.
   */
  public Optional<Angles> at(double... settings) {
    Map<HardPoint, FieldVector3D<Binary64>> shifts = new EnumMap<>(HardPoint.class);
    fixed.forEach((point, shift) -> add(shifts, point, 1, shift));
    for (int i = 0; i < settings.length; i++) {
      double setting = settings[i];
      adjusters
          .get(i)
          .perMillimeter()
          .forEach((point, shift) -> add(shifts, point, setting, shift));
    }
    Posed<Binary64> posed = WheelTravel.of(Corner.of(points, shifts)).at(new Binary64(travel), toe);
    return posed instanceof Pose<Binary64> pose
        ? Optional.of(
            new Angles(
                pose.camber().getReal(),
                pose.caster().getReal(),
                Arrays.stream(settings).boxed().toList()))
        : Optional.empty();
  }

  private static void add(
      Map<HardPoint, FieldVector3D<Binary64>> shifts,
      HardPoint point,
      double scale,
      Vector3D shift) {
    FieldVector3D<Binary64> more =
        new FieldVector3D<>(Binary64Field.getInstance(), shift.scalarMultiply(scale));
    shifts.merge(point, more, FieldVector3D::add);
  }

  /** Settings nearest to as surveyed that the ranges allow (mm). */
  private double[] start() {
    return adjusters.stream().mapToDouble(a -> Math.max(a.from(), Math.min(a.to(), 0))).toArray();
  }

  /** Change of camber and caster for each mm of each adjuster (degrees/mm). */
  private static final class Slopes {
    private final double[] camber;
    private final double[] caster;

    Slopes(double[] camber, double[] caster) {
      this.camber = camber;
      this.caster = caster;
    }
  }

  private Optional<Slopes> slopes(double[] about) {
    double[] camber = new double[about.length];
    double[] caster = new double[about.length];
    for (int i = 0; i < about.length; i++) {
      double[] up = about.clone();
      double[] down = about.clone();
      up[i] += STEP;
      down[i] -= STEP;
      Optional<Angles> more = at(up);
      Optional<Angles> less = at(down);
      if (more.isEmpty() || less.isEmpty()) {
        return Optional.empty();
      }
      camber[i] = (more.get().camber() - less.get().camber()) / (2 * STEP);
      caster[i] = (more.get().caster() - less.get().caster()) / (2 * STEP);
    }
    return Optional.of(new Slopes(camber, caster));
  }

  /**
   * The outline, in order around the set; a single point where nothing can be adjusted; empty where
   * the linkage cannot reach the ride height.
   */
  public List<Angles> outline() {
    double[] settings = start();
    Optional<Slopes> slopes = slopes(settings);
    if (slopes.isEmpty()) {
      return List.of();
    }
    if (adjusters.isEmpty()) {
      return at().map(List::of).orElse(List.of());
    }
    // Around the set, stretches come in order of the direction in which each moves the angles.
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i < settings.length; i++) {
      double camber = slopes.get().camber[i];
      double caster = slopes.get().caster[i];
      stretches.add(new Stretch(i, true, Math.atan2(caster, camber)));
      stretches.add(new Stretch(i, false, Math.atan2(-caster, -camber)));
    }
    stretches.sort(Comparator.comparingDouble(Stretch::direction));
    for (int i = 0; i < settings.length; i++) {
      settings[i] = firstEnd(stretches, i);
    }
    List<Angles> outline = new ArrayList<>();
    for (Stretch stretch : stretches) {
      AdjusterRange range = adjusters.get(stretch.adjuster);
      double from = stretch.up ? range.from() : range.to();
      double to = stretch.up ? range.to() : range.from();
      for (int step = 0; step < ALONG_A_STRETCH; step++) {
        settings[stretch.adjuster] = from + (to - from) * step / ALONG_A_STRETCH;
        at(settings).ifPresent(outline::add);
      }
      settings[stretch.adjuster] = to;
    }
    return List.copyOf(outline);
  }

  /** A part of the outline along which one adjuster runs up or down. */
  private record Stretch(int adjuster, boolean up, double direction) {}

  /** Where an adjuster stands when the outline begins: at the end that its first stretch leaves. */
  private double firstEnd(List<Stretch> stretches, int adjuster) {
    for (Stretch stretch : stretches) {
      if (stretch.adjuster == adjuster) {
        AdjusterRange range = adjusters.get(adjuster);
        return stretch.up ? range.from() : range.to();
      }
    }
    throw new IllegalStateException("no stretch of adjuster " + adjuster);
  }

  /**
   * The best setting: the one whose lesser share of the way from window edge to preferred value is
   * greatest; outside the windows, the one that misses them least. Found by linear programs on the
   * true linkage's slopes, until they no longer move it.
   */
  public Optional<Angles> best(AngleWindow camber, AngleWindow caster) {
    double[] settings = start();
    Optional<Angles> now = at(settings);
    for (int round = 0; round < MOST_ROUNDS && now.isPresent() && settings.length > 0; round++) {
      Optional<Slopes> slopes = slopes(settings);
      if (slopes.isEmpty()) {
        return now;
      }
      double[] next =
          new BestSetting(adjusters, camber, caster)
              .near(settings, now.get(), slopes.get().camber, slopes.get().caster);
      double moved = 0;
      for (int i = 0; i < next.length; i++) {
        moved = Math.max(moved, Math.abs(next[i] - settings[i]));
      }
      settings = next;
      Optional<Angles> then = at(settings);
      if (then.isEmpty()) {
        return now;
      }
      now = then;
      if (moved < CLOSE) {
        break;
      }
    }
    return now;
  }

  private static final int MOST_ROUNDS = 6;

  /** Settings nearer than this are the same (mm). */
  private static final double CLOSE = 1e-3;
}
