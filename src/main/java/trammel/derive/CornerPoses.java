package trammel.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.util.Binary64;
import trammel.geometry.Corner;
import trammel.geometry.Heading;
import trammel.geometry.OutOfReach;
import trammel.geometry.Pose;
import trammel.geometry.Posed;
import trammel.geometry.WheelTravel;

/**
 * The linkages of a solved corner and its poses with derivatives, each worked out once: left and
 * right of one state have the same numbers and differ only in whose errors they are.
 */
final class CornerPoses {
  /** A travel this near to an end is that end (mm). */
  private static final double AT_END = 1e-3;

  private final CornerModel model;
  private final SurveyedAlignment.Solved solved;
  private final Gradient proposedRod;
  private final Gradient foundRod;
  private final Memo<Boolean, Corner<Gradient>> linkages = new Memo<>();
  private final Memo<Boolean, Corner<Binary64>> plainLinkages = new Memo<>();
  private final Memo<String, Optional<Pose<Gradient>>> poses = new Memo<>();
  private final Once<Pose<Gradient>> surveyed = new Once<>(() -> linkage(false).asSurveyed());
  private final Memo<Place, Posed<Binary64>> numbers = new Memo<>();
  private final Memo<Boolean, List<Pose<Binary64>>> travels = new Memo<>();

  /** Where a pose in plain numbers stands: which linkage, its travel (mm), its steering. */
  private record Place(boolean asProposed, double rise, double steer) {}

  CornerPoses(CornerModel model, SurveyedAlignment.Solved solved) {
    this.model = model;
    this.solved = solved;
    proposedRod = solved.after().tieRodLength();
    foundRod = solved.before().tieRodLength();
  }

  /** The linkage with derivatives: as proposed at the best setting, or as surveyed. */
  Corner<Gradient> linkage(boolean asProposed) {
    return linkages.get(asProposed, which -> model.varied(which, settings(which)));
  }

  /** The same linkage in plain numbers. */
  Corner<Binary64> plain(boolean asProposed) {
    return plainLinkages.get(asProposed, which -> model.plain(which, settings(which)));
  }

  private List<Double> settings(boolean asProposed) {
    return asProposed ? solved.best().settings() : List.of();
  }

  /** The tie rod: set again as proposed, or as it is. */
  Gradient tieRod(boolean asProposed) {
    return asProposed ? proposedRod : foundRod;
  }

  /** What holds the wheel with the steering turned, as {@link CornerModel#steered} has it. */
  Heading<Gradient> steered(boolean asProposed, Gradient steer) {
    return new Heading.ByTieRod<>(
        model.steered(linkage(asProposed).tieRodInner(), steer), tieRod(asProposed));
  }

  /** What holds the wheel straight ahead. */
  Heading<Gradient> straight(boolean asProposed) {
    return new Heading.ByTieRod<>(linkage(asProposed).tieRodInner(), tieRod(asProposed));
  }

  /** The same in plain numbers, with the steering turned. */
  Heading<Binary64> plainSteered(boolean asProposed, double steer) {
    return new Heading.ByTieRod<>(
        model.steered(plain(asProposed).tieRodInner(), new Binary64(steer)),
        new Binary64(tieRod(asProposed).getValue()));
  }

  /** The pose at a travel (mm) in plain numbers, the steering turned. */
  Posed<Binary64> plainAt(boolean asProposed, double rise, double steer) {
    return numbers.get(
        new Place(asProposed, rise, steer),
        key -> {
          WheelTravel<Binary64> travel = WheelTravel.of(plain(asProposed));
          return (steer != 0 && plainAt(asProposed, rise, 0) instanceof Pose<Binary64> straight
                  ? travel.near(straight.lowerAngle().getReal())
                  : travel)
              .at(new Binary64(rise), plainSteered(asProposed, steer));
        });
  }

  /** The pose that the hard points were surveyed in, in plain numbers. */
  Pose<Binary64> plainSurveyed() {
    return plain(false).asSurveyed();
  }

  /** The same with derivatives. */
  Pose<Gradient> asSurveyed() {
    return surveyed.get();
  }

  /** As proposed, at rest. */
  Pose<Gradient> atRest() {
    return solved.after();
  }

  /**
   * Hanging, straight ahead; with toe 0 where the tie rod does not follow, which moves the arms by
   * hundredths of a degree. Empty where the arms do not reach that.
   */
  Optional<Pose<Gradient>> armsAtDroop() {
    return atDroop(true)
        .or(() -> arms("at droop", () -> model.endVariable(CornerModel.DROOP).negate()));
  }

  /** On the bump stop, in the same way. */
  Optional<Pose<Gradient>> armsAtBump() {
    return atBump(true).or(() -> arms("at bump", () -> model.endVariable(CornerModel.BUMP)));
  }

