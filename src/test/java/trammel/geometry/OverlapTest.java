package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Reserves of a reachable set, against every setting of a fine grid. */
class OverlapTest {
  private static final int STEPS = 121;

  /** A step of the grid, and the arcs between corners of the outline (degrees). */
  private static final double TOLERANCE = 0.025;

  @Test
  void reservesAreThoseOfAFineGrid() {
    int decided = 0;
    for (int seed = 0; seed < 30; seed++) {
      RandomAdjusters random = new RandomAdjusters(500L + seed);
      AlignmentMap map = random.map(2);
      AlignmentMap.Angles about = map.at(random.settings(map.adjusters(), 1.2)).orElseThrow();
      AngleWindow camber = random.windowAbout(about.camber());
      AngleWindow caster = random.windowAbout(about.caster());
      List<AlignmentMap.Angles> all = new ArrayList<>();
      AlignmentMapTest.grid(map, STEPS, all::add);
      Overlap overlap =
          Overlap.of(map.outline(), map.best(camber, caster).orElseThrow(), camber, caster);
      double camberReserve =
          reserve(all, AlignmentMap.Angles::camber, camber, AlignmentMap.Angles::caster, caster);
      double casterReserve =
          reserve(all, AlignmentMap.Angles::caster, caster, AlignmentMap.Angles::camber, camber);
      if (!Double.isNaN(camberReserve)) {
        decided++;
        assertThat(overlap.camberReserve())
            .as("camber, seed %s", seed)
            .isCloseTo(camberReserve, within(TOLERANCE));
      }
      if (!Double.isNaN(casterReserve)) {
        decided++;
        assertThat(overlap.casterReserve())
            .as("caster, seed %s", seed)
            .isCloseTo(casterReserve, within(TOLERANCE));
      }
    }
    assertThat(decided).isGreaterThan(30);
  }

  /** The angle that decides is told, and lies as far from its edge as the reserve says. */
  @Test
  void theReserveIsThatOfTheAngleTold() {
    for (int seed = 0; seed < 30; seed++) {
      RandomAdjusters random = new RandomAdjusters(900L + seed);
      AlignmentMap map = random.map(3);
      AlignmentMap.Angles about = map.at(random.settings(map.adjusters(), 1.2)).orElseThrow();
      AngleWindow camber = random.windowAbout(about.camber());
      AngleWindow caster = random.windowAbout(about.caster());
      Overlap overlap =
          Overlap.of(map.outline(), map.best(camber, caster).orElseThrow(), camber, caster);
      double camberAt = overlap.camber().camber();
      double casterAt = overlap.caster().caster();
      assertThat(overlap.camberReserve())
          .isEqualTo(overlap.camberLow() ? camberAt - camber.from() : camber.to() - camberAt);
      assertThat(overlap.casterReserve())
          .isEqualTo(overlap.casterLow() ? casterAt - caster.from() : caster.to() - casterAt);
    }
  }

  /** Worked by hand: a square from 0 to 1 both ways. */
  @Test
  void aSquareInItsWindows() {
    List<AlignmentMap.Angles> square = List.of(at(0, 0), at(1, 0), at(1, 1), at(0, 1));
    AngleWindow camber = new AngleWindow(0.8, 1.5, 2);
    AngleWindow caster = new AngleWindow(-3, 0, 0.25);
    Overlap overlap = Overlap.of(square, at(1, 0.25), camber, caster);
    assertThat(overlap.camberReserve()).isCloseTo(0.2, within(1e-12));
    assertThat(overlap.camberLow()).isTrue();
    assertThat(overlap.casterReserve()).isCloseTo(0.25, within(1e-12));
    assertThat(overlap.casterLow()).isFalse();
  }

  /** Worked by hand: where no setting brings caster home, the best one tells of camber. */
  @Test
  void outOfReachOfOneAngleTheBestSettingTellsOfTheOther() {
    List<AlignmentMap.Angles> square = List.of(at(0, 0), at(1, 0), at(1, 1), at(0, 1));
    Overlap overlap =
        Overlap.of(square, at(0.4, 1), new AngleWindow(0, 0.4, 0.9), new AngleWindow(1.5, 2, 2.5));
    assertThat(overlap.camberReserve()).isCloseTo(0.4, within(1e-12));
    assertThat(overlap.casterReserve()).isCloseTo(-0.5, within(1e-12));
    assertThat(overlap.casterLow()).isTrue();
  }

  @Test
  void aSinglePointReachesAsFarAsItLies() {
    AlignmentMap.Angles only = at(0.3, 2);
    Overlap overlap =
        Overlap.of(List.of(only), only, new AngleWindow(0, 0.5, 1), new AngleWindow(2.5, 3, 4));
    assertThat(overlap.camberReserve()).isCloseTo(0.3, within(1e-12));
    assertThat(overlap.casterReserve()).isCloseTo(-0.5, within(1e-12));
  }

  private static AlignmentMap.Angles at(double camber, double caster) {
    return new AlignmentMap.Angles(camber, caster, List.of());
  }

  private static double reserve(
      List<AlignmentMap.Angles> all,
      ToDoubleFunction<AlignmentMap.Angles> angle,
      AngleWindow window,
      ToDoubleFunction<AlignmentMap.Angles> other,
      AngleWindow strip) {
    double greatest = Double.NEGATIVE_INFINITY;
    double least = Double.POSITIVE_INFINITY;
    for (AlignmentMap.Angles angles : all) {
      if (strip.reserve(other.applyAsDouble(angles)) >= 0) {
        greatest = Math.max(greatest, angle.applyAsDouble(angles));
        least = Math.min(least, angle.applyAsDouble(angles));
      }
    }
    return greatest < least ? Double.NaN : Math.min(greatest - window.from(), window.to() - least);
  }
}
