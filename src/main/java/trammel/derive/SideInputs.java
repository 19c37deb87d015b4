package trammel.derive;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
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

  private final Set<Input> own;

  private SideInputs(Set<Input> own) {
    this.own = own;
  }

  static SideInputs of(Build build, Position position) {
    Set<Input> own = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Equipment equipment :
        List.of(build.bookAt(position), build.before(position), build.after(position))) {
      equipment.all(PartKind.SPRING, Spring.class).forEach(spring -> add(own, quantities(spring)));
      equipment
          .all(PartKind.SPRING_SPACER, SpringSpacer.class)
          .forEach(spacer -> add(own, Stream.of(spacer.thickness())));
      equipment
          .all(PartKind.STRUT_TOP_SPACER, StrutTopSpacer.class)
          .forEach(spacer -> add(own, Stream.of(spacer.thickness())));
    }
    var linkage = build.vehicle().axle(position.axle().orElseThrow()).linkage();
    linkage.points().values().forEach(point -> add(own, quantities(point)));
    MountProfile mount = linkage.spring();
    if (mount != null) {
      add(own, Stream.concat(quantities(mount.body()), quantities(mount.moving())));
    }
    return new SideInputs(own);
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
    if (!right.isKnown() || right.uncertainInputs().stream().noneMatch(own::contains)) {
      return right;
    }
    List<Quantity> terms = new ArrayList<>();
    List<Double> signs = new ArrayList<>();
    terms.add(Quantity.exact(right.dimension(), right.value()).called(right.name()));
    signs.add(1.0);
    for (Input input : right.uncertainInputs()) {
      double part = right.contribution(input);
      Input of =
          own.contains(input)
              ? new Input(
                  input.file(),
                  input.path() + " (right)",
                  input.line(),
                  input.source(),
                  input.instrument())
              : input;
      terms.add(
          Quantity.read("error of " + input.path(), right.dimension(), 0, Math.abs(part), of));
      signs.add(Math.signum(part));
    }
    return AGAIN.linear(
        signs.stream().mapToDouble(Double::doubleValue).toArray(), terms.toArray(Quantity[]::new));
  }
}
