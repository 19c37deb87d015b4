package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.junit.jupiter.api.Test;

/** What a strut corner has of its own. */
class StrutTest {
  private static final double STEP = 0.01;

  private static FieldVector3D<Binary64> point(double fore, double out, double up) {
    return RandomLinkage.in(new Vector3D(fore, out, up));
  }

  private static Pose<Binary64> at(Corner<Binary64> corner, double travel) {
    Heading<Binary64> straight = new Heading.Reset<>(new Binary64(0));
    if (WheelTravel.of(corner).at(new Binary64(travel), straight) instanceof Pose<Binary64> pose) {
      return pose;
    }
    throw new AssertionError("out of reach at " + travel);
  }

  /**
   * Where everything moves in one transverse plane, the roll center of the construction is that of
   * the contact's motion (own derivation): the contact moves square to its line to the instant
   * center.
   */
  @Test
  void inOnePlaneTheConstructionIsTheMotionOfTheContact() {
    Strut<Binary64> corner =
        Strut.of(
            HardPoints.of(
                Map.of(
                    HardPoint.LOWER_FRONT_PIVOT, new Vector3D(150, 360, 290),
                    HardPoint.LOWER_REAR_PIVOT, new Vector3D(-150, 360, 290),
                    HardPoint.LOWER_BALL_JOINT, new Vector3D(0, 720, 260),
                    HardPoint.STRUT_TOP, new Vector3D(0, 580, 880),
                    HardPoint.STRUT_FOOT, new Vector3D(0, 650, 430),
                    HardPoint.TIE_ROD_INNER, new Vector3D(-150, 380, 330),
                    HardPoint.TIE_ROD_OUTER, new Vector3D(-150, 690, 320),
                    HardPoint.WHEEL_CENTER, new Vector3D(0, 780, 340)),
                -0.5,
                0));
    Binary64 radius = new Binary64(330);
    for (double travel : new double[] {-60, -20, 0, 40}) {
      Pose<Binary64> pose = at(corner, travel);
      FieldVector3D<Binary64> contact = pose.contact(radius);
      FieldVector3D<Binary64> motion =
          at(corner, travel + STEP)
              .contact(radius)
              .subtract(at(corner, travel - STEP).contact(radius));
      double perRise = motion.getY().getReal() / motion.getZ().getReal();
      assertThat(FrontView.of(corner, pose, radius).rollCenter().getReal())
          .isCloseTo(contact.getZ().getReal() + contact.getY().getReal() * perRise, within(1e-4));
    }
  }

  /** A camber plate: the top moves on the body, and derivatives by its place are the slopes. */
  @Test
  void aTopFartherInLeansTheWheelIn() {
    Random random = new Random(20261128);
    for (int i = 0; i < 50; i++) {
      HardPoints<Binary64> points = RandomLinkage.strut(random);
      double less = at(Strut.of(points, top(point(0, -STEP, 0))), 0).camber().getReal();
      double more = at(Strut.of(points, top(point(0, STEP, 0))), 0).camber().getReal();
      assertThat(less).isLessThan(more);
      Gradient none = Gradient.constant(1, 0);
      Strut<Gradient> moving =
          Strut.of(
              points.in(
                  point -> Corner.point(point, number -> Gradient.constant(1, number.getReal())),
                  number -> Gradient.constant(1, number.getReal())),
              Map.of(
                  HardPoint.STRUT_TOP,
                  new FieldVector3D<>(none, Gradient.variable(1, 0, 0), none)));
      Posed<Gradient> posed =
          WheelTravel.of(moving, Strut.of(points)).at(none, new Heading.Reset<>(none));
      assertThat(posed).isInstanceOf(Pose.class);
      assertThat(((Pose<Gradient>) posed).camber().getPartialDerivative(0))
          .isCloseTo((more - less) / (2 * STEP), within(1e-7));
    }
  }

  @Test
  void pointsThatMakeNoStrutAreRefused() {
    HardPoints<Binary64> points = RandomLinkage.strut(new Random(2));
    assertThatThrownBy(
            () ->
                Strut.of(
                    withStrut(
                        points, points.at(HardPoint.STRUT_TOP), points.at(HardPoint.STRUT_TOP))))
        .isInstanceOf(OutOfReachException.class)
        .hasMessage("the strut's foot lies at its top");
    FieldVector3D<Binary64> low = points.at(HardPoint.LOWER_BALL_JOINT).add(point(0, -50, 10));
    assertThatThrownBy(() -> Strut.of(withStrut(points, low, points.at(HardPoint.STRUT_FOOT))))
        .isInstanceOf(OutOfReachException.class)
        .hasMessageContaining("the steering axis lies down: the strut's top");
  }

  private static HardPoints<Binary64> withStrut(
      HardPoints<Binary64> points, FieldVector3D<Binary64> top, FieldVector3D<Binary64> foot) {
    return points
        .moved(HardPoint.STRUT_TOP, top.subtract(points.at(HardPoint.STRUT_TOP)))
        .moved(HardPoint.STRUT_FOOT, foot.subtract(points.at(HardPoint.STRUT_FOOT)));
  }

  private static Map<HardPoint, FieldVector3D<Binary64>> top(FieldVector3D<Binary64> shift) {
    return Map.of(HardPoint.STRUT_TOP, shift);
  }
}
