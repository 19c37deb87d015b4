package trammel.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class InstrumentTest {
  /** Common practice, except the tire table: GOST R 52899-2007, table A.1. */
  @ParameterizedTest
  @CsvSource({
    "TAPE, 815, 3",
    "FENDER, 815, 5",
    "LOCK_GAP, 20, 5",
    "HARD_POINT, 400, 2",
    "CALIPER, 71, 0.2",
    "MACHINED, 71, 0.1",
    "WHEEL_OFFSET, -38, 0.5",
    "TIRE_TABLE, 800, 8",
    "ANGLE_FINDER, 5, 0.5",
    "TOE_RACK, 0.1, 0.05",
    "CAMBER_RACK, 0.1, 0.1",
    "CASTER_RACK, 3, 0.25",
    "SPRING_RATE, 40, 2",
    "WEIGHED, 1000, 20",
    "GUESSED, 1000, 200",
    "GAUGE, 250, 5",
    "CLAIM, -50, 12.5",
    "STATED, 50, 0"
  })
  void hasItsUsualUncertainty(Instrument instrument, double value, double expected) {
    assertThat(instrument.expanded(value)).isCloseTo(expected, within(1e-12));
  }

  /** An absolute uncertainty is a number in one unit, and would be nonsense in another. */
  @ParameterizedTest
  @EnumSource(Instrument.class)
  void anAbsoluteUncertaintyHoldsForOneDimension(Instrument instrument) {
    boolean absolute = instrument.expanded(0) > 0;
    long dimensions = Arrays.stream(Dimension.values()).filter(instrument::measures).count();
    assertThat(dimensions).isEqualTo(absolute ? 1 : Dimension.values().length);
  }

  @Test
  void filesWriteItInKebabCase() {
    assertThat(Instrument.WHEEL_OFFSET.fileName()).isEqualTo("wheel-offset");
  }
}
