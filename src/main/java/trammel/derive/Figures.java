package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.MASS;
import static trammel.quantity.Dimension.PRESSURE;
import static trammel.quantity.Dimension.SPEED;

import java.util.OptionalDouble;
import java.util.function.Function;
import trammel.catalog.WheelPart.Tire;
import trammel.catalog.WheelPart.Wheel;
import trammel.designation.LoadClass;
import trammel.designation.TireDesignation;
import trammel.designation.TireDesignation.Family;
import trammel.designation.TireSize;
import trammel.physics.TireDimensions;
import trammel.physics.TireLoad;
import trammel.quantity.Absence;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.Place;

/**
 * What tires and wheels measure, worked out once in a check, so that one part is one source of
 * error wherever it is fitted. What a maker publishes outranks what the designation says.
 */
final class Figures {
  private static final Formula WIDTH =
      new Formula(
          "section width on this rim",
          "section width + 0.4 · (rim width − rim it was measured on)",
          "shared/reference/tire-sizes-inch.csv: 0.4 mm per mm of rim, which every published row bears out");

  private final Memo<String, Quantity> diameters = new Memo<>();
  private final Memo<String, Quantity> widths = new Memo<>();
  private final Memo<String, Quantity> loads = new Memo<>();
  private final Memo<String, Quantity> rims = new Memo<>();

  /** A value that a designation states. */
  static Quantity stated(
      String name, Dimension dimension, double value, Instrument by, Place place, String path) {
    Input input = new Input(place.file(), path, place.line(), "designation", by);
    return Quantity.read(name, dimension, value, by.expanded(value), input);
  }

  static Quantity missing(Dimension dimension, String what, String why, Instrument by, String how) {
    return Quantity.absent(dimension, new Absence(what, why, by, how));
  }

  /** Overall diameter (mm). */
  Quantity diameter(Tire tire) {
    return diameters.get(
        tire.number(),
        number ->
            tire.diameter().isKnown()
                ? tire.diameter()
                : nominal(tire, "diameter", nominalDiameter(tire.designation()), "designation"));
  }

  private static Quantity nominal(Tire tire, String what, double value, String path) {
    return stated(
        what + " of " + tire.number(),
        LENGTH,
        value,
        Instrument.TIRE_TABLE,
        tire.listing().place(),
        tire.number() + "." + path);
  }

  private static double nominalDiameter(TireDesignation designation) {
    if (designation.overallDiameterInches().isPresent()) {
      return TireDimensions.flotationDiameter(designation.overallDiameterInches().getAsDouble());
    }
    return TireDimensions.overallDiameter(
        designation.sectionWidthMillimeters(),
        designation.aspect().orElse(TireDesignation.ASSUMED_ASPECT),
        designation.rim().millimeters());
  }

  /** Section width on the wheel's rim (mm). */
  Quantity sectionWidth(Tire tire, Wheel wheel) {
    Quantity rim = rimWidth(wheel);
    boolean published = tire.sectionWidth().isKnown() && tire.onRim().isKnown();
    Quantity width =
        published
            ? tire.sectionWidth()
            : widths.get(
                tire.number(),
                number ->
                    nominal(
                        tire,
                        "section width",
                        tire.designation().sectionWidthMillimeters(),
                        "designation"));
    Quantity on =
        published
            ? tire.onRim()
            : Quantity.exact(LENGTH, theoreticalRim(tire.designation()))
                .called("theoretical rim width");
    return WIDTH.linear(
        new double[] {1, TireDimensions.WIDTH_PER_RIM_WIDTH, -TireDimensions.WIDTH_PER_RIM_WIDTH},
        width,
        rim,
        on);
  }

  /** The rim width on which a size has its nominal width (mm). */
  static double theoreticalRim(TireDesignation designation) {
    double nominal = designation.sectionWidthMillimeters();
    return designation.size() instanceof TireSize.Flotation
        ? TireDimensions.flotationTheoreticalRimWidth(nominal)
        : TireDimensions.theoreticalRimWidth(
            nominal, designation.aspect().orElse(TireDesignation.ASSUMED_ASPECT));
  }

  /** Rim width (mm), between the bead seats. */
  Quantity rimWidth(Wheel wheel) {
    return rims.get(
        wheel.number(),
        number ->
            stated(
                "rim width of " + wheel.number(),
                LENGTH,
                wheel.size().widthMillimeters(),
                Instrument.STATED,
                wheel.listing().place(),
                wheel.number() + ".size"));
  }

  /** Load rating of a single tire (kg). */
  Quantity load(Tire tire) {
    return loads.get(
        tire.number(),
        number ->
            tire.designation()
                .loadIndex()
                .filter(index -> index.kilograms().isPresent())
                .map(
                    index ->
                        stated(
                            "load rating of " + tire.number(),
                            MASS,
                            index.kilograms().getAsInt(),
                            Instrument.READ,
                            tire.listing().place(),
                            tire.number() + ".designation"))
                .orElseGet(
                    () ->
                        missing(
                            MASS,
                            "load rating of " + tire.number(),
                            "its designation states no load index of the table",
                            Instrument.READ,
                            "read the load index on the sidewall")));
  }

  /** Speed of the tire's symbol (km/h). */
  static Quantity speed(Tire tire) {
    return tire.designation()
        .speedSymbol()
        .map(
            symbol ->
                stated(
                    "speed of the symbol on " + tire.number(),
                    SPEED,
                    symbol.kilometersPerHour(),
                    Instrument.READ,
                    tire.listing().place(),
                    tire.number() + ".designation"))
        .orElseGet(
            () ->
                missing(
                    SPEED,
                    "speed symbol of " + tire.number(),
                    "its designation states none",
                    Instrument.READ,
                    "read the speed symbol on the sidewall"));
  }

  /** Cold pressure at which the tire carries its rating (kPa, gauge). */
  static Quantity loadPressure(Tire tire) {
    if (tire.loadPressure().isKnown()) {
      return tire.loadPressure();
    }
    TireDesignation designation = tire.designation();
    Family family = designation.family();
    boolean extra = designation.loadClass().filter(c -> c == LoadClass.EXTRA).isPresent();
    Function<Double, Quantity> byStandard =
        kilopascals ->
            stated(
                "reference pressure of " + tire.number(),
                PRESSURE,
                kilopascals,
                Instrument.STATED,
                tire.listing().place(),
                tire.number() + ".designation");
    if (family == Family.P_METRIC) {
      return byStandard.apply(
          extra ? TireLoad.P_METRIC_EXTRA_PRESSURE : TireLoad.P_METRIC_STANDARD_PRESSURE);
    }
    if (family == Family.METRIC) {
      return byStandard.apply(
          extra ? TireLoad.EURO_METRIC_EXTRA_PRESSURE : TireLoad.EURO_METRIC_STANDARD_PRESSURE);
    }
    OptionalDouble byRange =
        designation.loadRange().isPresent()
            ? designation.loadRange().get().ltReferencePressure()
            : OptionalDouble.empty();
    return byRange.isPresent() && family == Family.LT_METRIC
        ? byStandard.apply(byRange.getAsDouble())
        : tire.loadPressure();
  }

  /**
   * The load law a tire follows: LT tires by TRA's, others by the more careful ETRTO exponent where
   * not P-metric.
   */
  static TireLoad.Standard standard(TireDesignation designation) {
    return switch (designation.family()) {
      case P_METRIC -> TireLoad.Standard.P_METRIC;
      case LT_METRIC, LT_SUFFIX, FLOTATION -> TireLoad.Standard.LT_METRIC;
      default -> TireLoad.Standard.ETRTO_PASSENGER;
    };
  }
}
