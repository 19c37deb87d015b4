package trammel.book;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trammel.book.SheetFile.DefaultEntry;
import trammel.catalog.AssumedValue;
import trammel.catalog.VehicleProfile;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.Problems;
import trammel.read.QuantityReader;
import trammel.read.Reading;
import trammel.read.RecordShape;
import trammel.read.TypeShape;
import trammel.read.Words;

/**
 * Reads a default: a key of a vehicle's profile, and a value no surer than one could measure it.
 */
final class DefaultReader {
  private final Manifest manifest;
  private final Problems problems;

  DefaultReader(Manifest manifest, Problems problems) {
    this.manifest = manifest;
    this.problems = problems;
  }

  /** The default, or null if it was refused. */
  @Nullable AssumedValue read(DefaultEntry entry) {
    Measured measured = measured(entry);
    if (measured == null) {
      return null;
    }
    Reading reading;
    try {
      reading = QuantityReader.parse(entry.is(), measured.value());
    } catch (IllegalArgumentException complaint) {
      String[] lines = String.valueOf(complaint.getMessage()).split("\n", 2);
      problems.add(entry.place(), lines[0], lines.length > 1 ? lines[1] : "Correct the value.");
      return null;
    }
    double least = measured.by().expanded(reading.value());
    double expanded = reading.expanded().orElse(Double.NaN);
    if (!(expanded > 0) || expanded < least) {
      problems.add(
          entry.place(),
          "a default of "
              + entry.is()
              + "; expected ± of at least "
              + (least > 0 ? least + " " + measured.value().unit().symbol() : "something"),
          "What is assumed is known no better than what is measured: write its ±.");
      return null;
    }
    if (reading.value() < measured.min() || reading.value() > measured.max()) {
      problems.add(
          entry.place(),
          "a default of " + entry.is() + "; expected " + measured.min() + " to " + measured.max(),
          "Check value and unit.");
      return null;
    }
    Input input =
        new Input(
            entry.place().file(),
            entry.value(),
            entry.place().line(),
            "assumed by book " + manifest.name() + " " + manifest.version() + ": " + entry.source(),
            Instrument.GUESSED);
    String name = Words.spaced(entry.value().substring(entry.value().lastIndexOf('.') + 1));
    return new AssumedValue(
        entry.place(),
        entry.value(),
        Quantity.read(
            measured.name().isEmpty() ? name : measured.name(),
            measured.value(),
            reading.value(),
            expanded,
            input),
        manifest.name(),
        manifest.version().toString(),
        entry.because(),
        entry.source());
  }

  private @Nullable Measured measured(DefaultEntry entry) {
    RecordShape shape = RecordShape.of(VehicleProfile.class);
    String[] keys = entry.value().split("\\.", -1);
    for (int i = 0; i < keys.length; i++) {
      String key = keys[i];
      RecordShape.Component component =
          shape.components().stream()
              .filter(one -> one.isWritten() && one.key().equals(key))
              .findFirst()
              .orElse(null);
      if (component == null) {
        List<String> known = shape.keys();
        problems.add(
            entry.place(),
            Words.quoted(entry.value())
                + " leads to nothing in a vehicle's profile: no "
                + Words.quoted(key),
            Words.didYouMean(key, known, "Keys there are " + Words.anyOf(known) + "."));
        return null;
      }
      boolean last = i == keys.length - 1;
      if (last && component.shape().kind() == TypeShape.Kind.QUANTITY) {
        return component.measured();
      }
      if (last || component.shape().kind() != TypeShape.Kind.RECORD) {
        break;
      }
      shape = RecordShape.of(component.shape().type());
    }
    problems.add(
        entry.place(),
        Words.quoted(entry.value()) + " leads to no quantity in a vehicle's profile",
        "Write the keys that lead to one, such as front.support.unsprung.");
    return null;
  }
}
