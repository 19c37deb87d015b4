package trammel.read;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Dimension;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;

/** Records with every kind of component that files can fill. */
final class Sample {
  private Sample() {}

  record Sheet(
      Place place,
      @Required String title,
      @Nullable LocalDate surveyed,
      boolean lifted,
      @Nullable Integer spares,
      Hubs hubs,
      List<Line> lines,
      Map<String, Part> parts,
      @Measured(
              value = Dimension.LENGTH,
              by = Instrument.WHEEL_OFFSET,
              how = "read the mark on the wheel",
              name = "offset",
              min = -150,
              max = 150)
          Map<Axle, Quantity> offsets,
      List<Fitting> fittings,
      @Nullable Pattern pattern,
      @Named("for") @Nullable String purpose) {}

  enum Axle {
    FRONT,
    REAR
  }

  enum Seat {
    CONICAL,
    BALL,
    FLAT_WASHER
  }

  record Hubs(Hub front, Hub rear) {}

  record Hub(
      @Measured(
              value = Dimension.LENGTH,
              by = Instrument.CALIPER,
              how = "measure the pilot from the face to its chamfer",
              min = 1,
              max = 60)
          Quantity pilotLength,
      @Measured(
              value = Dimension.LENGTH,
              by = Instrument.CALIPER,
              how = "measure the pilot across",
              name = "pilot diameter",
              min = 40,
              max = 180)
          Quantity pilot,
      @Measured(
              value = Dimension.PRESSURE,
              by = Instrument.GAUGE,
              how = "read the gauge, cold",
              name = "tire pressure",
              min = 80,
              max = 700)
          Quantity pressure,
      @Measured(
              value = Dimension.ANGLE,
              by = Instrument.CAMBER_RACK,
              how = "read the rack",
              min = -10,
              max = 10)
          Quantity camber,
      @Nullable Seat seat) {}

  record Line(@Required String part, @Nullable Integer count, @Nullable String note) {}

  record Part(@Key String number, @Required Seat seat) {}

  @Discriminator("kind")
  sealed interface Fitting permits Spacer, Arm {}

  @Named("wheel-spacer")
  record Spacer(
      @Measured(value = Dimension.LENGTH, by = Instrument.MACHINED, how = "read the drawing")
          @Required
          Quantity thickness)
      implements Fitting {}

  @Named("control-arm")
  record Arm(@Required String position) implements Fitting {
    Arm {
      if (position.equals("middle")) {
        throw new IllegalArgumentException(
            "no control arm sits in the middle; expected upper or lower\nWrite upper or lower.");
      }
    }
  }

  /** A token: studs on a circle. */
  record Pattern(int studs, String circle) {
    public static Pattern parse(String text) {
      int x = text.indexOf('x');
      if (x < 1) {
        throw new IllegalArgumentException(
            "\"" + text + "\" is no stud pattern; expected studs x circle");
      }
      return new Pattern(Integer.parseInt(text.substring(0, x)), text.substring(x + 1));
    }
  }
}
