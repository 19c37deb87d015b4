package trammel.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.catalog.AssumedValue;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.catalog.VehicleProfile;
import trammel.read.Nested;
import trammel.read.Problem;
import trammel.read.Problems;
import trammel.read.QuantityWriter;

/**
 * What rule books assume of a vehicle where its profile, with what an overlay has taught, gives no
 * value. What a vehicle does not have at all, such as rams, lacks no value.
 *
 * @param values what was taken, in the order of the books
 * @param filled the profile with it
 */
record Assumed(List<AssumedValue> values, VehicleProfile filled) {
  Assumed {
    values = List.copyOf(values);
  }

  /**
   * What books assume of a vehicle. Of two that assume the same, the first counts.
   *
   * @throws trammel.read.UnreadableFile if two of them contradict each other about a value that is
   *     wanted, or one contradicts what is given
   */
  static Assumed of(VehicleProfile vehicle, List<AssumedValue> offered, Catalog catalog) {
    Problems problems = new Problems();
    List<AssumedValue> taken = new ArrayList<>();
    VehicleProfile filled = vehicle;
    for (AssumedValue value : offered) {
      boolean missing = Nested.at(vehicle, value.keys()).filter(q -> !q.isKnown()).isPresent();
      Optional<AssumedValue> before =
          taken.stream().filter(other -> other.key().equals(value.key())).findFirst();
      if (!missing) {
        continue;
      }
      if (before.isPresent()) {
        agree(before.get(), value, problems);
        continue;
      }
      VehicleProfile next = Nested.with(filled, value.keys(), value.is());
      if (bears(next, value, catalog, problems)) {
        filled = next;
        taken.add(value);
      }
    }
    problems.refuseIfAny();
    return new Assumed(taken, filled);
  }

  private static void agree(AssumedValue before, AssumedValue here, Problems problems) {
    boolean same =
        before.is().value() == here.is().value() && before.is().expanded() == here.is().expanded();
    if (!same) {
      problems.add(
          here.place(),
          here.key()
              + ": "
              + here.whose()
              + " assumes "
              + QuantityWriter.uncertain(here.is())
              + ", and "
              + before.whose()
              + " ("
              + before.place()
              + ") assumes "
              + QuantityWriter.uncertain(before.is()),
          "Measure the value and write it into the profile, or take one of the two out of force.");
    }
  }

  /** Whether what is given bears an assumed value beside it. */
  private static boolean bears(
      VehicleProfile filled, AssumedValue value, Catalog catalog, Problems problems) {
    List<Problem> contradictions = CatalogFiles.contradictions(filled, catalog);
    for (Problem contradiction : contradictions) {
      problems.add(
          value.place(),
          value.key()
              + ": "
              + value.whose()
              + " assumes "
              + QuantityWriter.uncertain(value.is())
              + ", which this vehicle cannot have: "
              + contradiction.what(),
          "Measure the value and write it into the profile, or correct the book.");
    }
    return contradictions.isEmpty();
  }
}
