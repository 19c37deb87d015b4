package trammel.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * How far a set of reachable angles reaches into the windows: what either angle could be off before
 * no setting would meet both windows.
 *
 * @param camber the setting that decides how far the set reaches into the camber window
 * @param camberReserve how far it does (degrees); negative where it falls short
 * @param camberLow whether the window's lower edge is the nearer one
 * @param caster the same for caster
 */
public record Overlap(
    AlignmentMap.Angles camber,
    double camberReserve,
    boolean camberLow,
    AlignmentMap.Angles caster,
    double casterReserve,
    boolean casterLow) {

  /**
   * The overlap of an outline with both windows.
   *
   * @param outline of the reachable set, in order
   * @param best the best setting, which decides where no setting brings the other angle home
   */
  public static Overlap of(
      List<AlignmentMap.Angles> outline,
      AlignmentMap.Angles best,
      AngleWindow camberWindow,
      AngleWindow casterWindow) {
    Reach camber =
        reach(
            outline,
            best,
            AlignmentMap.Angles::camber,
            camberWindow,
            AlignmentMap.Angles::caster,
            casterWindow);
    Reach caster =
        reach(
            outline,
            best,
            AlignmentMap.Angles::caster,
            casterWindow,
            AlignmentMap.Angles::camber,
            camberWindow);
    return new Overlap(
        camber.at, camber.reserve, camber.low, caster.at, caster.reserve, caster.low);
  }

  private record Reach(AlignmentMap.Angles at, double reserve, boolean low) {}

  /**
   * Among settings whose other angle is in its window, how far beyond the lower edge the greatest
   * lies, and below the upper edge the least; the smaller of both decides.
   */
  private static Reach reach(
      List<AlignmentMap.Angles> outline,
      AlignmentMap.Angles best,
      ToDoubleFunction<AlignmentMap.Angles> angle,
      AngleWindow window,
      ToDoubleFunction<AlignmentMap.Angles> other,
      AngleWindow strip) {
    AlignmentMap.@Nullable Angles greatest = null;
    AlignmentMap.@Nullable Angles least = null;
    for (int i = 0; i < outline.size(); i++) {
      AlignmentMap.Angles here = outline.get(i);
      AlignmentMap.Angles next = outline.get((i + 1) % outline.size());
      for (AlignmentMap.Angles point : inside(here, next, other, strip)) {
        if (greatest == null || angle.applyAsDouble(point) > angle.applyAsDouble(greatest)) {
          greatest = point;
        }
        if (least == null || angle.applyAsDouble(point) < angle.applyAsDouble(least)) {
          least = point;
        }
      }
    }
    if (greatest == null || least == null) {
      greatest = best;
      least = best;
    }
    double overLow = angle.applyAsDouble(greatest) - window.from();
    double underHigh = window.to() - angle.applyAsDouble(least);
    return overLow <= underHigh
        ? new Reach(greatest, overLow, true)
        : new Reach(least, underHigh, false);
  }

  /** What of one stretch of the outline may decide: its start, and where it crosses an edge. */
  private static List<AlignmentMap.Angles> inside(
      AlignmentMap.Angles here,
      AlignmentMap.Angles next,
      ToDoubleFunction<AlignmentMap.Angles> other,
      AngleWindow strip) {
    double value = other.applyAsDouble(here);
    List<AlignmentMap.Angles> found = new ArrayList<>(3);
    if (strip.reserve(value) >= 0) {
      found.add(here);
    }
    crossing(here, next, other, strip.from()).ifPresent(found::add);
    crossing(here, next, other, strip.to()).ifPresent(found::add);
    return found;
  }

  private static Optional<AlignmentMap.Angles> crossing(
      AlignmentMap.Angles here,
      AlignmentMap.Angles next,
      ToDoubleFunction<AlignmentMap.Angles> other,
      double edge) {
    double from = other.applyAsDouble(here) - edge;
    double to = other.applyAsDouble(next) - edge;
    if (from * to >= 0) {
      return Optional.empty();
    }
    double share = from / (from - to);
    List<Double> settings = new ArrayList<>(here.settings().size());
    for (int i = 0; i < here.settings().size(); i++) {
      settings.add(between(here.settings().get(i), next.settings().get(i), share));
    }
    return Optional.of(
        new AlignmentMap.Angles(
            between(here.camber(), next.camber(), share),
            between(here.caster(), next.caster(), share),
            List.copyOf(settings)));
  }

  private static double between(double from, double to, double share) {
    return from + share * (to - from);
  }
}
