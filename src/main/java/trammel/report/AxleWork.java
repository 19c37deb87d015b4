package trammel.report;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.AxleProfile;
import trammel.catalog.AxleProfile.Layout;
import trammel.catalog.AxleProfile.Springs;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.Support.BrakeValve;
import trammel.catalog.SuspensionPart.FlexibleLine;
import trammel.catalog.SuspensionPart.FlexibleLine.Carries;
import trammel.catalog.WheelPart.Tire;
import trammel.subject.Axle;
import trammel.subject.Position;

/** What a sheet alters on one axle, as a fitter sees it. */
record AxleWork(Build build, Axle axle) {

  AxleProfile profile() {
    return build.vehicle().axle(axle);
  }

  boolean changes(PartKind... kinds) {
    return build.changes(axle, kinds);
  }

  private boolean changes(Predicate<PartKind> which) {
    return Arrays.stream(PartKind.values()).anyMatch(kind -> which.test(kind) && changes(kind));
  }

  /** Whether a line of this content is fitted that was not there. */
  boolean newLine(Carries carries) {
    return Position.of(axle).stream()
        .anyMatch(
            position ->
                !lines(build.before(position), carries)
                    .equals(lines(build.after(position), carries)));
  }

  private static List<FlexibleLine> lines(Equipment equipment, Carries carries) {
    return equipment.all(PartKind.FLEXIBLE_LINE, FlexibleLine.class).stream()
        .filter(line -> line.carries() == carries)
        .toList();
  }

  boolean beam() {
    return profile().layout().beam();
  }

  boolean strut() {
    return profile().layout() == Layout.STRUT;
  }

  boolean leaves() {
    return profile().springs() == Springs.LEAF;
  }

  /** Whether a fluid or air under pressure carries load here. */
  boolean pressed() {
    return profile().support().fluid() != null
        || profile().springs() == Springs.AIR
        || profile().springs() == Springs.HYDROPNEUMATIC;
  }

  boolean heightControlled() {
    return profile().heightControlled();
  }

  /** Whether its torsion bars or its height control are set anew. */
  boolean raised() {
    return Position.of(axle).stream().anyMatch(build.raised()::containsKey);
  }

  boolean torsionBarsTurned() {
    return raised() && profile().springs() == Springs.TORSION_BAR;
  }

  /** Whether the vehicle stands at another height here, or may. */
  boolean height() {
    return raised() || changes(PartKind::setsHeight);
  }

  /** Whether the wheels may stand at other angles afterwards. */
  boolean geometry() {
    return height()
        || changes(PartKind::locatesWheel)
        || changes(PartKind.ECCENTRIC_BOLT, PartKind.DIFFERENTIAL_DROP)
        || (strut() && changes(PartKind.DAMPER));
  }

  /** Whether joints of the suspension are undone. */
  boolean apart() {
    return changes(PartKind::locatesWheel)
        || changes(
            PartKind.SPRING,
            PartKind.AIR_SPRING,
            PartKind.SPRING_SPACER,
            PartKind.STRUT_TOP_SPACER,
            PartKind.COIL_RETAINER,
            PartKind.DAMPER,
            PartKind.DAMPER_BRACKET,
            PartKind.BUMP_STOP,
            PartKind.DROOP_STRAP,
            PartKind.ECCENTRIC_BOLT,
            PartKind.LEAF_BLOCK,
            PartKind.SHACKLE);
  }

  /** Whether anything but wheels and what is carried changes. */
  boolean chassis() {
    return raised()
        || changes(kind -> kind != PartKind.ACCESSORY && !kind.ofTheWheel() && !hub(kind));
  }

  private static boolean hub(PartKind kind) {
    return switch (kind) {
      case WHEEL_SPACER, CENTERING_RING, FASTENER, STUD -> true;
      default -> false;
    };
  }

  /** Whether the wheels come off. */
  boolean wheelsOff() {
    return torsionBarsTurned()
        || changes(kind -> kind != PartKind.ACCESSORY && kind != PartKind.BODY_LIFT_KIT);
  }

  /** Whether something is undone or fitted that has to be tightened, and tightened again. */
  boolean tightened() {
    return wheelsOff() || rubberWrung() || changes(PartKind.BODY_LIFT_KIT, PartKind.ACCESSORY);
  }

  boolean loadSensingValve() {
    return profile().support().brakeValve() == BrakeValve.LOAD_SENSING;
  }

  /** Whether its joints turn in rubber, and are undone or stand at another angle from now on. */
  boolean rubberWrung() {
    return profile().support().rubberBushes() && (apart() || height());
  }

  /** Whether a panhard bar holds it that is new or stands at another slope. */
  boolean barSlopes() {
    boolean bar =
        Position.of(axle).stream()
            .anyMatch(position -> !build.after(position).all(PartKind.PANHARD_BAR).isEmpty());
    return beam() && (changes(PartKind.PANHARD_BAR, PartKind.PANHARD_BRACKET) || (bar && height()));
  }

  /** Whether tires of another size roll here. */
  boolean tireSize() {
    return Position.of(axle).stream()
        .anyMatch(position -> !size(build.before(position)).equals(size(build.after(position))));
  }

  private static String size(Equipment equipment) {
    return equipment
        .one(PartKind.TIRE, Tire.class)
        .map(tire -> tire.designation().size() + " " + tire.designation().rim())
        .orElse("");
  }

  /** Parts of one place that the sheet takes off, or fits. */
  static List<Part> less(Equipment more, Equipment fewer) {
    return more.everything().stream()
        .filter(part -> !fewer.all(part.kind()).contains(part))
        .toList();
  }
}
