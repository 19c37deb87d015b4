package trammel.derive;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import trammel.catalog.AxleProfile;
import trammel.catalog.Shape;
import trammel.catalog.StationProfile;
import trammel.geometry.ClosestApproach;
import trammel.geometry.Corner;
import trammel.geometry.Heading;
import trammel.geometry.Obstacle;
import trammel.geometry.Pose;
import trammel.geometry.SteeringSweep;
import trammel.geometry.SweepRange;
import trammel.geometry.TireSolid;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Position;
import trammel.subject.Side;
import trammel.subject.Station;
import trammel.subject.Station.FixedTo;

/**
 * Gaps at surveyed stations: the tire swept over the corner's whole travel and lock, once as found
 * and once as proposed.
 */
final class SweptGaps {
  private static final Formula OUTBOARD =
      new Formula("tire moved outboard", "book offset − effective offset", "definition of offset");

  /** A share of full lock, or mm of travel, that counts as the end itself. */
  private static final double NEARLY = 0.98;

  private static final double AT_REST = 3;

  private final Derivation derivation;
  private final HeightFacts heights;

  SweptGaps(Derivation derivation, HeightFacts heights) {
    this.derivation = derivation;
    this.heights = heights;
  }

  /**
   * The gap at one station.
   *
   * @param change as proposed against as found
   * @param pose in which it is least, in words
   * @param surface of the tire that comes closest
   */
  record Swept(Quantity gap, Quantity change, String pose, String surface) {}

  /** The closest approach at each station, and the shape that it is to. */
  record Near(Map<Station, ClosestApproach> approaches, Map<Station, SurveyedShape> shapes) {}

  /**
   * What was found in numbers for one wheel: as proposed, as found, and the deciding poses.
   *
   * @param heights of the wheel in those poses, straight ahead, from where it was surveyed (mm)
   */
  record Found(
      Near now, Near then, Map<Station, Pose<Gradient>> poses, Map<Station, Double> heights) {}

  /** Every surveyed station of a wheel; none where the corner, or what bounds it, is not known. */
  Map<Station, Swept> at(Position position, AxleProfile axle) {
    if (axle.stations().values().stream().allMatch(station -> station.shapes().isEmpty())) {
      return Map.of();
    }
    Optional<Corners.Surveyed> corner =
        derivation.corners(position.axle().orElseThrow()).solvable(position);
    WheelEnd now = derivation.after(position);
    WheelEnd then = derivation.before(position);
    Quantity book = new WheelEnd(derivation.build.bookAt(position), derivation.figures).offset;
    List<Quantity> needed =
        List.of(now.radius, now.width, now.offset, then.radius, then.width, then.offset, book);
    Quantity raised = heights.bodyLift(position);
    if (corner.isEmpty()
        || !corner.get().model().bounded()
        || !raised.isKnown()
        || !needed.stream().allMatch(Quantity::isKnown)) {
      return Map.of();
    }
    List<Double> values = new ArrayList<>();
    needed.forEach(quantity -> values.add(quantity.value()));
    values.add(raised.value());
    boolean touched = derivation.corners(position.axle().orElseThrow()).touched();
    Found found =
        derivation.surveys.gaps(
            new Surveys.GapKey(corner.get().key(), touched, values),
            () -> find(corner.get(), axle, now, then, book.value(), raised.value(), touched));
    Map<Station, Swept> swept = new EnumMap<>(Station.class);
    found.now.approaches.forEach(
        (station, approach) ->
            swept.put(
                station,
                swept(position, corner.get(), found, station, approach, now, then, book, raised)));
    return swept;
  }

