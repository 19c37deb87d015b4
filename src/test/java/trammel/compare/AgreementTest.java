package trammel.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trammel.compare.Predicted.input;
import static trammel.compare.Predicted.pair;
import static trammel.compare.Predicted.sum;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.quantity.Quantity;

/** Which value explains what deviates; the cases are own. */
class AgreementTest {
  private final Quantity found = input("height as found", 500, 5);
  private final Quantity lift = input("lift of the springs", 40, 10);
  private final Quantity left = sum(new double[] {1, 1}, input("left", 500, 5), lift);
  private final Quantity right = sum(new double[] {1, 1}, input("right", 500, 5), lift);

  @Test
  void whatAgreesNeedsNoExplanation() {
    Agreement agreement = Agreement.of(List.of(pair(left, 536, 5), pair(right, 541, 5)));
    assertThat(agreement.agrees()).isTrue();
    assertThat(agreement.explanations()).isEmpty();
  }

  /** Both sides too low by about 14: what they share is likelier than either side's own. */
  @Test
  void whatBothSidesShareExplainsBoth() {
    Agreement agreement = Agreement.of(List.of(pair(left, 526, 5), pair(right, 526, 5)));
    assertThat(agreement.agrees()).isFalse();
    assertThat(agreement.explanations()).hasSize(1);
    Explanation likeliest = agreement.explanations().get(0);
    assertThat(likeliest.input()).isSameAs(lift);
    assertThat(likeliest.wanted()).isCloseTo(26, within(1e-9));
    assertThat(likeliest.shift()).isCloseTo(-14 / 5.0, within(1e-9));
  }

  /** One side alone: what both share would spoil the other. */
  @Test
  void whatOneSideShowsAloneIsNotExplainedByWhatBothShare() {
    Agreement agreement = Agreement.of(List.of(pair(left, 515, 5), pair(right, 540, 5)));
    assertThat(agreement.agrees()).isFalse();
    assertThat(agreement.explanations()).isEmpty();
  }

  /** Farther than three of its own standard uncertainties is not likely: a wrong part is. */
  @Test
  void whatIsTooFarIsNotOnTheSheet() {
    Agreement agreement = Agreement.of(List.of(pair(left, 522, 5), pair(right, 522, 5)));
    assertThat(agreement.agrees()).isFalse();
    assertThat(agreement.explanations()).isEmpty();
  }

  /** Of two values that would do, the one that need not move so far in its own terms. */
  @Test
  void theLikelierComesFirst() {
    Quantity both = sum(new double[] {1, 1}, found, lift);
    Agreement agreement = Agreement.of(List.of(pair(both, 526, 2)));
    assertThat(agreement.explanations()).extracting(Explanation::input).containsExactly(lift);
    Quantity more = input("lift of a spacer", 40, 10.4);
    Quantity near = sum(new double[] {1, 1}, input("height as found", 500, 10), more);
    assertThat(Agreement.of(List.of(pair(near, 525.4, 1))).explanations())
        .extracting(each -> each.input().name())
        .containsExactly("lift of a spacer", "height as found");
  }

  @Test
  void nothingComparedIsNoAgreement() {
    assertThat(Agreement.of(List.of()).agrees()).isFalse();
  }
}
