package trammel.geometry;

import java.util.Optional;
import org.hipparchus.CalculusFieldElement;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.analysis.differentiation.GradientField;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.twod.FieldVector2D;

/**
 * A beam axle held in side view by lower and upper links (three-, four- or five-link). Points in
 * mm: fore, left, up; only fore and up count. Lift is the rise of the frame over the wheel center
 * (mm).
 *
 * <p>Links are taken with their lengths as seen from the side: exact in pure heave where left and
 * right links mirror each other and the axle stays centered, since the lateral parts of their
 * lengths then stay what they are. Own derivation from the two constant lengths. A position that
 * the links do not reach, or reach only past the point where the axle would turn back, is empty.
 *
 * <p>Derivatives come out to first order.
 */
public record SideViewLinks<T extends CalculusFieldElement<T>>(
    Link<T> lower, Link<T> upper, FieldVector3D<T> wheelCenter) {

  /** Longest step of the lower link's angle on the way to a solution (radians). */
  private static final double LARGEST_STEP = 0.02;

  /** Step of the angle (radians) below which it is the solution. */
  private static final double CONVERGED = 1e-13;

  /** Enough for half a turn of the lower link. */
  private static final int ITERATIONS = 200;

  /**
   * One link.
   *
   * @param frameEnd center of its bush on the frame
   * @param axleEnd center of its bush on the axle
   */
  public record Link<T extends CalculusFieldElement<T>>(
      FieldVector3D<T> frameEnd, FieldVector3D<T> axleEnd) {}

  /**
   * @throws IllegalArgumentException if a link has no length in side view, both meet the axle at
   *     one point, or the upper link is in line with its bracket on the axle: nothing then says how
   *     the axle turns
   */
  public SideViewLinks {
    double lowerLength = flat(lower.axleEnd.subtract(lower.frameEnd)).getNorm().getReal();
    double branch = branch(lower, upper);
    if (!(lowerLength > 0 && Math.abs(branch) > 0)) {
      throw new IllegalArgumentException(
          "found links that do not hold the axle from turning: lower link of "
              + lowerLength
              + " mm, upper link in line with the bracket that joins it to the lower link; expected"
              + " two links that meet the axle apart from each other");
    }
  }

  /** Pose after a lift, the links as found. */
  public Optional<AxlePose<T>> at(T lift) {
    LinkChange<T> none = LinkChange.none(lift.getField());
    return at(lift, none, none);
  }

  /** Pose after a lift and changes of the links, counted from the pose as found. */
  public Optional<AxlePose<T>> at(T lift, LinkChange<T> lowerChange, LinkChange<T> upperChange) {
    Optional<Gradient> solved = lowerAngle(lift, lowerChange, upperChange);
    if (solved.isEmpty()) {
      return Optional.empty();
    }
    // One step of Newton's method in the field's own elements gives the angle its derivatives.
    T angle = lift.newInstance(solved.get().getValue());
    double wheelUpPerAngle = solved.get().getPartialDerivative(0);
    T target = wheelCenter.getZ().subtract(lift);
    FourBar<T> bar = fourBar(lowerChange, upperChange);
    return bar.at(angle)
        .map(
            near ->
                angle.subtract(near.wheelCenter().getY().subtract(target).divide(wheelUpPerAngle)))
        .flatMap(bar::at)
        .map(
            at ->
                new AxlePose<>(
                    at.turn().toDegrees(), at.wheelCenter().getX().subtract(wheelCenter.getX())));
  }

  /**
   * The lower link's angle at a lift, in plain numbers, by Newton's method from the angle as found.
   * Its steps are kept short and the wheel center must keep rising or falling with the angle all
   * the way: past a turning point the axle would come back on the other side.
   *
   * @return value: the angle (radians); derivative: rise of the wheel center per angle (mm)
   */
  private Optional<Gradient> lowerAngle(
      T lift, LinkChange<T> lowerChange, LinkChange<T> upperChange) {
    FieldVector2D<T> link = flat(lower.axleEnd.subtract(lower.frameEnd));
    double foundFore = link.getX().getReal();
    double foundUp = link.getY().getReal();
    LinkChange<T> none = LinkChange.none(lift.getField());
    double slopeAsFound =
        wheelUp(plainFourBar(none, none), Math.atan2(foundUp, foundFore))
            .map(height -> height.getPartialDerivative(0))
            .orElse(0.0);
    // A change of the lower link is met by swinging it, for the height of the axle is given.
    double length = link.getNorm().getReal() + lowerChange.longer().getReal();
    double changedUp = foundUp - lowerChange.riseGained().getReal();
    if (!(Math.abs(changedUp) < length)) {
      return Optional.empty();
    }
    double changedFore = Math.sqrt(length * length - changedUp * changedUp);
    double angle = Math.atan2(changedUp, Math.copySign(changedFore, foundFore));
    FourBar<Gradient> bar = plainFourBar(lowerChange, upperChange);
    double target = wheelCenter.getZ().getReal() - lift.getReal();
    for (int iteration = 0; iteration < ITERATIONS; iteration++) {
      Optional<Gradient> height = wheelUp(bar, angle);
      if (height.isEmpty()) {
        return Optional.empty();
      }
      double slope = height.get().getPartialDerivative(0);
      double step = (target - height.get().getValue()) / slope;
      if (!(slope * slopeAsFound > 0) || Double.isNaN(step)) {
        return Optional.empty();
      }
      if (Math.abs(step) < CONVERGED) {
        return Optional.of(new Gradient(angle, slope));
      }
      angle += Math.copySign(Math.min(Math.abs(step), LARGEST_STEP), step);
    }
    return Optional.empty();
  }

  private static Optional<Gradient> wheelUp(FourBar<Gradient> bar, double angle) {
    return bar.at(Gradient.variable(1, 0, angle)).map(at -> at.wheelCenter().getY());
  }

  private FourBar<Gradient> plainFourBar(LinkChange<T> lowerChange, LinkChange<T> upperChange) {
    return new SideViewLinks<>(plain(lower), plain(upper), plain(wheelCenter))
        .fourBar(plain(lowerChange), plain(upperChange));
  }

  private FourBar<T> fourBar(LinkChange<T> lowerChange, LinkChange<T> upperChange) {
    FieldVector2D<T> wheel = flat(wheelCenter);
    return new FourBar<>(
        raised(lower.frameEnd, lowerChange.frameEndRaised()),
        raised(upper.frameEnd, upperChange.frameEndRaised()),
        flat(lower.axleEnd.subtract(lower.frameEnd)).getNorm().add(lowerChange.longer()),
        flat(upper.axleEnd.subtract(upper.frameEnd)).getNorm().add(upperChange.longer()),
        raised(lower.axleEnd, lowerChange.axleEndRaised()).subtract(wheel),
        raised(upper.axleEnd, upperChange.axleEndRaised()).subtract(wheel),
        Math.signum(branch(lower, upper)));
  }

  /** Side on which the upper link's axle end lies of the line between its neighbors. */
  private static <T extends CalculusFieldElement<T>> double branch(Link<T> lower, Link<T> upper) {
    return FourBar.cross(
            flat(upper.frameEnd.subtract(lower.axleEnd)),
            flat(upper.axleEnd.subtract(lower.axleEnd)))
        .getReal();
  }

  private static <T extends CalculusFieldElement<T>> Link<Gradient> plain(Link<T> link) {
    return new Link<>(plain(link.frameEnd), plain(link.axleEnd));
  }

  private static <T extends CalculusFieldElement<T>> FieldVector3D<Gradient> plain(
      FieldVector3D<T> point) {
    return new FieldVector3D<>(GradientField.getField(1), point.toVector3D());
  }

  private static <T extends CalculusFieldElement<T>> LinkChange<Gradient> plain(
      LinkChange<T> change) {
    return new LinkChange<>(
        Gradient.constant(1, change.longer().getReal()),
        Gradient.constant(1, change.frameEndRaised().getReal()),
        Gradient.constant(1, change.axleEndRaised().getReal()));
  }

  private static <T extends CalculusFieldElement<T>> FieldVector2D<T> flat(FieldVector3D<T> point) {
    return new FieldVector2D<>(point.getX(), point.getZ());
  }

  private static <T extends CalculusFieldElement<T>> FieldVector2D<T> raised(
      FieldVector3D<T> point, T by) {
    return new FieldVector2D<>(point.getX(), point.getZ().add(by));
  }
}
