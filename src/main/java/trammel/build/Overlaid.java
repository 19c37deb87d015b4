package trammel.build;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trammel.build.BuildSheet.Measurements;
import trammel.build.BuildSheet.State;
import trammel.catalog.Catalog;
import trammel.catalog.Part;
import trammel.catalog.VehicleProfile;
import trammel.quantity.Absence;
import trammel.quantity.Dimension;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.Words;
import trammel.subject.Axle;
import trammel.subject.Position;

/** Lays over a build what measuring its vehicle has taught. */
final class Overlaid {
  private final Catalog catalog;
  private final Problems problems;

  Overlaid(Catalog catalog, Problems problems) {
    this.catalog = catalog;
    this.problems = problems;
  }

  /**
   * The build with the overlay's values in place of the profile's; the sheet's own stay.
   *
   * @param named where the sheet names the overlay
   */
  Build build(Build build, OverlayFile overlay, Place named, Path file) {
    String vehicle = build.vehicle().vehicle();
    if (!overlay.vehicle().equals(vehicle)) {
      problems.add(
          named,
          "overlay: "
              + file
              + " is of the vehicle "
              + Words.quoted(overlay.vehicle())
              + "; this sheet is of "
              + Words.quoted(vehicle),
          "Name the overlay of this vehicle, or remove the line.");
      return build;
    }
    Map<String, Part> with = new HashMap<>(build.measuredWith());
    for (OverlayFile.Gap gap : overlay.gaps()) {
      new SheetCheck(problems).pose(gap.at(), gap.steer(), gap.place());
      for (String number : gap.with()) {
        MeasuredWith.part(number, gap.place(), catalog, problems)
            .ifPresent(part -> with.put(number, part));
      }
    }
    return build.taught(
        profile(build.vehicle(), overlay),
        new Measurements(
            gaps(build.measurements(), overlay),
            build.measurements().heights(),
            printouts(build.measurements(), overlay),
            build.measurements().pressures()),
        Map.copyOf(with));
  }

  private VehicleProfile profile(VehicleProfile profile, OverlayFile overlay) {
    VehicleProfile better = profile;
    for (OverlayFile.SpringRatio spring : overlay.springs()) {
      Axle axle = spring.at();
      better = better.with(axle, better.axle(axle).withSpringMotionRatio(spring.motionRatio()));
    }
    return better;
  }

  private List<BuildSheet.Gap> gaps(Measurements sheet, OverlayFile overlay) {
    List<BuildSheet.Gap> gaps = new ArrayList<>(sheet.gaps());
    for (OverlayFile.Gap gap : overlay.gaps()) {
      if (sheet.gaps().stream().noneMatch(own -> own.at().equals(gap.at()))) {
        gaps.add(
            new BuildSheet.Gap(
                gap.place(),
                gap.at(),
                gap.gap(),
                gap.steer(),
                gap.height(),
                State.AS_FOUND,
                absent(Dimension.PRESSURE, "tire pressure"),
                gap.with(),
                gap.lifted()));
      }
    }
    return List.copyOf(gaps);
  }

  private List<BuildSheet.Printout> printouts(Measurements sheet, OverlayFile overlay) {
    List<BuildSheet.Printout> printouts = new ArrayList<>(sheet.alignment());
    for (OverlayFile.Printout printout : overlay.alignment()) {
      Position at = printout.at();
      Quantity unturned = absent(Dimension.ANGLE, "what the adjusters gave");
      printouts.add(
          new BuildSheet.Printout(
              printout.place(),
              at,
              State.AS_FOUND,
              printout.height(),
              printout.angles(),
              unturned,
              unturned,
              unturned,
              unturned));
    }
    return List.copyOf(printouts);
  }

  private static Quantity absent(Dimension dimension, String what) {
    return Quantity.absent(
        dimension, new Absence(what, "an overlay does not tell it", Instrument.READ, "measure it"));
  }
}
