package trammel.compare;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.build.Build;
import trammel.build.BuildSheet.FenderHeight;
import trammel.build.BuildSheet.State;
import trammel.build.MeasuredFile;
import trammel.build.OverlayFile;
import trammel.catalog.AxleProfile;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.SpringSpacer;
import trammel.catalog.SuspensionPart.StrutTopSpacer;
import trammel.derive.Predictions;
import trammel.quantity.Absence;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;

/**
 * What a finished vehicle's measured values teach about it: only what they show by themselves,
 * nothing that was turned or exchanged in between.
 */
public final class Lessons {
  private static final Formula LIFT =
      new Formula(
          "lift as measured", "mean of both sides, height now − height as found", "definition");
  private static final Formula RATIO_SHOWN =
      new Formula(
          "motion ratio as measured",
          "thickness of the spacer / lift it gave",
          "own derivation: load and deflection of the spring stay as they were");
  private static final Formula LIFTED =
      new Formula("height above the book's", "height now − book height", "definition");

  private final Build build;
  private final MeasuredFile file;
  private final String source;

  private Lessons(Build build, MeasuredFile file) {
    this.build = build;
    this.file = file;
    this.source = file.measured() + ", " + file.on() + " (" + file.place().file() + ")";
  }

  /** What the file teaches of the build's vehicle; it may be nothing. */
  public static OverlayFile of(Build build, MeasuredFile file) {
    Lessons lessons = new Lessons(build, file);
    return new OverlayFile(
        file.place(),
        file.measured(),
        build.vehicle().vehicle(),
        build.place().file(),
        file.place().file(),
        file.on(),
        lessons.springs(),
        lessons.printouts(),
        lessons.gaps());
  }

  /** Whether an overlay says anything. */
  public static boolean any(OverlayFile overlay) {
    return !overlay.springs().isEmpty()
        || !overlay.alignment().isEmpty()
        || !overlay.gaps().isEmpty();
  }

  private List<OverlayFile.SpringRatio> springs() {
    List<OverlayFile.SpringRatio> ratios = new ArrayList<>();
    for (Axle axle : Axle.values()) {
      thickness(axle)
          .flatMap(thickness -> ratio(axle, thickness))
          .ifPresent(ratio -> ratios.add(new OverlayFile.SpringRatio(file.place(), axle, ratio)));
    }
    return List.copyOf(ratios);
  }

  /**
   * The motion ratio that a spacer has shown, where that says more than the profile: it is known no
   * worse, or it contradicts it.
   */
  private Optional<Quantity> ratio(Axle axle, Quantity thickness) {
    List<Quantity> heights = new ArrayList<>();
    for (Position position : Position.of(axle)) {
      Quantity now = measured(position);
      Optional<Quantity> found = asFound(position);
      if (!now.isKnown() || found.isEmpty()) {
        return Optional.empty();
      }
      heights.add(now);
      heights.add(found.get());
    }
    Quantity lift =
        LIFT.linear(new double[] {0.5, -0.5, 0.5, -0.5}, heights.toArray(Quantity[]::new));
    if (lift.value() <= lift.expanded()) {
      return Optional.empty();
    }
    Quantity shown = RATIO_SHOWN.quotient(RATIO, 1, thickness, lift);
    Quantity stated = build.vehicle().axle(axle).springMotionRatio();
    boolean better =
        !stated.isKnown()
            || shown.expanded() <= stated.expanded()
            || Math.abs(shown.value() - stated.value())
                > Math.hypot(shown.expanded(), stated.expanded());
    return better ? Optional.of(read(shown, RATIO, "spring-ratio." + axle)) : Optional.empty();
  }

  /** The thickness of the spacer that alone has raised an axle, where that is what happened. */
  private Optional<Quantity> thickness(Axle axle) {
    AxleProfile profile = build.vehicle().axle(axle);
    List<Quantity> added = new ArrayList<>();
    for (Position position : Position.of(axle)) {
      boolean other =
          profile.heightControlled()
              || build.raised().containsKey(position)
              || build.changes(position, PartKind.SPRING, PartKind.BODY_LIFT_KIT)
              || !build.before(position).all(PartKind.SPRING_SPACER).isEmpty()
              || !build.before(position).all(PartKind.STRUT_TOP_SPACER).isEmpty();
      if (other) {
        return Optional.empty();
      }
      List<Part> parts = new ArrayList<>(build.after(position).all(PartKind.SPRING_SPACER));
      parts.addAll(build.after(position).all(PartKind.STRUT_TOP_SPACER));
      for (Part part : parts) {
        added.add(
            part instanceof SpringSpacer spacer
                ? spacer.thickness()
                : ((StrutTopSpacer) part).thickness());
      }
    }
    return added.size() == 2 && added.get(0).equals(added.get(1)) && added.get(0).isKnown()
        ? Optional.of(added.get(0))
        : Optional.empty();
  }

