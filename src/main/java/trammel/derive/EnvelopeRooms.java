package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.EnumMap;
import java.util.Map;
import trammel.catalog.WheelPart.Tire;
import trammel.catalog.WheelPart.Wheel;
import trammel.designation.Construction;
import trammel.designation.TireDesignation;
import trammel.designation.TireDesignation.Family;
import trammel.fact.Clearance;
import trammel.fact.EnvelopeRoom;
import trammel.physics.TireDimensions;
import trammel.physics.TireEnvelope;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Position;
import trammel.subject.Station;

/**
 * What each gap would be with the largest tire of the fitted size in the pose that decides. The
 * difference to the proposed tire is carried over by the coefficients of the station, at surveyed
 * stations too: nothing is swept again, so that this costs next to nothing.
 */
final class EnvelopeRooms {
  private static final String STANDARDS = "UN R30 and UN R54, from memory";
  private static final Formula WIDTH =
      new Formula(
          "greatest section width of the size", "1.04 · section width on this rim", STANDARDS);
  private static final Formula ON_RIM =
      new Formula(
          "section width of the size on this rim",
          "nominal width + 0.4 · (rim width − theoretical rim width)",
          STANDARDS);
  private static final Formula DIAMETER =
      new Formula("greatest diameter of the size", "rim + growth · (diameter − rim)", STANDARDS);
  private static final Formula COST =
      new Formula(
          "gap that the largest tire of the size takes",
          "cₑ·½(greatest width − width) + cᵣ·½(greatest diameter − diameter)",
          "StationModel: coefficients by station");
  private static final Formula ROOM =
      new Formula(
          "room of the largest tire of this size",
          "gap − what the largest tire of the size takes ± model",
          "definition");

  /** Passenger tires: one factor. */
  private static final Quantity PASSENGER =
      Quantity.exact(RATIO, TireEnvelope.HEIGHT_GROWTH).called("growth of the height");

  /** No designation says whether a light truck's tire is for normal or for special use. */
  private static final Quantity LIGHT_TRUCK =
      between(
          "growth of the height",
          RATIO,
          TireEnvelope.HEIGHT_GROWTH,
          TireEnvelope.SPECIAL_HEIGHT_GROWTH,
          "for normal or special use: no designation says which");

  private final Derivation derivation;
  private final Map<Position, Envelope> envelopes = new EnumMap<>(Position.class);

  EnvelopeRooms(Derivation derivation) {
    this.derivation = derivation;
  }

  /** The largest tire of a size on a rim. */
  private record Envelope(Quantity width, Quantity diameter) {}

  /**
   * Adds the fact beside what was found of a station.
   *
   * @param found the gap of the proposed tire in the pose that decides
   */
  void add(Position position, Clearance found) {
    WheelEnd end = derivation.after(position);
    Envelope envelope = envelopes.computeIfAbsent(position, p -> envelope(end));
    derivation.facts.add(
        new EnvelopeRoom(
            found.subject(),
            found.standing(),
            found.parts(),
            found.station(),
            end.tire == null ? "" : end.tire.number(),
            found.obstacle(),
            envelope.width,
            envelope.diameter,
            room(found, end, envelope),
            found.pose()));
  }

  private Quantity room(Clearance found, WheelEnd end, Envelope envelope) {
    Tire tire = end.tire;
    Wheel wheel = end.wheel;
    // What is tried on a sheet is tried on the largest tire of the size too.
    Quantity diameter = tire == null ? end.diameter : derivation.figures.diameter(tire);
    Quantity width =
        tire == null || wheel == null ? end.width : derivation.figures.sectionWidth(tire, wheel);
    Station station = found.station();
    StationModel model = StationModel.of(station);
    boolean side = station.surface().outer() || station.surface().inner();
    double perRadius = model.perRadius() / 2;
    double perEdge = model.perEdge() / 2;
    Quantity cost =
        side && perEdge != 0
            ? COST.linear(
                new double[] {perEdge, -perEdge, perRadius, -perRadius},
                envelope.width,
                width,
                envelope.diameter,
                diameter)
            : COST.linear(perRadius, envelope.diameter, -perRadius, diameter);
    return ROOM.linear(1, found.gap(), -1, cost, 1, model.uncertainty(station, cost));
  }

  private Envelope envelope(WheelEnd end) {
    Tire tire = end.tire;
    Wheel wheel = end.wheel;
    if (tire == null || wheel == null) {
      return new Envelope(end.width, tire == null ? end.diameter : diameter(tire));
    }
    return new Envelope(width(tire, wheel), diameter(tire));
  }

  private Quantity width(Tire tire, Wheel wheel) {
    TireDesignation designation = tire.designation();
    if (!hasFormula(designation)) {
      return unknown(designation);
    }
    Quantity onRim =
        ON_RIM.linear(
            1,
            Quantity.exact(
                LENGTH,
                TireDimensions.sectionWidth(
                    designation.sectionWidthMillimeters(),
                    Figures.theoreticalRim(designation),
                    wheel.size().widthMillimeters())));
    return WIDTH.linear(TireEnvelope.WIDTH_GROWTH, onRim);
  }

  private static Quantity diameter(Tire tire) {
    TireDesignation designation = tire.designation();
    if (!hasFormula(designation)) {
      return unknown(designation);
    }
    double rim = Math.floor(designation.rim().millimeters() + 0.5);
    Quantity nominal = nominal(designation);
    Quantity growth = designation.family().isPassenger() ? PASSENGER : LIGHT_TRUCK;
    double height = (nominal.value() - rim) / 2;
    return DIAMETER.of(
        LENGTH,
        TireEnvelope.diameter(rim, height, growth.value()),
        new double[] {growth.value(), 2 * height},
        nominal,
        growth);
  }

  /** Overall diameter as the standards list the size. */
  private static Quantity nominal(TireDesignation designation) {
    if (designation.overallDiameterInches().isPresent()) {
      double inches = designation.overallDiameterInches().getAsDouble();
      return between(
          "listed diameter",
          LENGTH,
          TireDimensions.flotationDiameterInMetricTables(inches),
          TireDimensions.flotationDiameter(inches),
          "tables in inches and in millimeters differ by a quarter of an inch");
    }
    return Quantity.exact(
            LENGTH,
            TireDimensions.roundedOverallDiameter(
                designation.sectionWidthMillimeters(),
                designation.aspect().orElseThrow(),
                designation.rim().millimeters()))
        .called("listed diameter");
  }

  private static Quantity between(
      String name, Dimension dimension, double least, double most, String why) {
    Input input = new Input("EnvelopeRooms", name + ", " + why, 0, STANDARDS, Instrument.STATED);
    return Quantity.read(name, dimension, (least + most) / 2, (most - least) / 2, input);
  }

  private static boolean hasFormula(TireDesignation designation) {
    Construction construction = designation.construction();
    Family family = designation.family();
    boolean radial =
        construction != Construction.DIAGONAL && construction != Construction.BIAS_BELTED;
    boolean listed = family.isPassenger() || (family.isLightTruck() && family != Family.NUMERIC);
    return radial && listed && !designation.isAspectAssumed();
  }

  private static Quantity unknown(TireDesignation designation) {
    return Figures.missing(
        LENGTH,
        "greatest dimensions of " + designation,
        "its size and construction have no formula here",
        Instrument.READ,
        "ask the tire's maker for the largest dimensions that the size may have");
  }
}
