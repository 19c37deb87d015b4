package trammel.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Kleene's strong three-valued logic, with two reasons for the third value. */
class DecisionTest {
  @ParameterizedTest
  @CsvSource({
    "MET, MET, MET, MET",
    "MET, NOT_MET, NOT_MET, MET",
    "MET, UNDECIDED, UNDECIDED, MET",
    "MET, ABSENT, ABSENT, MET",
    "NOT_MET, NOT_MET, NOT_MET, NOT_MET",
    "NOT_MET, UNDECIDED, NOT_MET, UNDECIDED",
    "NOT_MET, ABSENT, NOT_MET, ABSENT",
    "UNDECIDED, UNDECIDED, UNDECIDED, UNDECIDED",
    "UNDECIDED, ABSENT, ABSENT, ABSENT",
    "ABSENT, ABSENT, ABSENT, ABSENT"
  })
  void andAndOr(Decision a, Decision b, Decision and, Decision or) {
    assertThat(a.and(b)).isEqualTo(and);
    assertThat(b.and(a)).isEqualTo(and);
    assertThat(a.or(b)).isEqualTo(or);
    assertThat(b.or(a)).isEqualTo(or);
  }

  @Test
  void not() {
    assertThat(Decision.MET.not()).isEqualTo(Decision.NOT_MET);
    assertThat(Decision.NOT_MET.not()).isEqualTo(Decision.MET);
    assertThat(Decision.UNDECIDED.not()).isEqualTo(Decision.UNDECIDED);
    assertThat(Decision.ABSENT.not()).isEqualTo(Decision.ABSENT);
  }

  @Test
  void deMorganHolds() {
    for (Decision a : Decision.values()) {
      for (Decision b : Decision.values()) {
        assertThat(a.and(b).not()).isEqualTo(a.not().or(b.not()));
      }
    }
  }

  @Test
  void onlyMetIsSafe() {
    assertThat(Decision.values())
        .filteredOn(decision -> !decision.isPossiblyViolated())
        .containsExactly(Decision.MET);
    assertThat(Decision.values())
        .filteredOn(Decision::isOpen)
        .containsExactly(Decision.UNDECIDED, Decision.ABSENT);
    assertThat(Decision.of(true)).isEqualTo(Decision.MET);
    assertThat(Decision.of(false)).isEqualTo(Decision.NOT_MET);
  }
}
