package trammel.build;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.build.MeasuredFile.BeamAxle;
import trammel.build.MeasuredFile.FenderHeight;
import trammel.build.MeasuredFile.FluidPressure;
import trammel.build.MeasuredFile.Gap;
import trammel.build.MeasuredFile.PropShaft;
import trammel.build.MeasuredFile.Rack;
import trammel.catalog.ShaftProfile;
import trammel.catalog.VehicleProfile;
import trammel.quantity.Quantity;
import trammel.read.Binder;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.Words;
import trammel.read.YamlReader;
import trammel.subject.Position;

/** Reads what was measured on a finished vehicle. */
public final class MeasuredFiles {
  private final Problems problems = new Problems();
  private final Map<String, Place> seen = new HashMap<>();

  private MeasuredFiles() {}

  /**
   * Reads a file of measured values.
   *
   * @param vehicle that they were measured on
   * @throws trammel.read.UnreadableFile with everything that is wrong with it
   */
  public static MeasuredFile read(Path file, VehicleProfile vehicle) {
    MeasuredFiles reader = new MeasuredFiles();
    Optional<MeasuredFile> found =
        YamlReader.read(file, file, reader.problems)
            .flatMap(node -> Binder.bind(MeasuredFile.class, node, reader.problems));
    found.ifPresent(measured -> reader.check(measured, vehicle));
    reader.problems.refuseIfAny();
    return found.orElseThrow();
  }

  private void check(MeasuredFile file, VehicleProfile vehicle) {
    PressureUnits units = new PressureUnits(vehicle, problems);
    for (FenderHeight height : file.heights()) {
      running(height.at(), height.place());
      once("height of " + height.at(), height.place());
      uncertain(height.height(), height.place());
    }
    for (Rack rack : file.alignment()) {
      running(rack.at(), rack.place());
      once("alignment of " + rack.at(), rack.place());
      uncertain(rack.height(), rack.place());
      uncertain(rack.angles().camber(), rack.place());
      uncertain(rack.angles().caster(), rack.place());
      uncertain(rack.angles().toe(), rack.place());
    }
    for (FluidPressure pressure : file.pressures()) {
      running(pressure.at(), pressure.place());
      once("pressure at " + pressure.at(), pressure.place());
      uncertain(pressure.pressure(), pressure.place());
      units.suspension(pressure.at(), pressure.pressure());
    }
    SheetCheck poses = new SheetCheck(problems);
    for (Gap gap : file.gaps()) {
      poses.pose(gap.at(), gap.steer(), gap.place());
      once("gap at " + gap.at() + ", " + gap.steer() + ", " + gap.height(), gap.place());
      uncertain(gap.gap(), gap.place());
    }
    file.axles().forEach(axle -> axle(axle, vehicle));
    file.shafts().forEach(shaft -> shaft(shaft, vehicle));
    if (seen.isEmpty()) {
      problems.add(
          file.place(),
          "nothing is measured; expected heights, alignment, pressures, gaps, axles or shafts",
          "Add a line below heights: - { at: front-left, height: 540 mm }.");
    }
  }

  private void axle(BeamAxle axle, VehicleProfile vehicle) {
    if (!vehicle.axle(axle.at()).layout().beam()) {
      problems.add(
          axle.place(),
          "at: the " + axle.at() + " axle is no beam; these angles are those of a beam axle",
          "Write camber, caster and toe of its wheels under alignment.");
    }
    once("entry of the " + axle.at() + " axle", axle.place());
    some(
        axle.place(),
        List.of(
            axle.barSlope(),
            axle.shift(),
            axle.dragLinkSlope(),
            axle.lowerLinkSlope(),
            axle.upperLinkSlope(),
            axle.turn()),
        "Add for example bar-slope: 5.5°.");
  }

  private void shaft(PropShaft shaft, VehicleProfile vehicle) {
    List<String> names = vehicle.shafts().stream().map(ShaftProfile::shaft).toList();
    if (!names.contains(shaft.shaft())) {
      problems.add(
          shaft.place(),
          "shaft: the profile has no prop shaft called " + Words.quoted(shaft.shaft()),
          names.isEmpty()
              ? "Give the shaft in the profile, under shafts."
              : Words.didYouMean(shaft.shaft(), names, "Expected " + Words.anyOf(names) + "."));
    }
    once("entry of the shaft " + Words.quoted(shaft.shaft()), shaft.place());
    some(
        shaft.place(),
        List.of(shaft.pinionSlope(), shaft.gearboxJoint(), shaft.axleJoint()),
        "Add for example pinion-slope: 3.5°.");
  }

  /** An entry says something, and how well. */
  private void some(Place place, List<Quantity> values, String advice) {
    if (values.stream().noneMatch(Quantity::isKnown)) {
      problems.add(place, "nothing is measured here", advice);
    }
    values.forEach(value -> uncertain(value, place));
  }

  private void running(Position position, Place place) {
    if (position == Position.SPARE) {
      problems.add(
          place,
          "at: the spare stands on no ground; expected one of the four wheels",
          "Correct where it was measured.");
    }
  }

  private void once(String what, Place place) {
    Place before = seen.putIfAbsent(what, place);
    if (before != null) {
      problems.add(
          place,
          "a second " + what + "; the first is at " + before,
          "Keep the better one, or write their mean with its ±.");
    }
  }

  /** A deviation is told in units of what is known: a reading without any ± cannot be compared. */
  private void uncertain(Quantity quantity, Place place) {
    if (quantity.isKnown() && quantity.expanded() == 0) {
      problems.add(
          place,
          quantity.name() + ": measured with ± 0; every reading is uncertain by something",
          "Write the tool's ±, or leave it out for the usual one.");
    }
  }
}