  private List<OverlayFile.Printout> printouts() {
    List<OverlayFile.Printout> printouts = new ArrayList<>();
    for (MeasuredFile.Rack rack : file.alignment()) {
      Quantity height = rack.height().isKnown() ? rack.height() : measured(rack.at());
      boolean asItWas =
          !rack.adjusted()
              && !build.changes(
                  rack.at(), PartKind.UPPER_ARM, PartKind.ECCENTRIC_BOLT, PartKind.BODY_LIFT_KIT);
      // A beam's angles follow its links from where it was surveyed, not from a printout.
      boolean beam = build.vehicle().axle(rack.at().axle().orElseThrow()).layout().beam();
      boolean both = rack.angles().camber().isKnown() && rack.angles().caster().isKnown();
      if (asItWas && !beam && both && height.isKnown()) {
        String path = "alignment." + rack.at();
        printouts.add(
            new OverlayFile.Printout(
                rack.place(),
                rack.at(),
                read(height, LENGTH, path),
                new trammel.catalog.AlignmentSpec.Angles(
                    read(rack.angles().camber(), Dimension.ANGLE, path),
                    read(rack.angles().caster(), Dimension.ANGLE, path),
                    read(rack.angles().toe(), Dimension.ANGLE, path))));
      }
    }
    return List.copyOf(printouts);
  }

  private List<OverlayFile.Gap> gaps() {
    List<OverlayFile.Gap> gaps = new ArrayList<>();
    for (MeasuredFile.Gap gap : file.gaps()) {
      Position position = gap.wheel();
      if (!build.changes(position, PartKind.BODY_LIFT_KIT)) {
        Quantity now = measured(position);
        Quantity book = build.vehicle().axle(position.axle().orElseThrow()).fenderHeight();
        gaps.add(
            new OverlayFile.Gap(
                gap.place(),
                gap.at(),
                read(gap.gap(), LENGTH, "gaps." + gap.at()),
                gap.steer(),
                gap.height(),
                on(position),
                read(LIFTED.linear(1, now, -1, book), LENGTH, "gaps." + gap.at() + ".lifted")));
      }
    }
    return List.copyOf(gaps);
  }

  /** What stands between hub and tire's edge. */
  private List<String> on(Position position) {
    List<String> numbers = new ArrayList<>();
    for (PartKind kind : List.of(PartKind.WHEEL, PartKind.TIRE, PartKind.WHEEL_SPACER)) {
      build.after(position).all(kind).forEach(part -> numbers.add(part.number()));
    }
    return List.copyOf(numbers);
  }

  private Quantity measured(Position position) {
    return file.heights().stream()
        .filter(height -> height.at() == position)
        .map(MeasuredFile.FenderHeight::height)
        .findFirst()
        .orElseGet(() -> Predictions.unforetold(LENGTH, "its height was not measured"));
  }

  private Optional<Quantity> asFound(Position position) {
    return build.measurements().heights().stream()
        .filter(height -> height.at() == position && height.state() == State.AS_FOUND)
        .map(FenderHeight::height)
        .filter(Quantity::isKnown)
        .findFirst();
  }

  /** To more digits than anybody can measure, and no more. */
  private static double rounded(double value) {
    return new BigDecimal(value, new MathContext(5, RoundingMode.HALF_EVEN)).doubleValue();
  }

  /** A value as something read, so that the overlay says whose it is. */
  private Quantity read(Quantity quantity, Dimension dimension, String path) {
    if (!quantity.isKnown()) {
      return Quantity.absent(
          dimension, new Absence(path, "it was not measured", Instrument.READ, "measure it"));
    }
    Input from = quantity.input();
    String place = file.place().file();
    return Quantity.read(
        quantity.name(),
        dimension,
        rounded(quantity.value()),
        rounded(quantity.expanded()),
        from == null
            ? new Input(
                place, path, 0, source, dimension == LENGTH ? Instrument.FENDER : Instrument.READ)
            : new Input(place, path, from.line(), source, from.instrument()));
  }
}
