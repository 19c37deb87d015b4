package trammel.derive;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.Linkage.MountProfile;
import trammel.catalog.PartKind;
import trammel.catalog.SurveyPoint;
import trammel.catalog.SuspensionPart.Spring;
import trammel.catalog.SuspensionPart.SpringSpacer;
import trammel.catalog.SuspensionPart.StrutTopSpacer;
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
  private volatile @Nullable Set<Input> own;

  /** Those of one wheel's side. */
  SideInputs(Build build, Position position) {
    this.build = build;
    this.position = position;
  }

  /** Gathered when first asked for: mostly nobody asks what makes a difference uncertain. */
  private Set<Input> own() {
    Set<Input> found = own;
    if (found == null) {
      found = gathered();
      own = found;
    }
    return found;
  }

  private Set<Input> gathered() {
    Set<Input> inputs = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Equipment equipment :
        List.of(build.bookAt(position), build.before(position), build.after(position))) {
      equipment
          .all(PartKind.SPRING, Spring.class)
          .forEach(spring -> add(inputs, quantities(spring)));
      equipment
          .all(PartKind.SPRING_SPACER, SpringSpacer.class)
          .forEach(spacer -> add(inputs, Stream.of(spacer.thickness())));
      equipment
          .all(PartKind.STRUT_TOP_SPACER, StrutTopSpacer.class)
          .forEach(spacer -> add(inputs, Stream.of(spacer.thickness())));
    }
    var linkage = build.vehicle().axle(position.axle().orElseThrow()).linkage();
    linkage.points().values().forEach(point -> add(inputs, quantities(point)));
    MountProfile mount = linkage.spring();
    if (mount != null) {
      add(inputs, Stream.concat(quantities(mount.body()), quantities(mount.moving())));
    }
    return inputs;
  }

  private static Stream<Quantity> quantities(Spring spring) {
    return Stream.concat(
        Stream.of(spring.rate(), spring.secondRate(), spring.secondRateFrom(), spring.freeLength()),
        spring.curve().stream().flatMap(point -> Stream.of(point.deflection(), point.force())));
  }

  private static Stream<Quantity> quantities(SurveyPoint point) {
    return Stream.of(point.fore(), point.out(), point.up());
  }

  private static void add(Set<Input> own, Stream<Quantity> quantities) {
    quantities.flatMap(quantity -> Stream.ofNullable(quantity.input())).forEach(own::add);
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
