package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.catalog.AxleProfile;
import trammel.catalog.Linkage.MountProfile;
import trammel.catalog.SurveyPoint;
import trammel.geometry.ByPlace;
import trammel.geometry.DoubleWishbone;
import trammel.geometry.HardPoint;
import trammel.geometry.HardPoints;
import trammel.geometry.Heading;
import trammel.geometry.MotionRatio;
import trammel.geometry.Mount;
import trammel.geometry.Pose;
import trammel.geometry.WheelTravel;
import trammel.quantity.Constants;
import trammel.quantity.Input;
import trammel.quantity.Quantity;

/**
 * What comes through each value that was surveyed, against central differences of the linkage's
 * closed form in plain numbers (own derivation).
 */
class SpringSurveyTest {
  private static final double STEP = 1e-3;

  private final AxleProfile axle = DemoSheet.demo("skerrow-raised-with-spacers").vehicle().front();
  private final MountProfile mount = axle.linkage().spring();

  /** Every value surveyed, the tie rod's too: joints, mount, camber, toe, distance of the seats. */
  private List<Quantity> surveyed() {
    List<Quantity> all = new ArrayList<>();
    for (HardPoint joint : HardPoint.ofWishbones()) {
      coordinates(axle.linkage().points().get(joint), all);
    }
    coordinates(mount.body(), all);
    coordinates(mount.moving(), all);
    all.add(axle.alignment().asSurveyed().camber());
    all.add(axle.alignment().asSurveyed().toe());
    all.add(axle.support().springLength());
    return all;
  }

  private static void coordinates(SurveyPoint point, List<Quantity> all) {
    all.addAll(List.of(point.fore(), point.out(), point.up()));
  }

  /** Distance of the seats and motion ratio at a travel, where one value is another. */
  private double[] stands(List<Quantity> surveyed, int moved, double by, double travel) {
    double[] at = surveyed.stream().mapToDouble(Quantity::value).toArray();
    at[moved] += by;
    Map<HardPoint, Vector3D> points = new EnumMap<>(HardPoint.class);
    int next = 0;
    for (HardPoint joint : HardPoint.ofWishbones()) {
      points.put(joint, new Vector3D(at[next], at[next + 1], at[next + 2]));
      next += 3;
    }
    Vector3D body = new Vector3D(at[next], at[next + 1], at[next + 2]);
    Vector3D moving = new Vector3D(at[next + 3], at[next + 4], at[next + 5]);
    DoubleWishbone<Binary64> corner =
        DoubleWishbone.of(HardPoints.of(points, at[next + 6], at[next + 7]));
    Mount<Binary64> spring = Mount.of(corner, mount.on(), plain(body), plain(moving));
    Heading<Binary64> straight = new Heading.Reset<>(new Binary64(0));
    if (WheelTravel.of(corner).at(new Binary64(travel), straight) instanceof Pose<Binary64> pose) {
      return new double[] {
        at[next + 8] + spring.length(corner, pose).getReal() - moving.subtract(body).getNorm(),
        MotionRatio.of(corner, spring).at(pose, straight).getReal()
      };
    }
    throw new AssertionError("out of reach");
  }

  private static FieldVector3D<Binary64> plain(Vector3D vector) {
    return new FieldVector3D<>(Binary64Field.getInstance(), vector);
  }

  @Test
  void eachValueGoesByItsOwnName() {
    SpringTravel.Stand stand = new SpringTravel(axle).at(Constants.mm(25));
    Map<String, Input> named = new HashMap<>();
    for (Quantity operand : stand.seats().operands().get(0).operands()) {
      named.put(operand.name(), operand.input());
    }
    for (HardPoint joint : ByPlace.JOINTS) {
      named(named, joint.words(), axle.linkage().points().get(joint));
    }
    named(named, "spring on the body", mount.body());
    named(named, "spring on the arm", mount.moving());
  }

  private static void named(Map<String, Input> named, String place, SurveyPoint point) {
    assertThat(named)
        .containsEntry(place + ", fore", point.fore().input())
        .containsEntry(place + ", out", point.out().input())
        .containsEntry(place + ", up", point.up().input());
  }

  @ParameterizedTest
  @ValueSource(doubles = {-45, 0, 25})
  void eachValueBringsItsOwnShare(double travel) {
    SpringTravel.Stand stand = new SpringTravel(axle).at(Constants.mm(travel));
    List<Quantity> surveyed = surveyed();
    double[] plain = stands(surveyed, 0, 0, travel);
    assertThat(stand.seats().value()).isCloseTo(plain[0], within(1e-9));
    assertThat(stand.ratio().value()).isCloseTo(plain[1], within(1e-9));
    for (int i = 0; i < surveyed.size(); i++) {
      Quantity value = surveyed.get(i);
      double[] more = stands(surveyed, i, STEP, travel);
      double[] less = stands(surveyed, i, -STEP, travel);
      String which = "variable " + i;
      assertThat(stand.seats().contribution(value.input()))
          .as("seats, " + which)
          .isCloseTo((more[0] - less[0]) / (2 * STEP) * value.expanded(), within(2e-6));
      assertThat(stand.ratio().contribution(value.input()))
          .as("ratio, " + which)
          .isCloseTo((more[1] - less[1]) / (2 * STEP) * value.expanded(), within(2e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-45, 25})
  void anUncertainTravelBringsItsOwnToo(double travel) {
    Quantity about = DemoSheet.demo("skerrow-raised-with-spacers").vehicle().wheelbase();
    Quantity uncertain = Quantity.read("travel", about.dimension(), travel, 2, about.input());
    SpringTravel.Stand stand = new SpringTravel(axle).at(uncertain);
    List<Quantity> surveyed = surveyed();
    double[] higher = stands(surveyed, 0, 0, travel + 0.1);
    double[] lower = stands(surveyed, 0, 0, travel - 0.1);
    assertThat(stand.seats().contribution(about.input()))
        .isCloseTo((higher[0] - lower[0]) / 0.2 * 2, within(1e-5));
    assertThat(stand.ratio().contribution(about.input()))
        .isCloseTo((higher[1] - lower[1]) / 0.2 * 2, within(1e-7));
  }
}
