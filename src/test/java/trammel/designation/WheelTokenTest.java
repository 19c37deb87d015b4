package trammel.designation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WheelTokenTest {

  @ParameterizedTest
  @CsvSource({
    "6x139.7 mm, 6x139.7",
    "6x139.7, 6x139.7",
    "6 × 5.5 in, 6x139.7",
    "5 x 4.5 in, 5x114.3",
    "5x4.75\", 5x120.65",
    "'5x114,3', 5x114.3",
    "5х100, 5x100",
  })
  void boltPatternIsReadInMillimetersAndInches(String text, String canonical) {
    assertThat(BoltPattern.parse(text)).hasToString(canonical);
    assertThat(BoltPattern.parse(canonical)).isEqualTo(BoltPattern.parse(text));
  }

  /** Near misses of the trade that must never be fitted: common practice. */
  @ParameterizedTest
  @CsvSource({"5x114.3, 5x115", "5x120, 5x120.65", "5x127, 5x125"})
  void circlesThatAreMistakenForEachOtherAreNearMisses(String one, String other) {
    BoltPattern a = BoltPattern.parse(one);
    BoltPattern b = BoltPattern.parse(other);
    assertThat(a.nearMiss(b)).isTrue();
    assertThat(b.nearMiss(a)).isTrue();
    assertThat(a.matches(b)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "5x114.3, 6x115",
    "5x114.3, 5x120",
    "5x127, 5x124.99",
    "5x120.65, 5x120.7",
    "5x100, 5x100"
  })
  void differentCountsFarCirclesAndRoundingAreNoNearMisses(String one, String other) {
    assertThat(BoltPattern.parse(one).nearMiss(BoltPattern.parse(other))).isFalse();
  }

  @Test
  void roundingOfANameStillMatches() {
    assertThat(BoltPattern.parse("5x120.65").matches(BoltPattern.parse("5x120.7"))).isTrue();
    assertThat(BoltPattern.parse("5x120.65").matches(BoltPattern.parse("5x120.71"))).isFalse();
    assertThat(new BoltPattern(6, 139.7001)).isEqualTo(BoltPattern.parse("6x5.5 in"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"5x4.5", "139.7x6", "5x100/114.3", "2x100", "6", "6x139.7 cm"})
  void whatIsNoBoltPatternIsRefused(String text) {
    assertThatThrownBy(() -> BoltPattern.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("expected");
  }

  @ParameterizedTest
  @CsvSource({
    "M12x1.5, M12x1.5, 12, 1.5",
    "M14 x 1.5, M14x1.5, 14, 1.5",
    "m14×2.0, M14x2, 14, 2",
    "М12х1.25, M12x1.25, 12, 1.25",
    "1/2-20, 1/2-20, 12.7, 1.27",
    "9/16-18 UNF, 9/16-18, 14.2875, 1.411111",
    "7/16-20, 7/16-20, 11.1125, 1.27",
    "8/16 - 20, 1/2-20, 12.7, 1.27",
  })
  void threadIsReadByDiameterAndPitch(
      String text, String canonical, double diameter, double pitch) {
    ThreadSize thread = ThreadSize.parse(text);
    assertThat(thread).hasToString(canonical).isEqualTo(ThreadSize.parse(canonical));
    assertThat(thread.diameterMillimeters()).isCloseTo(diameter, Offset.offset(1e-6));
    assertThat(thread.pitchMillimeters()).isCloseTo(pitch, Offset.offset(1e-6));
  }

  @Test
  void anInchThreadIsNotTheMetricThreadOfTheSameNumbers() {
    assertThat(ThreadSize.parse("1/2-20"))
        .isNotEqualTo(new ThreadSize(ThreadSize.Series.METRIC, 12.7, 1.27));
  }

  @ParameterizedTest
  @ValueSource(strings = {"M12", "1/2", "1/3-20", "1/0-20", "M12x9", "12x1.5", "M99x1.5", ""})
  void whatIsNoThreadIsRefused(String text) {
    assertThatThrownBy(() -> ThreadSize.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("as a thread; expected diameter and pitch");
  }

  @ParameterizedTest
  @CsvSource({
    "cone 60, cone 60",
    "Cone 60°, cone 60",
    "cone 80, cone 80",
    "cone 90, cone 90",
    "ball R12, ball R12",
    "ball 13, ball R13",
    "BALL r 14, ball R14",
    "flat, flat",
    "shank, shank",
  })
  void seatIsAnExactToken(String text, String canonical) {
    assertThat(SeatForm.parse(text)).hasToString(canonical).isEqualTo(SeatForm.parse(canonical));
  }

  @Test
  void seatsOfDifferentAngleOrRadiusAreDifferent() {
    assertThat(SeatForm.parse("cone 60")).isNotEqualTo(SeatForm.parse("cone 90"));
    assertThat(SeatForm.parse("ball R12")).isNotEqualTo(SeatForm.parse("ball R13"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"cone", "cone 75", "cone R60", "ball", "ball R5", "flat 60", "round", ""})
  void whatIsNoSeatIsRefused(String text) {
    assertThatThrownBy(() -> SeatForm.parse(text)).hasMessageContaining("as a seat; expected cone");
  }

  /** 16x7J is the example of SAE J2530; 15 x 6 J and 13 x 5.50 B those of ISO 4000-2, clause 4. */
  @ParameterizedTest
  @CsvSource({
    "17x8.5J, 17x8.5J, 215.9",
    "17 x 8.5, 17x8.5, 215.9",
    "8.5Jx17, 17x8.5J, 215.9",
    "8½ J × 17, 17x8.5J, 215.9",
    "5 1/2 J x 15, 15x5.5J, 139.7",
    "16x7J, 16x7J, 177.8",
    "15 × 6 J, 15x6J, 152.4",
    "13 × 5.50 B, 13x5.5B, 139.7",
    "8.25x22.5, 22.5x8.25, 209.55",
  })
  void rimIsReadInEitherOrder(String text, String canonical, double width) {
    RimSize rim = RimSize.parse(text);
    assertThat(rim).hasToString(canonical).isEqualTo(RimSize.parse(canonical));
    assertThat(rim.widthMillimeters()).isCloseTo(width, Offset.offset(1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"17", "17x8.5Q", "17Jx8.5", "17x8.5J ET10", "17x8.3", "31x8.5", "17x2.5J", ""})
  void whatIsNoRimIsRefused(String text) {
    assertThatThrownBy(() -> RimSize.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("expected");
  }
}
