package trammel.catalog;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Instrument.CAMBER_RACK;
import static trammel.quantity.Instrument.CASTER_RACK;
import static trammel.quantity.Instrument.STATED;
import static trammel.quantity.Instrument.TOE_RACK;

import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trammel.quantity.Quantity;
import trammel.read.Measured;

/**
 * What a wheel alignment must come to. Camber positive with the top outward, caster positive with
 * the steering axis' top rearward, toe of one wheel positive toward the inside.
 *
 * @param casterFrom what the maker's caster is relative to
 * @param sideToSideCamber the most by which left and right may differ
 * @param sideToSideCaster the most by which left and right may differ
 * @param asSurveyed what the rack showed in the state that the hard points were surveyed in
 */
public record AlignmentSpec(
    @Nullable CasterFrom casterFrom,
    Window camber,
    Window caster,
    Window toe,
    @Measured(value = ANGLE, by = STATED, how = "maker's table", min = 0, max = 3)
        Quantity sideToSideCamber,
    @Measured(value = ANGLE, by = STATED, how = "maker's table", min = 0, max = 3)
        Quantity sideToSideCaster,
    Angles asSurveyed) {

  /** Whether the maker states any of the angles. */
  public boolean stated() {
    return Stream.of(camber, caster, toe)
        .anyMatch(window -> window.from().isKnown() || window.to().isKnown());
  }

  /** What caster is told from. */
  public enum CasterFrom {
    /** The frame, whatever its rake. */
    FRAME,
    /** The level ground, as a rack shows it: rake comes in. */
    GROUND
  }

  /** The range that one angle may have, and the value to aim at. */
  public record Window(
      @Measured(
              value = ANGLE,
              by = STATED,
              how = "maker's table",
              name = "maker's lower limit",
              min = -15,
              max = 15)
          Quantity from,
      @Measured(value = ANGLE, by = STATED, how = "maker's table", min = -15, max = 15)
          Quantity preferred,
      @Measured(
              value = ANGLE,
              by = STATED,
              how = "maker's table",
              name = "maker's upper limit",
              min = -15,
              max = 15)
          Quantity to) {}

  /** The angles of one wheel as a rack shows them. */
  public record Angles(
      @Measured(
              value = ANGLE,
              by = CAMBER_RACK,
              how = "put it on an alignment rack",
              min = -15,
              max = 15)
          Quantity camber,
      @Measured(
              value = ANGLE,
              by = CASTER_RACK,
              how = "put it on an alignment rack",
              min = -15,
              max = 15)
          Quantity caster,
      @Measured(
              value = ANGLE,
              by = TOE_RACK,
              how = "put it on an alignment rack",
              min = -10,
              max = 10)
          Quantity toe) {}
}
