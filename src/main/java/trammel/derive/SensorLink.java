package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.catalog.PartKind;
import trammel.catalog.Support.HeightSensor;
import trammel.catalog.SuspensionPart.HeightSensorLink;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Position;

/**
 * The link of a height sensor, against the one the maker fitted: a longer one lets the body stand
 * higher at the same reading, by its added length over the link's ratio.
 */
final class SensorLink {
  private static final Formula LONGER =
      new Formula("added length of the link", "new − old length", "definition");
  private static final Formula SHIFT =
      new Formula(
          "height at the same reading",
          "added length / link ratio",
          "own derivation: the sensor's arm stands as it was");

  private final HeightSensor sensor;
  private final @Nullable HeightSensorLink book;
  private final @Nullable HeightSensorLink before;
  private final @Nullable HeightSensorLink after;

  private SensorLink(
      HeightSensor sensor,
      @Nullable HeightSensorLink book,
      @Nullable HeightSensorLink before,
      @Nullable HeightSensorLink after) {
    this.sensor = sensor;
    this.book = book;
    this.before = before;
    this.after = after;
  }

  /** The links of a wheel, where a sensor tells its height. */
  static Optional<SensorLink> of(Build build, Position position) {
    HeightSensor sensor =
        build.vehicle().axle(position.axle().orElseThrow()).support().heightSensor();
    PartKind kind = PartKind.HEIGHT_SENSOR_LINK;
    return sensor == null
        ? Optional.empty()
        : Optional.of(
            new SensorLink(
                sensor,
                build.bookAt(position).one(kind, HeightSensorLink.class).orElse(null),
                build.before(position).one(kind, HeightSensorLink.class).orElse(null),
                build.after(position).one(kind, HeightSensorLink.class).orElse(null)));
  }

  HeightSensor sensor() {
    return sensor;
  }

  /** Whether the changes bring another link. */
  boolean changed() {
    return after != null && !after.equals(before);
  }

  /** What the new link lifts with the control left alone (mm). */
  Quantity lift() {
    return after == null || before == null
        ? Figures.missing(
            LENGTH,
            "added length of the link",
            "the link that is fitted is not known",
            Instrument.TAPE,
            "eye to eye, old and new")
        : adjustable(after) || adjustable(before)
            ? Figures.missing(
                LENGTH,
                "length of the sensor link",
                "an adjustable link stands at what it is set to",
                Instrument.TAPE,
                "say raise: with the height it is set to")
            : shift(before.lengthFrom(), after.lengthFrom());
  }

  /**
   * How much higher than the book's the body stands at the same reading (mm): for an adjustable
   * link the length that comes nearest to the height wanted.
   */
  Quantity shift(Quantity height) {
    if (after == null || book == null || after.equals(book)) {
      return Constants.mm(0).called("height at the same reading (book link)");
    }
    Quantity shortest = shift(book.lengthFrom(), after.lengthFrom());
    Quantity longest = shift(book.lengthFrom(), after.lengthTo());
    if (!shortest.isKnown() || !height.isKnown() || height.value() <= shortest.value()) {
      return shortest;
    }
    return longest.isKnown() && height.value() < longest.value() ? height : longest;
  }

  private Quantity shift(Quantity old, Quantity now) {
    return SHIFT.quotient(LENGTH, 1, LONGER.linear(1, now, -1, old), sensor.linkRatio());
  }

  private static boolean adjustable(HeightSensorLink link) {
    return !link.lengthFrom().isKnown()
        || !link.lengthTo().isKnown()
        || link.lengthFrom().value() != link.lengthTo().value();
  }
}