  /**
   * At a travel (mm), in the same way. At an end of the way the pose follows the end; between the
   * ends, where something comes closest, the travel does not matter to first order.
   */
  Optional<Pose<Gradient>> armsAt(double travel) {
    if (Math.abs(travel + model.end(CornerModel.DROOP)) < AT_END) {
      return armsAtDroop();
    }
    if (Math.abs(travel - model.end(CornerModel.BUMP)) < AT_END) {
      return armsAtBump();
    }
    Supplier<Gradient> there = () -> linkage(true).field().getZero().newInstance(travel);
    return at("at " + travel, true, there, () -> straight(true))
        .or(() -> arms("at " + travel, there));
  }

  private Optional<Pose<Gradient>> arms(String where, Supplier<Gradient> travel) {
    return at(
        "arms " + where, true, travel, () -> new Heading.Reset<>(linkage(true).field().getZero()));
  }

  /** Straight ahead on the bump stop; empty where the linkage does not reach it. */
  Optional<Pose<Gradient>> atBump(boolean asProposed) {
    return at(
        "at bump " + asProposed,
        asProposed,
        () -> model.endVariable(CornerModel.BUMP),
        () -> straight(asProposed));
  }

  /** Straight ahead and hanging; empty where the linkage does not reach that. */
  Optional<Pose<Gradient>> atDroop(boolean asProposed) {
    return at(
        "at droop " + asProposed,
        asProposed,
        () -> model.endVariable(CornerModel.DROOP).negate(),
        () -> straight(asProposed));
  }

  /** As proposed, hanging, at one lock or the other; empty where the linkage does not reach it. */
  Optional<Pose<Gradient>> atDroopAndLock(boolean positive) {
    Gradient lock = model.endVariable(CornerModel.LOCK);
    return at(
        "at droop and lock " + positive,
        true,
        () -> model.endVariable(CornerModel.DROOP).negate(),
        () -> steered(true, positive ? lock : lock.negate()));
  }

  /** What keeps the proposed linkage from droop, bump or either lock; empty where nothing does. */
  Optional<String> limit() {
    double lock = model.end(CornerModel.LOCK);
    for (double rise : List.of(-model.end(CornerModel.DROOP), model.end(CornerModel.BUMP))) {
      for (double steer : List.of(0.0, lock, -lock)) {
        if (plainAt(true, rise, steer) instanceof OutOfReach<Binary64> out) {
          return Optional.of(out.limit());
        }
      }
    }
    return Optional.empty();
  }

  /** Steps of the travel in which something on its way is looked for. */
  private static final int STEPS = 12;

  /**
   * The proposed linkage from droop to bump in plain numbers, straight ahead, in steps of the lower
   * arm's angle; empty where it does not reach either end.
   */
  List<Pose<Binary64>> travel() {
    return travels.get(true, this::stepped);
  }

  private List<Pose<Binary64>> stepped(boolean asProposed) {
    List<Pose<Binary64>> found = new ArrayList<>();
    if (plainAt(asProposed, -model.end(CornerModel.DROOP), 0) instanceof Pose<Binary64> low
        && plainAt(asProposed, model.end(CornerModel.BUMP), 0) instanceof Pose<Binary64> high) {
      double from = low.lowerAngle().getReal();
      double to = high.lowerAngle().getReal();
      Heading<Binary64> straight = plainSteered(asProposed, 0);
      for (int step = 0; step <= STEPS; step++) {
        Binary64 angle = new Binary64(from + (to - from) * step / STEPS);
        if (plain(asProposed).pose(angle, straight) instanceof Pose<Binary64> pose) {
          found.add(pose);
        }
      }
    }
    return List.copyOf(found);
  }

  /**
   * A pose at a travel, empty where it is out of reach.
   *
   * @param name tells one pose from the others
   */
  Optional<Pose<Gradient>> at(
      String name,
      boolean asProposed,
      Supplier<Gradient> travel,
      Supplier<Heading<Gradient>> heading) {
    return poses.get(
        name,
        key ->
            travel(asProposed, travel.get().getValue()).at(travel.get(), heading.get())
                    instanceof Pose<Gradient> pose
                ? Optional.of(pose)
                : Optional.empty());
  }

  /** The travel of a linkage, looked for near where it stands straight ahead at a rise (mm). */
  private WheelTravel<Gradient> travel(boolean asProposed, double rise) {
    WheelTravel<Gradient> travel = WheelTravel.of(linkage(asProposed), plain(asProposed));
    return plainAt(asProposed, rise, 0) instanceof Pose<Binary64> there
        ? travel.near(there.lowerAngle().getReal())
        : travel;
  }
}
