package trammel.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.Field;
import org.hipparchus.analysis.differentiation.Gradient;
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

  /** Turn of the lower arm over which its slope is taken (radians). */
  private static final double SLOPE_STEP = 1e-3;

  private final Corner<Binary64> surveyed;
  private final Corner<Gradient> varied;
  private final Map<HardPoint, Vector3D> fixed;
  private final List<AdjusterRange> adjusters;
  private final double travel;
  private final double toe;

  /** The lower arm's angle at {@link #start} (radians). */
  private final double angle;

  /** What a turn of the lower arm raises the wheel by there (mm per radian); NaN where unknown. */
  private final double slope;

  /** At {@link #start}; empty also where nothing can be adjusted, and nobody asks for it. */
  private final Optional<Tangent> atStart;

  /**
   * The map of a corner.
   *
   * @param fixed shifts that are there whatever the adjusters do: an arm of another shape (mm)
   * @param travel of the wheel at the ride height meant (mm); a lift of d is −d
   * @param toe of this wheel that is set (degrees), positive toward the inside
   * @throws OutOfReachException if the points make no linkage
   */
  public AlignmentMap(
      HardPoints<Binary64> points,
      Map<HardPoint, Vector3D> fixed,
      List<AdjusterRange> adjusters,
      double travel,
      double toe) {
    surveyed = Corner.of(points, Map.of());
    this.fixed = Map.copyOf(fixed);
    this.adjusters = List.copyOf(adjusters);
    this.travel = travel;
    this.toe = toe;
    Gradient none = Gradient.constant(adjusters.size(), 0);
    varied = surveyed.in(number -> none.newInstance(number.getReal()));
    Corner<Binary64> started = shifted(start());
    if (WheelTravel.of(started).at(new Binary64(travel), plainHeading())
        instanceof Pose<Binary64> pose) {
      angle = pose.lowerAngle().getReal();
      slope = slope(started, pose);
    } else {
      angle = surveyed.surveyedAngle().getReal();
      slope = Double.NaN;
    }
    atStart = adjusters.isEmpty() ? Optional.empty() : tangent(start(), angle);
  }

  private double slope(Corner<Binary64> corner, Pose<Binary64> pose) {
    return corner.pose(pose.lowerAngle().add(SLOPE_STEP), plainHeading())
            instanceof Pose<Binary64> above
        ? above.wheelCenter().getZ().subtract(pose.wheelCenter().getZ()).getReal() / SLOPE_STEP
        : Double.NaN;
  }

  /** Where the lower arm is looked for at settings (radians): as the slopes at the start say. */
  private double angleNear(double[] settings) {
    double near = angle;
    if (atStart.isPresent()) {
      Tangent tangent = atStart.get();
      for (int i = 0; i < settings.length; i++) {
        near += tangent.turn[i] * (settings[i] - tangent.angles.settings.get(i));
      }
    }
    return near;
  }

  private Heading<Binary64> plainHeading() {
    return new Heading.Reset<>(new Binary64(toe));
  }

  private Corner<Binary64> shifted(double[] settings) {
    return surveyed.shifted(shifts(Binary64Field.getInstance(), plain(settings)));
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
    Posed<Binary64> posed =
        WheelTravel.of(shifted(settings))
            .near(angleNear(settings), slope)
            .at(new Binary64(travel), plainHeading());
    if (!(posed instanceof Pose<Binary64> pose)) {
      return Optional.empty();
    }
    return Optional.of(
        new Angles(pose.camber().getReal(), pose.caster().getReal(), boxed(settings)));
  }

  private static List<Double> boxed(double[] settings) {
    return Arrays.stream(settings).boxed().toList();
  }

  private static Binary64[] plain(double[] settings) {
    return Arrays.stream(settings).mapToObj(Binary64::new).toArray(Binary64[]::new);
  }

  /** Where the adjusters, and what is fixed, have moved the hard points (mm). */
  private <T extends CalculusFieldElement<T>> Map<HardPoint, FieldVector3D<T>> shifts(
      Field<T> field, T[] settings) {
    Map<HardPoint, FieldVector3D<T>> shifts = new EnumMap<>(HardPoint.class);
    fixed.forEach((point, shift) -> shifts.put(point, new FieldVector3D<>(field, shift)));
    for (int i = 0; i < settings.length; i++) {
      T setting = settings[i];
      adjusters
          .get(i)
          .perMillimeter()
          .forEach(
              (point, shift) ->
                  shifts.merge(point, new FieldVector3D<>(setting, shift), FieldVector3D::add));
    }
    return shifts;
  }

  /** Settings nearest to as surveyed that the ranges allow (mm). */
  private double[] start() {
    return adjusters.stream().mapToDouble(a -> Math.max(a.from(), Math.min(a.to(), 0))).toArray();
  }

  /**
   * Camber and caster at settings, their change for each mm of each adjuster (degrees/mm), and the
   * lower arm's (radians/mm).
   */
  private static final class Tangent {
    private final Angles angles;
    private final double[] camber;
    private final double[] caster;
    private final double[] turn;

    Tangent(Angles angles, double[] camber, double[] caster, double[] turn) {
      this.angles = angles;
      this.camber = camber;
      this.caster = caster;
      this.turn = turn;
    }
  }

  /**
   * Empty where the linkage cannot reach the ride height.
   *
   * @param near where the lower arm is looked for (radians)
   */
  private Optional<Tangent> tangent(double[] settings, double near) {
    int count = settings.length;
    Gradient none = Gradient.constant(count, 0);
    Gradient[] setting = new Gradient[count];
    for (int i = 0; i < count; i++) {
      setting[i] = Gradient.variable(count, i, settings[i]);
    }
    Posed<Gradient> posed =
        WheelTravel.of(varied.shifted(shifts(none.getField(), setting)), shifted(settings))
            .near(near, slope)
            .at(none.newInstance(travel), new Heading.Reset<>(none.newInstance(toe)));
    if (!(posed instanceof Pose<Gradient> pose)) {
      return Optional.empty();
    }
    Gradient camber = pose.camber();
    Gradient caster = pose.caster();
    return Optional.of(
        new Tangent(
            new Angles(camber.getValue(), caster.getValue(), boxed(settings)),
            camber.getGradient(),
            caster.getGradient(),
            pose.lowerAngle().getGradient()));
  }

  /**
   * The outline, in order around the set; a single point where nothing can be adjusted; empty where
   * the linkage cannot reach the ride height.
   */
  public List<Angles> outline() {
    if (adjusters.isEmpty()) {
      return at().map(List::of).orElse(List.of());
    }
    double[] settings = start();
    if (atStart.isEmpty()) {
      return List.of();
    }
    Tangent tangent = atStart.get();
    // Around the set, stretches come in order of the direction in which each moves the angles.
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i < settings.length; i++) {
      double camber = tangent.camber[i];
      double caster = tangent.caster[i];
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
   * true linkage's slopes, until they no longer move it. Each may move the adjusters half as far as
   * the one before: where more than two adjusters lead to the same angles, the programs would
   * otherwise leap from one equally good setting to another, each a slope's error away.
   */
  public Optional<Angles> best(AngleWindow camber, AngleWindow caster) {
    if (adjusters.isEmpty()) {
      return at();
    }
    double[] settings = start();
    Optional<Tangent> now = atStart;
    double moved = Double.POSITIVE_INFINITY;
    for (int round = 0; round < MOST_ROUNDS && now.isPresent() && moved >= CLOSE; round++) {
      double[] next =
          new BestSetting(adjusters, camber, caster)
              .near(settings, moved / 2, now.get().angles, now.get().camber, now.get().caster);
      Optional<Tangent> then = tangent(next, angleNear(next));
      if (then.isEmpty()) {
        break;
      }
      moved = 0;
      for (int i = 0; i < next.length; i++) {
        moved = Math.max(moved, Math.abs(next[i] - settings[i]));
      }
      settings = next;
      now = then;
    }
    return now.map(tangent -> tangent.angles);
  }

  private static final int MOST_ROUNDS = 6;

  /** Settings nearer than this are the same (mm). */
  private static final double CLOSE = 1e-3;
}