  private Found find(
      Corners.Surveyed corner,
      AxleProfile axle,
      WheelEnd now,
      WheelEnd then,
      double book,
      double raised,
      boolean touched) {
    CornerModel model = corner.model();
    CornerPoses corners = corner.poses().orElseThrow();
    double bump = model.end(CornerModel.BUMP);
    double droop = model.end(CornerModel.DROOP);
    double bumpThen = model.end(CornerModel.BUMP_AS_FOUND);
    double droopThen = model.end(CornerModel.DROOP_AS_FOUND);
    double outboardThen = book - then.offset.value();
    boolean same =
        now.radius.value() == then.radius.value()
            && now.width.value() == then.width.value()
            && now.offset.value() == then.offset.value()
            && bump == bumpThen
            && droop == droopThen
            && raised == 0
            && !touched;
    Near nearThen =
        derivation.surveys.asFound(
            new Surveys.SweepKey(
                corner.key().axle(),
                List.of(
                    corners.tieRod(false).getValue(),
                    bumpThen,
                    droopThen,
                    model.end(CornerModel.LOCK),
                    then.radius.value(),
                    then.width.value(),
                    outboardThen)),
            () ->
                sweep(
                    new WheelSweep(model, corners, false, bumpThen, droopThen, outboardThen),
                    axle,
                    then,
                    0));
    Near nearNow =
        same
            ? nearThen
            : sweep(
                new WheelSweep(model, corners, touched, bump, droop, book - now.offset.value()),
                axle,
                now,
                raised);
    return new Found(
        nearNow,
        nearThen,
        poses(model, corners, touched, nearNow.approaches),
        heights(corners, touched, nearNow.approaches));
  }

  /** The shapes of a station; none where a value of one is missing, for it may be the nearest. */
  private static List<SurveyedShape> shapes(StationProfile profile, double raised) {
    FixedTo fixedTo = profile.fixedTo() == null ? FixedTo.BODY : profile.fixedTo();
    boolean whole =
        profile.shapes().stream()
            .flatMap(shape -> SurveyedShape.needed(shape).stream())
            .allMatch(Quantity::isKnown);
    return (whole ? profile.shapes() : List.<Shape>of())
        .stream().map((Shape shape) -> SurveyedShape.of(shape, fixedTo, raised)).toList();
  }

  private static Near sweep(WheelSweep sweep, AxleProfile axle, WheelEnd wheel, double raised) {
    Map<Station, ClosestApproach> least = new EnumMap<>(Station.class);
    Map<Station, SurveyedShape> closest = new EnumMap<>(Station.class);
    Optional<SweepRange> range = sweep.range();
    List<Station> stations = new ArrayList<>();
    List<SurveyedShape> shapes = new ArrayList<>();
    axle.stations()
        .forEach(
            (station, profile) -> {
              for (SurveyedShape shape : shapes(profile, raised)) {
                stations.add(station);
                shapes.add(shape);
              }
            });
    List<ClosestApproach> approaches =
        range.isEmpty()
            ? List.of()
            : SteeringSweep.sweep(
                    new TireSolid(
                        wheel.radius.value(), wheel.width.value(), SweptGap.SHOULDER.value()),
                    sweep,
                    range.get(),
                    shapes.stream().map(SurveyedShape::obstacle).toList())
                .approaches();
    for (int i = 0; i < approaches.size(); i++) {
      ClosestApproach before = least.get(stations.get(i));
      if (before == null || approaches.get(i).gap() < before.gap()) {
        least.put(stations.get(i), approaches.get(i));
        closest.put(stations.get(i), shapes.get(i));
      }
    }
    return new Near(least, closest);
  }

  /**
   * The deciding poses once more, with derivatives. What the knuckle carries is told from the pose
   * that it was surveyed in, where it stands to the tire as in any other.
   */
  private static Map<Station, Pose<Gradient>> poses(
      CornerModel model,
      CornerPoses corners,
      boolean touched,
      Map<Station, ClosestApproach> approaches) {
    Map<Station, Pose<Gradient>> poses = new EnumMap<>(Station.class);
    Map<List<Double>, Optional<Pose<Gradient>>> swept = new HashMap<>();
    approaches.forEach(
        (station, approach) -> {
          Optional<Pose<Gradient>> pose =
              approach.obstacle().fixedTo() == Obstacle.FixedTo.KNUCKLE
                  ? Optional.of(corners.asSurveyed())
                  : swept.computeIfAbsent(
                      List.of(approach.travel(), approach.steer()),
                      key -> pose(model, corners, touched, approach));
          pose.ifPresent(deciding -> poses.put(station, deciding));
        });
    return poses;
  }

