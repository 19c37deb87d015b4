package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trammel.geometry.Plain.change;
import static trammel.geometry.Plain.number;
import static trammel.geometry.Plain.point;
import static trammel.geometry.Plain.unchanged;

import java.util.Arrays;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;

class SideViewLinksTest {
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  /** Numbers of one four-link: lower frame and axle end, upper likewise, wheel center: fore, up. */
  private static double[] randomLinks(Random random) {
    double way = random.nextBoolean() ? 1 : -1;
    double lowerUp = between(random, 280, 380);
    double upperUp = lowerUp + between(random, 150, 260);
    return new double[] {
      way * between(random, 500, 1000),
      lowerUp + between(random, -20, 120),
      way * between(random, -80, 30),
      lowerUp,
      way * between(random, 400, 800),
      upperUp + between(random, -40, 60),
      way * between(random, -100, 60),
      upperUp,
      between(random, -5, 5),
      between(random, 370, 420)
    };
  }

  private static double between(Random random, double least, double most) {
    return least + (most - least) * random.nextDouble();
  }

  private static SideViewLinks<Binary64> links(double[] v) {
    return new SideViewLinks<>(
        new SideViewLinks.Link<>(point(v[0], 300, v[1]), point(v[2], 450, v[3])),
        new SideViewLinks.Link<>(point(v[4], 250, v[5]), point(v[6], 200, v[7])),
        point(v[8], 800, v[9]));
  }

  /** The least-squares solver knows nothing of the closed form: three unknowns, three residuals. */
  @Test
  void twoHundredAxlesStandWhereLeastSquaresPutsThem() {
    Random random = new Random(20);
    for (int i = 0; i < 200; i++) {
      double[] v = randomLinks(random);
      double lift = between(random, -100, 120);
      double[] lower = {
        between(random, -10, 15), between(random, -60, 20), between(random, -5, 40)
      };
      double[] upper = {
        between(random, -10, 15), between(random, -20, 20), between(random, -20, 20)
      };
      AxlePose<Binary64> pose =
          links(v)
              .at(
                  number(lift),
                  change(lower[0], lower[1], lower[2]),
                  change(upper[0], upper[1], upper[2]))
              .orElseThrow();
      double[] expected = LeastSquaresAxle.pose(v, lift, lower, upper);
      assertThat(pose.foreShift().getReal())
          .as("axle %d", i)
          .isCloseTo(expected[0] - v[8], Offset.offset(1e-6));
      assertThat(pose.frontUp().getReal())
          .as("axle %d", i)
          .isCloseTo(Math.toDegrees(expected[2]), Offset.offset(1e-7));
    }
  }

  @Test
  void noLiftMovesNothing() {
    Random random = new Random(21);
    for (int i = 0; i < 100; i++) {
      AxlePose<Binary64> pose = links(randomLinks(random)).at(number(0)).orElseThrow();
      assertThat(pose.foreShift().getReal()).isCloseTo(0, EXACT);
      assertThat(pose.frontUp().getReal()).isCloseTo(0, EXACT);
    }
  }

  /** Links of equal length and direction make a parallelogram, in which the axle cannot turn. */
  @Test
  void aParallelogramDoesNotTurnAndSwingsLikeOneLink() {
    SideViewLinks<Binary64> links =
        links(new double[] {700, 400, 0, 400, 680, 600, -20, 600, 0, 390});
    AxlePose<Binary64> pose = links.at(number(50)).orElseThrow();
    assertThat(pose.frontUp().getReal()).isCloseTo(0, EXACT);
    assertThat(pose.foreShift().getReal()).isCloseTo(700 - Math.sqrt(700 * 700 - 50 * 50), EXACT);
  }

  /** Own sense check: a longer upper link, ahead of a rear axle, tips the top back: front up. */
  @Test
  void aLongerUpperLinkTurnsTheFrontOfARearAxleUp() {
    SideViewLinks<Binary64> links =
        links(new double[] {700, 400, 0, 400, 680, 600, -20, 600, 0, 390});
    AxlePose<Binary64> pose = links.at(number(0), unchanged(), change(8, 0, 0)).orElseThrow();
    assertThat(pose.frontUp().getReal()).isCloseTo(Math.toDegrees(8 / 200.0), Offset.offset(0.05));
    assertThat(pose.pinionNoseUp(Facing.FORWARD)).isEqualTo(pose.frontUp());
    assertThat(pose.pinionNoseUp(Facing.REARWARD)).isEqualTo(pose.frontUp().negate());
    assertThat(pose.casterChange().getReal()).isPositive();
  }

  /** Brackets that drop both frame ends by the lift put the axle back as it was. */
  @Test
  void frameEndsDroppedByTheLiftRestoreThePose() {
    Random random = new Random(22);
    for (int i = 0; i < 50; i++) {
      double lift = between(random, -80, 120);
      AxlePose<Binary64> pose =
          links(randomLinks(random))
              .at(number(lift), change(0, -lift, 0), change(0, -lift, 0))
              .orElseThrow();
      assertThat(pose.foreShift().getReal()).isCloseTo(0, EXACT);
      assertThat(pose.frontUp().getReal()).isCloseTo(0, EXACT);
    }
  }

  @Test
  void whatTheLinksDoNotReachIsEmpty() {
    SideViewLinks<Binary64> links =
        links(new double[] {300, 400, 0, 400, 280, 600, -20, 600, 0, 390});
    assertThat(links.at(number(299))).isPresent();
    assertThat(links.at(number(301))).isEmpty();
    assertThat(links.at(number(0), unchanged(), change(-250, 0, 0))).isEmpty();
  }

  @Test
  void linksThatHoldNothingAreRefused() {
    assertThatThrownBy(() -> links(new double[] {700, 400, 0, 400, 700, 600, 0, 400, 0, 390}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("do not hold the axle from turning");
  }

  @Test
  void derivativesAreThoseOfTheValues() {
    Random random = new Random(23);
    for (int i = 0; i < 20; i++) {
      double[] at = Arrays.copyOf(randomLinks(random), 17);
      at[10] = between(random, -100, 120);
      for (int j = 11; j < at.length; j++) {
        at[j] = between(random, -10, 15);
      }
      Slopes.agree(v -> pose(v).foreShift(), at);
      Slopes.agree(v -> pose(v).frontUp(), at);
    }
  }

  private static AxlePose<Gradient> pose(Gradient[] v) {
    return new SideViewLinks<>(
            new SideViewLinks.Link<>(flat(v[0], v[1]), flat(v[2], v[3])),
            new SideViewLinks.Link<>(flat(v[4], v[5]), flat(v[6], v[7])),
            flat(v[8], v[9]))
        .at(v[10], new LinkChange<>(v[11], v[12], v[13]), new LinkChange<>(v[14], v[15], v[16]))
        .orElseThrow();
  }

  private static FieldVector3D<Gradient> flat(Gradient fore, Gradient up) {
    return new FieldVector3D<>(fore, fore.getField().getZero(), up);
  }
}
