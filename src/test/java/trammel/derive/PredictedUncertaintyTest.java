package trammel.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static trammel.derive.DemoSheet.DAY;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.build.Build;
import trammel.catalog.AxleProfile;
import trammel.catalog.PartKind;
import trammel.catalog.SurveyPoint;
import trammel.catalog.SuspensionPart.UpperArm;
import trammel.geometry.AdjusterRange;
import trammel.geometry.DoubleWishbone;
import trammel.geometry.HardPoint;
import trammel.geometry.HardPoints;
import trammel.geometry.Heading;
import trammel.geometry.Pose;
import trammel.geometry.WheelTravel;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;

/**
 * Uncertainty of predicted camber and caster by derivatives, against draws of every input from its
 * normal distribution (k = 2), each draw worked out anew in plain numbers.
 */
class PredictedUncertaintyTest {
  private static final int DRAWS = 2000;

  @TempDir private Path folder;
  private final Random random = new Random(20261125);

  private double draw(Quantity quantity) {
    return quantity.value() + random.nextGaussian() * quantity.expanded() / 2;
  }

  private Vector3D draw(SurveyPoint point) {
    return new Vector3D(draw(point.fore()), draw(point.out()), draw(point.up()));
  }

  private static FieldVector3D<Binary64> plain(Vector3D vector) {
    return new FieldVector3D<>(Binary64Field.getInstance(), vector);
  }

  private static Pose<Binary64> pose(DoubleWishbone<Binary64> linkage, double travel, double toe) {
    if (WheelTravel.of(linkage).at(new Binary64(travel), new Heading.Reset<>(new Binary64(toe)))
        instanceof Pose<Binary64> pose) {
      return pose;
    }
    throw new AssertionError("out of reach at " + travel);
  }

  @ParameterizedTest
  @CsvSource({
    "'  - { raise: 30 mm ± 4 mm, at: front }'",
    "'  - { raise: 15 mm ± 0.5 mm, at: front }'",
    "'  - { raise: 55 mm ± 4 mm, at: front }\n  - { add: LB-UA-SK-S, at: front }'"
  })
  void derivativesAgreeWithDraws(String changes) throws IOException {
    Build build =
        DemoSheet.of(
            folder,
            "skerrow",
            "as-found:\n  adjusters: { front: free }\nchanges:\n" + changes + "\n");
    AxleProfile profile = build.vehicle().axle(Axle.FRONT);
    Derivation derivation = new Derivation(build, DAY);
    Corners.Surveyed corner = derivation.corners(Axle.FRONT).solve(Position.FRONT_LEFT);
    SurveyedAlignment.Solved solved = corner.solved().orElseThrow();
    WheelAlignment predicted = corner.alignment().quantities(solved);
    Quantity lift = new HeightFacts(derivation).lift(Position.FRONT_LEFT);
    var shown = profile.alignment().asSurveyed();
    List<Double> camber = new ArrayList<>();
    List<Double> caster = new ArrayList<>();
    List<Double> camberChange = new ArrayList<>();
    List<Double> casterChange = new ArrayList<>();
    for (int i = 0; i < DRAWS; i++) {
      Map<HardPoint, Vector3D> points = new EnumMap<>(HardPoint.class);
      profile.linkage().points().forEach((name, point) -> points.put(name, draw(point)));
      double surveyedCamber = draw(shown.camber());
      HardPoints<Binary64> drawn = HardPoints.of(points, surveyedCamber, draw(shown.toe()));
      DoubleWishbone<Binary64> after = DoubleWishbone.of(drawn, shifts(build, corner, solved));
      Pose<Binary64> was = pose(DoubleWishbone.of(drawn), 0, shown.toe().value());
      Pose<Binary64> is = pose(after, -draw(lift), corner.alignment().toe());
      camberChange.add(is.camber().getReal() - was.camber().getReal());
      casterChange.add(is.caster().getReal() - was.caster().getReal());
      camber.add(surveyedCamber + camberChange.get(i));
      caster.add(draw(shown.caster()) + casterChange.get(i));
    }
    assertThat(predicted.camber().expanded())
        .isCloseTo(2 * deviation(camber), withinPercentage(10));
    assertThat(predicted.caster().expanded())
        .isCloseTo(2 * deviation(caster), withinPercentage(10));
    // What the rack showed outweighs the rest: what the linkage adds is held by itself, too.
    assertThat(predicted.camber().operands().get(1).expanded())
        .isCloseTo(2 * deviation(camberChange), withinPercentage(10));
    assertThat(predicted.caster().operands().get(1).expanded())
        .isCloseTo(2 * deviation(casterChange), withinPercentage(10));
    assertThat(predicted.camber().value()).isCloseTo(mean(camber), within(0.05));
    assertThat(predicted.caster().value()).isCloseTo(mean(caster), within(0.05));
  }

