package trammel.derive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.util.Binary64;
import org.jspecify.annotations.Nullable;
import trammel.geometry.Corner;
import trammel.geometry.Heading;
import trammel.geometry.Pose;
import trammel.geometry.WheelTravel;

/**
 * The linkages of a solved corner and its poses with derivatives, each worked out once: left and
 * right of one state have the same numbers and differ only in whose errors they are.
 */
final class CornerPoses {
  private final CornerModel model;
  private final List<Double> settings;
  private @Nullable Corner<Gradient> surveyed;
  private @Nullable Corner<Gradient> proposed;
  private @Nullable Corner<Binary64> surveyedPlain;
  private @Nullable Corner<Binary64> proposedPlain;
  private final Map<String, Optional<Pose<Gradient>>> poses = new HashMap<>();
  private @Nullable List<Pose<Binary64>> travel;

  /**
   * @param settings the best setting of the adjusters
   */
  CornerPoses(CornerModel model, List<Double> settings) {
    this.model = model;
    this.settings = List.copyOf(settings);
  }

  /** The linkage with derivatives: as proposed at the best setting, or as surveyed. */
  Corner<Gradient> linkage(boolean asProposed) {
    if (asProposed) {
      if (proposed == null) {
        proposed = model.varied(true, settings);
      }
      return proposed;
    }
    if (surveyed == null) {
      surveyed = model.varied(false, List.of());
    }
    return surveyed;
  }

  /** The same linkage in plain numbers. */
  Corner<Binary64> plain(boolean asProposed) {
    if (asProposed) {
      if (proposedPlain == null) {
        proposedPlain = model.plain(true, settings);
      }
      return proposedPlain;
    }
    if (surveyedPlain == null) {
      surveyedPlain = model.plain(false, List.of());
    }
    return surveyedPlain;
  }

  /** Steps of the travel in which something on its way is looked for. */
  private static final int STEPS = 12;

  /**
   * The proposed linkage from droop to bump in plain numbers, straight ahead, in steps of the lower
   * arm's angle; empty where it does not reach either end.
   *
   * @param heading what holds the wheel straight ahead
   */
  List<Pose<Binary64>> travel(Heading<Binary64> heading) {
    if (travel == null) {
      WheelTravel<Binary64> ends = WheelTravel.of(plain(true));
      List<Pose<Binary64>> found = new ArrayList<>();
      if (ends.at(new Binary64(-model.end(CornerModel.DROOP)), heading)
              instanceof Pose<Binary64> low
          && ends.at(new Binary64(model.end(CornerModel.BUMP)), heading)
              instanceof Pose<Binary64> high) {
        double from = low.lowerAngle().getReal();
        double to = high.lowerAngle().getReal();
        for (int step = 0; step <= STEPS; step++) {
          Binary64 angle = new Binary64(from + (to - from) * step / STEPS);
          if (plain(true).pose(angle, heading) instanceof Pose<Binary64> pose) {
            found.add(pose);
          }
        }
      }
      travel = List.copyOf(found);
    }
    return travel;
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
    return poses.computeIfAbsent(
        name,
        key ->
            WheelTravel.of(linkage(asProposed), plain(asProposed)).at(travel.get(), heading.get())
                    instanceof Pose<Gradient> pose
                ? Optional.of(pose)
                : Optional.empty());
  }
}
