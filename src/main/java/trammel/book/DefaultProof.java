package trammel.book;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trammel.catalog.AssumedValue;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.catalog.VehicleProfile;
import trammel.quantity.Quantity;
import trammel.read.Nested;
import trammel.read.Problem;
import trammel.read.QuantityWriter;
import trammel.read.Words;

/**
 * What is wrong with what books assume, and what is doubtful: of two books that contradict each
 * other, and of a book held against the vehicles of a catalog.
 */
final class DefaultProof {
  private final List<Problem> wrong = new ArrayList<>();
  private final List<Problem> doubtful = new ArrayList<>();

  /** What must be mended: a check that wants such a value comes to no verdict. */
  List<Problem> wrong() {
    return wrong;
  }

  /** What is to be looked at. */
  List<Problem> doubtful() {
    return doubtful;
  }

  /** Holds books against each other. */
  void hold(List<Book> books) {
    for (int i = 0; i < books.size(); i++) {
      for (Book before : books.subList(0, i)) {
        if (meet(before.manifest(), books.get(i).manifest())) {
          contradict(before, books.get(i));
        }
      }
    }
  }

  /** Whether two books may both be in force for one vehicle. */
  private static boolean meet(Manifest one, Manifest other) {
    return one.vehicles().isEmpty()
        || other.vehicles().isEmpty()
        || one.vehicles().stream().anyMatch(other.vehicles()::contains);
  }

  private void contradict(Book before, Book book) {
    for (AssumedValue value : book.defaults()) {
      for (AssumedValue first : before.defaults()) {
        boolean same =
            first.is().value() == value.is().value()
                && first.is().expanded() == value.is().expanded();
        if (first.key().equals(value.key()) && !same) {
          wrong.add(
              new Problem(
                  value.place(),
                  value.key()
                      + ": "
                      + value.whose()
                      + " assumes "
                      + QuantityWriter.uncertain(value.is())
                      + ", and "
                      + first.whose()
                      + " ("
                      + first.place()
                      + ") assumes "
                      + QuantityWriter.uncertain(first.is()),
                  "Where both are in force and the value is wanted, there is no verdict: keep one."));
        }
      }
    }
  }

  /** Holds a book against the vehicles of a catalog. */
  void hold(Book book, Catalog catalog) {
    Set<String> known = catalog.vehicles().keySet();
    for (String name : book.manifest().vehicles()) {
      if (!known.contains(name)) {
        doubtful.add(
            new Problem(
                book.manifest().place(),
                "the book is for " + Words.quoted(name) + ", which is no vehicle of this catalog",
                Words.didYouMean(name, known, "Correct vehicles, or name its catalog.")));
      }
    }
    List<VehicleProfile> its =
        catalog.vehicles().values().stream()
            .filter(one -> isFor(book.manifest(), one.vehicle()))
            .toList();
    if (!its.isEmpty()) {
      book.defaults().forEach(value -> hold(value, its, catalog));
    }
  }

  private static boolean isFor(Manifest manifest, String vehicle) {
    return manifest.vehicles().isEmpty() || manifest.vehicles().contains(vehicle);
  }

  private void hold(AssumedValue value, Collection<VehicleProfile> vehicles, Catalog catalog) {
    List<String> give = new ArrayList<>();
    List<String> cannotHave = new ArrayList<>();
    for (VehicleProfile vehicle : vehicles) {
      Optional<Quantity> there = Nested.at(vehicle, value.keys());
      if (there.isEmpty()) {
        cannotHave.add(vehicle.vehicle());
      } else if (there.get().isKnown()) {
        give.add(vehicle.vehicle());
      } else {
        bear(value, vehicle, catalog);
      }
    }
    if (give.size() + cannotHave.size() == vehicles.size()) {
      doubtful.add(
          new Problem(
              value.place(),
              "the default of " + value.key() + " is never wanted: " + why(give, cannotHave),
              "Remove it, unless the book is for vehicles of another catalog too."));
    }
  }

  private static String why(List<String> give, List<String> cannotHave) {
    List<String> parts = new ArrayList<>();
    if (!give.isEmpty()) {
      parts.add("given by the profile of " + String.join(", ", give));
    }
    if (!cannotHave.isEmpty()) {
      parts.add("nothing to have such a value on " + String.join(", ", cannotHave));
    }
    return String.join("; ", parts);
  }

  private void bear(AssumedValue value, VehicleProfile vehicle, Catalog catalog) {
    VehicleProfile filled = Nested.with(vehicle, value.keys(), value.is());
    for (Problem contradiction : CatalogFiles.contradictions(filled, catalog)) {
      wrong.add(
          new Problem(
              value.place(),
              value.key()
                  + ": assumes "
                  + QuantityWriter.uncertain(value.is())
                  + ", which "
                  + vehicle.vehicle()
                  + " cannot have: "
                  + contradiction.what(),
              "A check that wants the value comes to no verdict: correct it."));
    }
  }
}
