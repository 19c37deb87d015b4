package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;

/** Wherever a search starts, it comes to the pose that one from the surveyed pose comes to. */
class WheelTravelTest {
  private static final double CLOSE = 1e-8;

  @Test
  void aSearchFromNearbyFindsTheSamePose() {
    Random random = new Random(20261127);
    int reached = 0;
    for (int i = 0; i < 1000; i++) {
      DoubleWishbone<Binary64> linkage = DoubleWishbone.of(RandomLinkage.wishbones(random));
      WheelTravel<Binary64> travel = WheelTravel.of(linkage);
      Binary64 rise = new Binary64(RandomLinkage.between(random, -80, 80));
      Heading<Binary64> heading = new Heading.ByTieRod<>(linkage.tieRodInner());
      double turn = RandomLinkage.between(random, -0.05, 0.05);
      double off = RandomLinkage.between(random, 0.9, 1.1);
      if (!(travel.at(rise, heading) instanceof Pose<Binary64> plain)
          || !(travel.at(rise.add(1), heading) instanceof Pose<Binary64> higher)) {
        continue;
      }
      double angle = plain.lowerAngle().getReal();
      double slope = 1 / (higher.lowerAngle().getReal() - angle);
      for (WheelTravel<Binary64> near :
          List.of(
              travel.near(angle),
              travel.near(angle + turn),
              travel.near(angle + turn, slope * off),
              travel.near(angle, slope))) {
        Posed<Binary64> found = near.at(rise, heading);
        assertThat(found).as("geometry %s, rise %s", i, rise).isInstanceOf(Pose.class);
        Pose<Binary64> pose = (Pose<Binary64>) found;
        assertThat(pose.wheelCenter().toVector3D().distance(plain.wheelCenter().toVector3D()))
            .as("geometry %s, rise %s", i, rise)
            .isLessThan(CLOSE);
        assertThat(pose.spindle().toVector3D().distance(plain.spindle().toVector3D()))
            .isLessThan(CLOSE);
      }
      reached++;
    }
    assertThat(reached).isGreaterThan(900);
  }
}