  private static Optional<Pose<Gradient>> pose(
      CornerModel model, CornerPoses corners, boolean touched, ClosestApproach approach) {
    // At an end the pose follows the end; between the ends it does not matter to first order.
    Gradient at =
        Stream.of(corners.atBump(touched), corners.atDroop(touched))
            .flatMap(Optional::stream)
            .map(Pose::lowerAngle)
            .filter(end -> nearly(approach.travel(), end.getValue()))
            .findFirst()
            .orElseGet(() -> model.variables().constant(approach.travel()));
    Gradient rack = model.endVariable(CornerModel.LOCK);
    double share = approach.steer() / rack.getValue();
    Gradient steer =
        Math.abs(share) >= NEARLY
            ? rack.multiply(Math.signum(share))
            : model.variables().constant(approach.steer());
    return corners.linkage(touched).pose(at, corners.steered(touched, steer))
            instanceof Pose<Gradient> pose
        ? Optional.of(pose)
        : Optional.empty();
  }

  private static boolean nearly(double angle, double end) {
    return Math.abs(angle - end) < 1e-3;
  }

  private Swept swept(
      Position position,
      Corners.Surveyed corner,
      Found found,
      Station station,
      ClosestApproach approach,
      WheelEnd now,
      WheelEnd then,
      Quantity book,
      Quantity raised) {
    Pose<Gradient> pose = found.poses.get(station);
    Quantity outboard = OUTBOARD.linear(1, book, -1, now.offset);
    if (pose == null) {
      pose = corner.solved().orElseThrow().after();
    }
    SurveyedShape shape = found.now.shapes.get(station);
    SweptGap swept =
        SweptGap.of(
            corner.variables(),
            pose,
            approach,
            shape.place(approach.onSurveyed(), raised),
            found.then.approaches.getOrDefault(station, approach),
            now,
            then,
            outboard);
    return new Swept(
        swept.gap(),
        swept.change(),
        words(position, corner.model(), approach, found.heights.getOrDefault(station, 0.0)),
        approach.surface().name().toLowerCase(Locale.ROOT).replace('_', ' '));
  }

  private static String words(
      Position position, CornerModel model, ClosestApproach approach, double height) {
    if (approach.obstacle().fixedTo() == Obstacle.FixedTo.KNUCKLE) {
      return "In every pose";
    }
    double share = approach.steer() / model.end(CornerModel.LOCK);
    Vector3D axis = approach.stance().axis();
    double inward = Math.toDegrees(Math.atan2(axis.getX(), axis.getY()));
    boolean left = inward < 0 == (position.side().orElseThrow() == Side.LEFT);
    String steering =
        Math.abs(share) >= NEARLY
            ? "Full " + (left ? "left" : "right") + " lock"
            : Math.abs(inward) < 1
                ? "Straight ahead"
                : "Steered " + Math.round(Math.abs(inward)) + "° " + (left ? "left" : "right");
    return steering + ", " + travel(model, height);
  }

  /**
   * How high the swept linkage holds the wheel where each gap is least, as {@link Found} has it.
   */
  private static Map<Station, Double> heights(
      CornerPoses corners, boolean touched, Map<Station, ClosestApproach> approaches) {
    Corner<Binary64> linkage = corners.plain(touched);
    double surveyed = linkage.surveyedWheel().getZ().getReal();
    Heading<Binary64> straight = corners.plainSteered(touched, 0);
    Map<Double, Double> byTravel = new HashMap<>();
    Map<Station, Double> heights = new EnumMap<>(Station.class);
    approaches.forEach(
        (station, approach) ->
            heights.put(
                station,
                byTravel.computeIfAbsent(
                    approach.travel(),
                    travel ->
                        linkage.pose(new Binary64(travel), straight) instanceof Pose<Binary64> pose
                            ? pose.wheelCenter().getZ().getReal() - surveyed
                            : 0.0)));
    return heights;
  }

  private static String travel(CornerModel model, double height) {
    if (height > model.end(CornerModel.BUMP) - AT_REST) {
      return "on the bump stop";
    }
    if (height < AT_REST - model.end(CornerModel.DROOP)) {
      return "hanging";
    }
    double bump = height - model.travel(SurveyedAlignment.PROPOSED);
    return Math.abs(bump) < AT_REST
        ? "at rest"
        : Math.round(Math.abs(bump)) + " mm of " + (bump > 0 ? "bump" : "droop");
  }
}
