package trammel.catalog;

import java.util.Collection;
import java.util.Map;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.Words;
import trammel.subject.Axle;

/** Checks that every part number named in a catalog is one of its parts. */
final class References {
  private final Map<String, Part> parts;
  private final Problems problems;

  References(Map<String, Part> parts, Problems problems) {
    this.parts = parts;
    this.problems = problems;
  }

  void check(Collection<VehicleProfile> vehicles) {
    for (VehicleProfile vehicle : vehicles) {
      vehicle.book().forEach(number -> check(vehicle.place(), "book", number));
      for (Axle axle : Axle.values()) {
        AxleProfile profile = vehicle.axle(axle);
        profile.book().forEach(number -> check(vehicle.place(), axle + ".book", number));
        for (StationProfile station : profile.stations().values()) {
          for (StationProfile.PosedGap gap : station.gaps()) {
            checkIfAny(gap.place(), "wheel", gap.wheel());
            checkIfAny(gap.place(), "tire", gap.tire());
          }
        }
      }
    }
    for (Part part : parts.values()) {
      part.listing().contains().keySet().forEach(n -> check(part.listing().place(), "contains", n));
    }
  }

  private void checkIfAny(
      Place place, String key, @org.jspecify.annotations.Nullable String number) {
    if (number != null) {
      check(place, key, number);
    }
  }

  private void check(Place place, String key, String number) {
    if (!parts.containsKey(number)) {
      problems.add(
          place,
          key + ": no part is numbered " + Words.quoted(number),
          Words.didYouMean(number, parts.keySet(), "Add the part, or correct the number."));
    }
  }
}
