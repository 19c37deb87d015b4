package trammel.derive;

import java.util.EnumSet;
import java.util.Set;
import trammel.build.Build;
import trammel.build.BuildSheet.FenderHeight;
import trammel.build.Equipment;
import trammel.catalog.PartKind;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;

/**
 * Which wheels of an axle are alike, so that what is worked out for the left one holds for both.
 * What is each side's own enters where sides are compared ({@link SideInputs}).
 */
final class Sides {
  private final Build build;
  private final VehicleLoads loads;
  private final Memo<Axle, Boolean> alike = new Memo<>();
  private final Memo<Axle, Set<Stage>> sameParts = new Memo<>();

  Sides(Build build, VehicleLoads loads) {
    this.build = build;
    this.loads = loads;
  }

  /** Whether a wheel on the right has the parts of its like on the left. */
  boolean sameParts(Position position, Stage stage) {
    return position != position.left()
        && sameParts.get(position.axle().orElseThrow(), this::compared).contains(stage);
  }

  private Set<Stage> compared(Axle axle) {
    Set<Stage> same = EnumSet.noneOf(Stage.class);
    for (Stage stage : Stage.values()) {
      Equipment left = stage.equipment(build, Position.of(axle, Side.LEFT));
      if (stage.equipment(build, Position.of(axle, Side.RIGHT)).sameAs(left)) {
        same.add(stage);
      }
    }
    return same;
  }

  /**
   * The wheel whose height, load and spring are those of a wheel: its like on the left, where in
   * every state both have the same parts and carry the same, one line of the sheet sets both, and
   * at neither was a height measured, in whatever state; else the wheel itself. Air springs, each
   * with its own valve, are taken side by side. A pressure measured at one wheel does not count
   * here: it is {@link FluidCorner} that keeps it to its side.
   */
  Position like(Position position) {
    Position left = position.left();
    return position != left && alike.get(position.axle().orElseThrow(), this::alike)
        ? left
        : position;
  }

  private boolean alike(Axle axle) {
    Position left = Position.of(axle, Side.LEFT);
    Position right = Position.of(axle, Side.RIGHT);
    for (FenderHeight height : build.measurements().heights()) {
      if (height.at() == left || height.at() == right) {
        return false;
      }
    }
    for (Stage stage : Stage.values()) {
      if (!sameParts(right, stage)
          || !stage.equipment(build, right).all(PartKind.AIR_SPRING).isEmpty()) {
        return false;
      }
    }
    return build.raised().get(left) == build.raised().get(right) && loads.level(axle);
  }
}