  /** Toe with nothing turned: the tie rod keeps the length that it had on the rack. */
  @Test
  void soDoesToeByBumpSteer() throws IOException {
    Build build =
        DemoSheet.of(folder, "skerrow", "changes:\n  - { raise: 30 mm ± 4 mm, at: front }\n");
    AxleProfile profile = build.vehicle().axle(Axle.FRONT);
    Derivation derivation = new Derivation(build, DAY);
    Quantity lift = new HeightFacts(derivation).lift(Position.FRONT_LEFT);
    Quantity predicted =
        derivation.corners(Axle.FRONT).untouchedToe(Position.FRONT_LEFT).orElseThrow();
    var shown = profile.alignment().asSurveyed();
    List<Double> toe = new ArrayList<>();
    List<Double> change = new ArrayList<>();
    for (int i = 0; i < DRAWS; i++) {
      Map<HardPoint, Vector3D> points = new EnumMap<>(HardPoint.class);
      profile.linkage().points().forEach((name, point) -> points.put(name, draw(point)));
      double surveyedToe = draw(shown.toe());
      DoubleWishbone<Binary64> linkage =
          DoubleWishbone.of(HardPoints.of(points, draw(shown.camber()), surveyedToe));
      if (WheelTravel.of(linkage)
              .at(new Binary64(-draw(lift)), new Heading.ByTieRod<>(linkage.tieRodInner()))
          instanceof Pose<Binary64> pose) {
        toe.add(pose.toe().getReal());
        change.add(pose.toe().getReal() - surveyedToe);
      }
    }
    assertThat(toe).hasSize(DRAWS);
    assertThat(predicted.expanded()).isCloseTo(2 * deviation(toe), withinPercentage(10));
    assertThat(predicted.operands().get(1).expanded())
        .isCloseTo(2 * deviation(change), withinPercentage(10));
    assertThat(predicted.value()).isCloseTo(mean(toe), within(0.05));
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  private static double deviation(List<Double> values) {
    double mean = mean(values);
    double squares = values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
    return Math.sqrt(squares / (values.size() - 1));
  }

  /** The arm's shift and the adjusters' at the best setting, each as uncertain as its source. */
  private Map<HardPoint, FieldVector3D<Binary64>> shifts(
      Build build, Corners.Surveyed corner, SurveyedAlignment.Solved solved) {
    Map<HardPoint, FieldVector3D<Binary64>> shifts = new EnumMap<>(HardPoint.class);
    if (build.changes(Position.FRONT_LEFT, PartKind.UPPER_ARM)) {
      UpperArm arm =
          build.after(Position.FRONT_LEFT).one(PartKind.UPPER_ARM, UpperArm.class).orElseThrow();
      var shift = java.util.Objects.requireNonNull(arm.ballJoint());
      shifts.put(
          HardPoint.UPPER_BALL_JOINT,
          plain(new Vector3D(draw(shift.fore()), draw(shift.out()), draw(shift.up()))));
    }
    List<AdjusterRange> ranges = corner.model().ranges();
    for (int i = 0; i < ranges.size(); i++) {
      Quantity eccentricity = corner.model().adjusters().get(i).eccentricity();
      double setting = solved.best().settings().get(i) * draw(eccentricity) / eccentricity.value();
      ranges
          .get(i)
          .perMillimeter()
          .forEach((point, way) -> shifts.put(point, plain(way.scalarMultiply(setting))));
    }
    return shifts;
  }
}
