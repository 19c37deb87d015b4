package trammel.build;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import trammel.build.BuildSheet.Measurements;
import trammel.catalog.Catalog;
import trammel.catalog.Part;
import trammel.catalog.StationProfile;
import trammel.catalog.VehicleProfile;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.Words;
import trammel.subject.Axle;

/** The parts that gaps were measured with, by number. */
final class MeasuredWith {
  private final Catalog catalog;
  private final Problems problems;

  MeasuredWith(Catalog catalog, Problems problems) {
    this.catalog = catalog;
    this.problems = problems;
  }

  /** Those that the profile's gaps and the sheet's name. */
  Map<String, Part> parts(VehicleProfile vehicle, Measurements measurements) {
    Map<String, Part> parts = new HashMap<>();
    for (BuildSheet.Gap gap : measurements.gaps()) {
      for (String number : gap.with()) {
        part(number, gap.place(), catalog, problems).ifPresent(part -> parts.put(number, part));
      }
    }
    for (Axle axle : Axle.values()) {
      for (StationProfile station : vehicle.axle(axle).stations().values()) {
        for (StationProfile.PosedGap gap : station.gaps()) {
          for (String number : Arrays.asList(gap.wheel(), gap.tire())) {
            if (number != null) {
              parts.put(number, catalog.part(number).orElseThrow());
            }
          }
        }
      }
    }
    return Map.copyOf(parts);
  }

  /** A part by its number; where there is none, that is a problem. */
  static Optional<Part> part(String number, Place place, Catalog catalog, Problems problems) {
    Optional<Part> found = catalog.part(number);
    if (found.isEmpty()) {
      problems.add(
          place,
          "no part is numbered " + Words.quoted(number),
          Words.didYouMean(number, catalog.parts().keySet(), "Add the part to the catalog."));
    }
    return found;
  }
}
