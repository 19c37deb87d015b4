package trammel.derive;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.Linkage;
import trammel.catalog.Linkage.MountProfile;
import trammel.catalog.PartKind;
import trammel.catalog.SurveyPoint;
import trammel.catalog.SuspensionPart.Spring;
import trammel.catalog.SuspensionPart.SpringSpacer;
import trammel.catalog.SuspensionPart.StrutTopSpacer;
import trammel.catalog.SuspensionPart.TestPoint;
import trammel.quantity.Formula;
import trammel.quantity.Input;
import trammel.quantity.Quantity;
import trammel.subject.Position;

/**
 * What is each side's own in a difference of left and right: two springs of one number are two
 * sources of error there, and so are the hard points of two corners.
 */
final class SideInputs {
  private static final Formula AGAIN =
      new Formula("the same on the other side", "value, with errors of its own", "definition");

  private final Build build;
  private final Position position;
  private final Memo<Input, Input> twins = new Memo<>();
  private volatile @Nullable List<Input> own;

  /** Those of one wheel's side. */
  SideInputs(Build build, Position position) {
    this.build = build;
    this.position = position;
  }

  /**
   * Gathered when first asked for, since mostly nobody asks what makes a difference uncertain; and
   * in a list, since where somebody does, few inputs are looked for.
   */
  private List<Input> own() {
    List<Input> found = own;
    if (found == null) {
      found = gathered();
      own = found;
    }
    return found;
  }

  private List<Input> gathered() {
    List<Input> inputs = new ArrayList<>();
    for (Stage stage : Stage.values()) {
      add(inputs, stage.equipment(build, position));
    }
    Linkage linkage = build.vehicle().axle(position.axle().orElseThrow()).linkage();
    for (SurveyPoint point : linkage.points().values()) {
      add(inputs, point);
    }
    MountProfile mount = linkage.spring();
    if (mount != null) {
      add(inputs, mount.body());
      add(inputs, mount.moving());
    }
    return inputs;
  }

  private static void add(List<Input> own, Equipment equipment) {
    for (Spring spring : equipment.all(PartKind.SPRING, Spring.class)) {
      add(own, spring.rate(), spring.secondRate(), spring.secondRateFrom(), spring.freeLength());
      for (TestPoint point : spring.curve()) {
        add(own, point.deflection(), point.force());
      }
    }
    for (SpringSpacer spacer : equipment.all(PartKind.SPRING_SPACER, SpringSpacer.class)) {
      add(own, spacer.thickness());
    }
    for (StrutTopSpacer spacer : equipment.all(PartKind.STRUT_TOP_SPACER, StrutTopSpacer.class)) {
      add(own, spacer.thickness());
    }
  }

  private static void add(List<Input> own, SurveyPoint point) {
    add(own, point.fore(), point.out(), point.up());
  }

  private static void add(List<Input> own, Quantity... quantities) {
    for (Quantity quantity : quantities) {
      Input input = quantity.input();
      if (input != null) {
        own.add(input);
      }
    }
  }

  /** A quantity of the right side, whose own errors no longer cancel against the left one's. */
  Quantity again(Quantity right) {
    return right.again(AGAIN, this::twin);
  }

  private Input twin(Input input) {
    return own().contains(input)
        ? twins.get(
            input,
            left ->
                new Input(
                    left.file(),
                    left.path() + " (right)",
                    left.line(),
                    left.source(),
                    left.instrument()))
        : input;
  }
}
