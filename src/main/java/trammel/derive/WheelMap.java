package trammel.derive;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.catalog.AxleProfile;
import trammel.catalog.Linkage.MountProfile;
import trammel.catalog.SurveyPoint;
import trammel.geometry.AlignmentMap;
import trammel.geometry.AngleWindow;
import trammel.geometry.Corner;
import trammel.geometry.FrontView;
import trammel.geometry.Heading;
import trammel.geometry.MotionRatio;
import trammel.geometry.Mount;
import trammel.geometry.Pose;
import trammel.geometry.Strut;
import trammel.geometry.WheelTravel;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;

/**
 * The alignment of one wheel as a map: what its adjusters reach at the proposed height, the window,
 * the best setting, and how its angles run over travel. Angles in degrees as a rack would show
 * them, lengths in mm.
 *
 * @param depth how well its geometry is known
 * @param camber at the best setting
 * @param caster at the best setting
 * @param setting the best setting in a fitter's words
 * @param drawing the map; null where no hard points draw one
 * @param known what is said of a suspension that no hard points would solve; empty otherwise
 */
public record WheelMap(
    Position position,
    String depth,
    Quantity camber,
    Quantity caster,
    Quantity camberReserve,
    Quantity casterReserve,
    String setting,
    @Nullable Drawing drawing,
    String known) {

  /** One place on the map (degrees). */
  public record Place(double camber, double caster) {}

  /**
   * The map itself.
   *
   * @param outline of what the adjusters reach, in order
   * @param best where the best setting lies
   * @param untouched where the wheel stands with nothing turned
   * @param camberWindow the maker's
   * @param casterWindow the maker's
   * @param lifts the lifts (mm) between which these arms come into both windows, the other axle
   *     raised alike; null where they never do
   * @param curve the wheel over its travel at the best setting
   * @param lock the wheel from lock to lock at its proposed height
   */
  public record Drawing(
      List<Place> outline,
      Place best,
      Place untouched,
      AngleWindow camberWindow,
      AngleWindow casterWindow,
      @Nullable Lifts lifts,
      List<CurvePoint> curve,
      List<LockPoint> lock) {}

  /** From the least to the greatest lift (mm) over the surveyed height. */
  public record Lifts(double from, double to) {}

  /**
   * One steering input at the proposed height.
   *
   * @param input of the tie rod's inner end, positive to the left (mm of a rack, degrees of a
   *     pitman arm)
   * @param steer of this wheel, positive to the left
   * @param camber against the body, positive with the top outward
   * @param trail mechanical, at the ground
   */
  public record LockPoint(double input, double steer, double camber, double trail) {}

  /**
   * One height of the wheel, straight ahead, the tie rod as set.
   *
   * @param travel rise of the wheel from its proposed height
   * @param toe of this wheel, positive toward the inside
   * @param scrub radius at the ground
   * @param trail mechanical, at the ground
   * @param halfTrack change of the contact's distance from the center plane
   * @param rollCenter height above the contact, by the arms' planes
   * @param spring travel of the spring for travel of the wheel; null where not surveyed; a coil on
   *     a strut corner of which nothing else is said sits around the strut
   * @param damper the same; a strut is its own
   * @param sensor the same
   */
  public record CurvePoint(
      double travel,
      double camber,
      double caster,
      double kingpinInclination,
      double toe,
      double scrub,
      double trail,
      double halfTrack,
      double rollCenter,
      @Nullable Double spring,
      @Nullable Double damper,
      @Nullable Double sensor) {}

  /** Steps of a curve (mm). */
  private static final double STEP = 10;

  /** How finely the last lift is solved for (mm). */
  private static final double LIFT_STEP = 0.1;

  /** The maps of every independent wheel of an axle that has an alignment to set. */
  public static List<WheelMap> of(Build build, LocalDate on) {
    Derivation derivation = new Derivation(build, on);
    List<WheelMap> maps = new ArrayList<>();
    for (Axle axle : Axle.values()) {
      AxleProfile profile = build.vehicle().axle(axle);
      boolean specified = profile.alignment().stated();
      if (profile.layout().beam() || !(axle == Axle.FRONT || specified)) {
        continue;
      }
      for (Position position : Position.of(axle)) {
        WheelAlignment wheel = derivation.corners(axle).alignment(position);
        maps.add(
            new WheelMap(
                position,
                wheel.depth().toString(),
                wheel.camber(),
                wheel.caster(),
                wheel.camberReserve(),
                wheel.casterReserve(),
                wheel.setting(),
                derivation
                    .corners(axle)
                    .solvable(position)
                    .map(corner -> drawing(corner, profile, position.side().orElseThrow()))
                    .orElse(null),
                profile.layout().solved() ? "" : RackAlignment.UNSOLVED));
      }
    }
    return List.copyOf(maps);
  }

  private static Drawing drawing(Corners.Surveyed corner, AxleProfile profile, Side side) {
    SurveyedAlignment.Solved solved = corner.solved().orElseThrow();
    AlignmentMap.Angles untouched =
        solved.map().at(new double[corner.model().ranges().size()]).orElseThrow();
    return new Drawing(
        solved.outline().stream().map(angles -> place(angles, solved)).toList(),
        place(solved.best(), solved),
        place(untouched, solved),
        shown(solved.camberWindow(), solved.camberOffset()),
        shown(solved.casterWindow(), solved.casterOffset()),
        lifts(corner, solved),
        curve(corner, solved, profile),
        lock(corner, solved, side));
  }

  /** A place as the rack would show it. */
  private static Place place(AlignmentMap.Angles angles, SurveyedAlignment.Solved solved) {
    return new Place(
        angles.camber() + solved.camberOffset(), angles.caster() + solved.casterOffset());
  }

  private static AngleWindow shown(AngleWindow window, double offset) {
    return new AngleWindow(
        window.from() + offset, window.preferred() + offset, window.to() + offset);
  }

  /** The lifts about the proposed one, or the least there are, at which both windows are met. */
  private static @Nullable Lifts lifts(Corners.Surveyed corner, SurveyedAlignment.Solved solved) {
    double proposed = -corner.model().travel(SurveyedAlignment.PROPOSED);
    double inside = meets(corner, solved, proposed) ? proposed : LOWEST_LIFT;
    while (!meets(corner, solved, inside)) {
      inside += LIFT_STRIDE;
      if (inside > HIGHEST_LIFT) {
        return null;
      }
    }
    return new Lifts(
        end(corner, solved, inside, -LIFT_STRIDE), end(corner, solved, inside, LIFT_STRIDE));
  }

  /** How far from a lift that meets the windows others do, one way. */
  private static double end(
      Corners.Surveyed corner, SurveyedAlignment.Solved solved, double start, double stride) {
    double inside = start;
    double outside = start + stride;
    while (meets(corner, solved, outside)) {
      inside = outside;
      outside += stride;
    }
    while (Math.abs(outside - inside) > LIFT_STEP) {
      double middle = (inside + outside) / 2;
      if (meets(corner, solved, middle)) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return inside;
  }

  private static boolean meets(
      Corners.Surveyed corner, SurveyedAlignment.Solved solved, double lift) {
    CornerModel model = corner.model();
    AngleWindow camber = solved.camberWindow();
    // Both axles raised alike: the sheet's rake does not come in.
    AngleWindow caster = shown(solved.casterWindow(), corner.alignment().rake());
    return new AlignmentMap(
            model.plain(), model.arm(), model.ranges(), -lift, corner.alignment().toe())
        .best(camber, caster)
        .filter(
            angles -> camber.reserve(angles.camber()) >= 0 && caster.reserve(angles.caster()) >= 0)
        .isPresent();
  }

  /** Lifts among which one is looked for that meets the windows (mm), and how densely. */
  private static final double LOWEST_LIFT = -60;

  private static final double HIGHEST_LIFT = 200;
  private static final double LIFT_STRIDE = 5;

  private static List<CurvePoint> curve(
      Corners.Surveyed corner, SurveyedAlignment.Solved solved, AxleProfile profile) {
    CornerModel model = corner.model();
    CornerPoses poses = corner.poses().orElseThrow();
    if (!model.bounded()) {
      return List.of();
    }
    Corner<Binary64> linkage = poses.plain(true);
    WheelTravel<Binary64> travel = WheelTravel.of(linkage);
    Heading<Binary64> rod =
        new Heading.ByTieRod<>(
            linkage.tieRodInner(), new Binary64(solved.after().tieRodLength().getValue()));
    double ride = model.travel(SurveyedAlignment.PROPOSED);
    Binary64 radius = new Binary64(linkage.surveyedWheel().getZ().getReal());
    List<CurvePoint> curve = new ArrayList<>();
    double first = Math.ceil((-model.end(CornerModel.DROOP) - ride) / STEP) * STEP;
    double last = model.end(CornerModel.BUMP) - ride;
    if (!(travel.at(new Binary64(ride), rod) instanceof Pose<Binary64> rest)) {
      return List.of();
    }
    for (double at = first; at <= last; at += STEP) {
      if (travel.at(new Binary64(ride + at), rod) instanceof Pose<Binary64> pose) {
        double contact = pose.contact(radius).getZ().getReal();
        double rollCenter = FrontView.of(linkage, pose, radius).rollCenter().getReal() - contact;
        curve.add(
            new CurvePoint(
                at,
                pose.camber().getReal() + solved.camberOffset(),
                pose.caster().getReal() + solved.casterOffset(),
                pose.kingpinInclination().getReal(),
                pose.toe().getReal(),
                pose.scrubRadius(radius).getReal(),
                pose.mechanicalTrail(radius).getReal(),
                pose.contact(radius).getY().getReal() - rest.contact(radius).getY().getReal(),
                rollCenter,
                profile.linkage().spring() == null && around(profile)
                    ? along(linkage, pose, rod)
                    : ratio(profile.linkage().spring(), poses, pose, rod),
                profile.linkage().damper() == null
                    ? along(linkage, pose, rod)
                    : ratio(profile.linkage().damper(), poses, pose, rod),
                ratio(profile.linkage().sensor(), poses, pose, rod)));
      }
    }
    return List.copyOf(curve);
  }

  private static List<LockPoint> lock(
      Corners.Surveyed corner, SurveyedAlignment.Solved solved, Side side) {
    CornerModel model = corner.model();
    CornerPoses poses = corner.poses().orElseThrow();
    if (!model.bounded()) {
      return List.of();
    }
    Corner<Binary64> linkage = poses.plain(true);
    Binary64 rod = new Binary64(solved.after().tieRodLength().getValue());
    Binary64 radius = new Binary64(linkage.surveyedWheel().getZ().getReal());
    Binary64 ride = new Binary64(model.travel(SurveyedAlignment.PROPOSED));
    // A corner is worked out as a left one: on the right, steering to the left goes inward.
    double outward = side == Side.LEFT ? 1 : -1;
    List<LockPoint> lock = new ArrayList<>();
    for (int step = -LOCK_STEPS; step <= LOCK_STEPS; step++) {
      double input = model.end(CornerModel.LOCK) * step / LOCK_STEPS;
      Heading<Binary64> heading =
          new Heading.ByTieRod<>(
              model.steered(linkage.tieRodInner(), new Binary64(outward * input)), rod);
      if (WheelTravel.of(linkage).at(ride, heading) instanceof Pose<Binary64> pose) {
        lock.add(
            new LockPoint(
                input,
                -outward * pose.toe().getReal(),
                pose.camber().getReal() + solved.camberOffset(),
                pose.mechanicalTrail(radius).getReal()));
      }
    }
    return List.copyOf(lock);
  }

  /** Steering inputs shown to either side. */
  private static final int LOCK_STEPS = 4;

  /** Whether a spring of which nothing else is said sits around a strut. */
  private static boolean around(AxleProfile profile) {
    return profile.springs() == AxleProfile.Springs.COIL;
  }

  /** The motion ratio of a strut along its own axis; null of what is no strut. */
  private static @Nullable Double along(
      Corner<Binary64> corner, Pose<Binary64> pose, Heading<Binary64> heading) {
    return corner instanceof Strut<Binary64> strut
        ? MotionRatio.of(strut, strut.along()).at(pose, heading).getReal()
        : null;
  }

  /** The motion ratio of a mount in a pose; null where it is not surveyed. */
  private static @Nullable Double ratio(
      @Nullable MountProfile mount,
      CornerPoses poses,
      Pose<Binary64> pose,
      Heading<Binary64> heading) {
    if (mount == null || !known(mount)) {
      return null;
    }
    Corner<Binary64> surveyed = poses.plain(false);
    return MotionRatio.of(
            poses.plain(true),
            Mount.of(surveyed, mount.on(), vector(mount.body()), vector(mount.moving())))
        .at(pose, heading)
        .getReal();
  }

  private static boolean known(MountProfile mount) {
    return Stream.of(
            mount.body().fore(),
            mount.body().out(),
            mount.body().up(),
            mount.moving().fore(),
            mount.moving().out(),
            mount.moving().up())
        .allMatch(Quantity::isKnown);
  }

  private static FieldVector3D<Binary64> vector(SurveyPoint point) {
    return new FieldVector3D<>(Binary64Field.getInstance(), SurveyedShape.vector(point));
  }
}
