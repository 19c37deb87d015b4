package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What adjusters reach, on the truck of truck-wishbones.csv: against single settings worked out one
 * by one on the same linkage, whose shims and curves agree with the maker's manual and another
 * program.
 */
class AlignmentMapTest {
  /** How far arms, which are arcs, bend away from the chords of the outline (degrees). */
  private static final double CURVATURE = 0.02;

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4})
  void theOutlineEnclosesEverySetting(int count) {
    for (int seed = 0; seed < 20; seed++) {
      RandomAdjusters random = new RandomAdjusters(100L * count + seed);
      AlignmentMap map = random.map(count);
      List<Vector2D> outline = map.outline().stream().map(AlignmentMapTest::place).toList();
      assertThat(outline).hasSizeGreaterThan(2 * count);
      for (int i = 0; i < 50; i++) {
        double[] settings = random.settings(map.adjusters(), 1);
        Vector2D place = place(map.at(settings).orElseThrow());
        assertThat(outside(outline, place))
            .as("%s at %s of seed %s", map.adjusters(), settings, seed)
            .isLessThan(CURVATURE);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4})
  void everyPointOfTheOutlineIsASettingWithinTheRanges(int count) {
    for (int seed = 0; seed < 20; seed++) {
      AlignmentMap map = new RandomAdjusters(seed).map(count);
      for (AlignmentMap.Angles corner : map.outline()) {
        for (int i = 0; i < count; i++) {
          assertThat(corner.settings().get(i))
              .isBetween(map.adjusters().get(i).from(), map.adjusters().get(i).to());
        }
        double[] settings = corner.settings().stream().mapToDouble(Double::doubleValue).toArray();
        assertThat(map.at(settings)).contains(corner);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"1, 2001", "2, 81", "3, 17"})
  void noSettingOfAFineGridIsBetterThanTheBest(int count, int steps) {
    for (int seed = 0; seed < 12; seed++) {
      RandomAdjusters random = new RandomAdjusters(1000L * count + seed);
      AlignmentMap map = random.map(count);
      AlignmentMap.Angles about = map.at(random.settings(map.adjusters(), 1.3)).orElseThrow();
      AngleWindow camber = random.windowAbout(about.camber());
      AngleWindow caster = random.windowAbout(about.caster());
      double[] greatest = {Double.NEGATIVE_INFINITY};
      grid(
          map, steps, angles -> greatest[0] = Math.max(greatest[0], share(angles, camber, caster)));
      AlignmentMap.Angles best = map.best(camber, caster).orElseThrow();
      assertThat(share(best, camber, caster))
          .as("%s for %s and %s, seed %s", map.adjusters(), camber, caster, seed)
          .isGreaterThan(greatest[0] - 0.01);
    }
  }

  /** A maker may prefer an edge of his window: none of the way to it is left, on one side. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aPreferredEdgeIsWeighedLikeAnyOther(boolean low) {
    for (int seed = 0; seed < 12; seed++) {
      RandomAdjusters random = new RandomAdjusters(7000L + seed);
      AlignmentMap map = random.map(2);
      AlignmentMap.Angles about = map.at(random.settings(map.adjusters(), 1)).orElseThrow();
      AngleWindow whole = random.windowAbout(about.camber() + (low ? 0.6 : -0.6));
      AngleWindow camber =
          new AngleWindow(whole.from(), low ? whole.from() : whole.to(), whole.to());
      AngleWindow caster = random.windowAbout(about.caster());
      double[] greatest = {Double.NEGATIVE_INFINITY};
      grid(map, 81, angles -> greatest[0] = Math.max(greatest[0], share(angles, camber, caster)));
      AlignmentMap.Angles best = map.best(camber, caster).orElseThrow();
      assertThat(share(best, camber, caster))
          .as("%s for %s and %s, seed %s", map.adjusters(), camber, caster, seed)
          .isGreaterThan(greatest[0] - 0.01);
    }
  }

  @Property(tries = 60)
  void thePreferredAnglesAreHitWhereTheyAreWithinReach(
      @ForAll @IntRange(min = 2, max = 4) int count, @ForAll @IntRange(max = 100000) int seed) {
    RandomAdjusters random = new RandomAdjusters(seed);
    AlignmentMap map = random.map(count);
    AlignmentMap.Angles wanted = map.at(random.settings(map.adjusters(), 0.7)).orElseThrow();
    AlignmentMap.Angles best =
        map.best(
                new AngleWindow(wanted.camber() - 0.75, wanted.camber(), wanted.camber() + 0.5),
                new AngleWindow(wanted.caster() - 0.5, wanted.caster(), wanted.caster() + 0.75))
            .orElseThrow();
    assertThat(best.camber()).isCloseTo(wanted.camber(), within(1e-3));
    assertThat(best.caster()).isCloseTo(wanted.caster(), within(1e-3));
  }

  /** Four adjusters reach the same angles in many ways, which once made the search leap about. */
  @Example
  void thePreferredAnglesAreHitWhereManySettingsGiveThem() {
    thePreferredAnglesAreHitWhereTheyAreWithinReach(4, 2385);
  }

  /**
   * An eccentric's shift is e · sin θ: over its half turn it passes once through every angle
   * between those of both ends, the surveyed one among them.
   */
  @Property(tries = 60)
  void anEccentricBracketsTheAngleItSetsOverItsHalfTurn(
      @ForAll boolean upper,
      @ForAll boolean front,
      @ForAll boolean camber,
      @ForAll @DoubleRange(min = 1, max = 8) double eccentricity,
      @ForAll @DoubleRange(min = -50, max = 20) double travel,
      @ForAll @DoubleRange(min = -80, max = 80) double turned) {
    HardPoint one = upper ? HardPoint.UPPER_FRONT_PIVOT : HardPoint.LOWER_FRONT_PIVOT;
    HardPoint other = upper ? HardPoint.UPPER_REAR_PIVOT : HardPoint.LOWER_REAR_PIVOT;
    // Both pivots of an arm alike set camber; opposite ways they set caster.
    Vector3D second = camber ? Vector3D.PLUS_J : Vector3D.MINUS_J;
    AlignmentMap map =
        new AlignmentMap(
            RandomAdjusters.points(front ? "front" : "rear"),
            Map.of(),
            List.of(
                new AdjusterRange(
                    Map.of(one, Vector3D.PLUS_J, other, second), -eccentricity, eccentricity)),
            travel,
            0);
    List<Double> angles = new ArrayList<>();
    for (int turn = -90; turn <= 90; turn += 10) {
      AlignmentMap.Angles at = map.at(eccentricity * Math.sin(Math.toRadians(turn))).orElseThrow();
      angles.add(camber ? at.camber() : at.caster());
    }
    double sense = Math.signum(angles.get(angles.size() - 1) - angles.get(0));
    for (int i = 1; i < angles.size(); i++) {
      assertThat(sense * (angles.get(i) - angles.get(i - 1))).isPositive();
    }
    double setting = eccentricity * Math.sin(Math.toRadians(turned));
    AlignmentMap.Angles wanted = map.at(setting).orElseThrow();
    AlignmentMap.Angles best =
        map.best(
                new AngleWindow(wanted.camber() - 1, wanted.camber(), wanted.camber() + 1),
                new AngleWindow(wanted.caster() - 1, wanted.caster(), wanted.caster() + 1))
            .orElseThrow();
    assertThat(best.settings().get(0)).isCloseTo(setting, within(0.01));
  }

  /** Upper pivots outboard lean the top out; the lower ones lean it in: definition of camber. */
  @Test
  void pivotsOutboardLeanTheWheelAsTheTradeTurnsThem() {
    for (boolean upper : new boolean[] {true, false}) {
      AlignmentMap map =
          new AlignmentMap(
              RandomAdjusters.points("front"),
              Map.of(),
              List.of(
                  new AdjusterRange(
                      Map.of(
                          upper ? HardPoint.UPPER_FRONT_PIVOT : HardPoint.LOWER_FRONT_PIVOT,
                          Vector3D.PLUS_J,
                          upper ? HardPoint.UPPER_REAR_PIVOT : HardPoint.LOWER_REAR_PIVOT,
                          Vector3D.PLUS_J),
                      -4,
                      4)),
              0,
              0);
      double change = map.at(4).orElseThrow().camber() - map.at(-4).orElseThrow().camber();
      assertThat(change * (upper ? 1 : -1)).isBetween(1.0, 2.5);
    }
  }

  @Test
  void withoutAdjustersThereIsOnePoint() {
    AlignmentMap map =
        new AlignmentMap(RandomAdjusters.points("front"), Map.of(), List.of(), -30, 0);
    AlignmentMap.Angles only = map.at().orElseThrow();
    assertThat(map.outline()).containsExactly(only);
    assertThat(map.best(new AngleWindow(5, 5.5, 6), new AngleWindow(-6, -5.5, -5)).orElseThrow())
        .isEqualTo(only);
  }

  @Test
  void whatIsOutOfReachHasNeitherOutlineNorBest() {
    AlignmentMap map = new RandomAdjusters(1).map(2);
    AlignmentMap far =
        new AlignmentMap(RandomAdjusters.points("front"), Map.of(), map.adjusters(), -2000, 0);
    assertThat(far.at(0, 0)).isEmpty();
    assertThat(far.outline()).isEmpty();
    assertThat(far.best(new AngleWindow(-1, 0, 1), new AngleWindow(2, 3, 4))).isEmpty();
  }

  /** A stuck adjuster has a range without width: it changes nothing. */
  @Test
  void anAdjusterWithoutRangeAddsNothing() {
    RandomAdjusters random = new RandomAdjusters(7);
    AdjusterRange free = random.adjusters(1).get(0);
    AdjusterRange stuck =
        new AdjusterRange(Map.of(HardPoint.UPPER_BALL_JOINT, Vector3D.PLUS_J), 0, 0);
    AlignmentMap one = new AlignmentMap(random.points, Map.of(), List.of(free), -20, 0);
    AlignmentMap both = new AlignmentMap(random.points, Map.of(), List.of(free, stuck), -20, 0);
    List<Vector2D> line = one.outline().stream().map(AlignmentMapTest::place).toList();
    for (AlignmentMap.Angles angles : both.outline()) {
      assertThat(outside(line, place(angles))).isLessThan(1e-9);
    }
    assertThat(both.outline().stream().map(AlignmentMapTest::place)).containsAll(line);
  }

  static Vector2D place(AlignmentMap.Angles angles) {
    return new Vector2D(angles.camber(), angles.caster());
  }

  static double share(AlignmentMap.Angles angles, AngleWindow camber, AngleWindow caster) {
    return Math.min(camber.share(angles.camber()), caster.share(angles.caster()));
  }

  /** Every setting of a grid over all ranges. */
  static void grid(AlignmentMap map, int steps, Consumer<AlignmentMap.Angles> each) {
    int count = map.adjusters().size();
    double[] settings = new double[count];
    for (int number = 0; number < Math.pow(steps, count); number++) {
      int left = number;
      for (int i = 0; i < count; i++) {
        AdjusterRange range = map.adjusters().get(i);
        settings[i] = range.from() + (range.to() - range.from()) * (left % steps) / (steps - 1.0);
        left /= steps;
      }
      each.accept(map.at(settings.clone()).orElseThrow());
    }
  }

  /** How far a place lies outside a closed line (degrees); 0 inside, by its winding number. */
  private static double outside(List<Vector2D> outline, Vector2D place) {
    double winding = 0;
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < outline.size(); i++) {
      Vector2D from = outline.get(i);
      Vector2D along = outline.get((i + 1) % outline.size()).subtract(from);
      double length = along.getNormSq();
      double share = length == 0 ? 0 : along.dotProduct(place.subtract(from)) / length;
      Vector2D foot = from.add(Math.max(0, Math.min(1, share)), along);
      nearest = Math.min(nearest, foot.distance(place));
      Vector2D one = from.subtract(place);
      Vector2D two = one.add(along);
      winding += Math.atan2(one.getX() * two.getY() - one.getY() * two.getX(), one.dotProduct(two));
    }
    return Math.abs(winding) > Math.PI ? 0 : nearest;
  }
}
