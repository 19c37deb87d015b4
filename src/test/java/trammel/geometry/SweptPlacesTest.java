package trammel.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.assertj.core.data.Offset;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is known of the places a steered tire meets: the worked numbers of the notes on suspension
 * geometry, section 7 (own derivation there, and its brute-force sweep), and common practice.
 */
class SweptPlacesTest {
  private static final TireSolid WORKED = new TireSolid(407.5, 275, 40);
  private static final TireSolid BIGGER = new TireSolid(419, 285, 40);
  private static final SweepRange LOCKS = new SweepRange(0, 0, -36, 36);

  /** The worked corner: 17.9 mm of scrub at the ground, 97.7 mm at the hub. */
  private static final SimpleCorner INCLINED =
      new SimpleCorner(1, Math.toDegrees(Math.atan2(97.7 - 17.9, 390)), 3, 17.9, 390, 400);

  /** The tire moved out along its spindle. */
  private static Stances outboard(Stances corner, double out) {
    return (travel, steer) ->
        corner
            .at(travel, steer)
            .map(
                stance ->
                    new Stance(
                        stance.center().add(out, stance.axis()),
                        stance.axis(),
                        stance.knuckle(),
                        stance.arm()));
  }

  private static ClosestApproach swept(
      TireSolid tire, Stances corner, SweepRange range, Obstacle.Shape shape) {
    Obstacle obstacle = new Obstacle(shape, Obstacle.FixedTo.BODY);
    return SteeringSweep.sweep(tire, corner, range, List.of(obstacle)).approaches().get(0);
  }

  /** A wall across the vehicle, its face so far behind the wheel's center. */
  private static Obstacle.Box wall(double behind) {
    return new Obstacle.Box(
        new Vector3D(-behind - 1, 0, 0),
        Vector3D.PLUS_I,
        new Vector3D(0, 900, 0),
        new Vector3D(0, 0, 900));
  }

  /** About an upright axis the reach itself is that of the closed form. */
  @ParameterizedTest
  @CsvSource({
    "false, 97.7, 456.1",
    "false, 122.7, 468.4",
    "true, 97.7, 468.6",
    "true, 122.7, 480.9"
  })
  void reachIsTheWorkedOne(boolean bigger, double lever, double reach) {
    SimpleCorner upright = new SimpleCorner(1, 0, 0, lever, 390, 400);
    ClosestApproach found = swept(bigger ? BIGGER : WORKED, upright, LOCKS, wall(600));
    assertThat(600 - found.gap()).isCloseTo(reach, Offset.offset(0.05));
    assertThat(found.surface()).isEqualTo(TireSurface.OUTER_SHOULDER);
    // Common practice: the body mount is met at 25 to 35 degrees toward the wheel's own side.
    assertThat(found.steer()).isBetween(25.0, 35.0);
  }

  /** About the inclined axis only the changes are worked ones. */
  @ParameterizedTest
  @CsvSource({"false, 25, 12.35", "true, 0, 12.50", "true, 25, 24.78"})
  void changesAboutTheInclinedAxisAreTheWorkedOnes(boolean bigger, double out, double taken) {
    Obstacle.Shape wall = wall(600);
    double before = swept(WORKED, INCLINED, LOCKS, wall).gap();
    double after = swept(bigger ? BIGGER : WORKED, outboard(INCLINED, out), LOCKS, wall).gap();
    assertThat(before - after).isCloseTo(taken, Offset.offset(0.1));
  }

  /** What the tread meets ahead depends on the radius alone: 12.66 became 1.16 there. */
  @Test
  void theLinerAheadIsMetByTheTread() {
    Obstacle.Point liner = new Obstacle.Point(new Vector3D(435, -230, 0));
    ClosestApproach found = swept(WORKED, INCLINED, LOCKS, liner);
    assertThat(found.surface()).isEqualTo(TireSurface.CROWN);
    assertThat(found.steer()).isEqualTo(-36);
    assertThat(found.gap() - swept(BIGGER, INCLINED, LOCKS, liner).gap())
        .isCloseTo(12.66 - 1.16, Offset.offset(0.01));
    assertThat(swept(WORKED, outboard(INCLINED, 25), LOCKS, liner).gap())
        .isCloseTo(found.gap(), Offset.offset(1e-6));
  }

  private static final Obstacle.Box MOUNT =
      new Obstacle.Box(
          new Vector3D(-510, -70, 110),
          new Vector3D(30, 0, 0),
          new Vector3D(0, 40, 0),
          new Vector3D(0, 0, 40));

  /** Signs only: 11.76 to −0.60 at the mount, 12.93 to 37.93 at the rail, 11.76 to 1.57 in bump. */
  @Test
  void anOutboardWheelLosesAtTheMountAndGainsAtTheRailAndBumpLoses() {
    Obstacle.Segment rail =
        new Obstacle.Segment(new Vector3D(-500, -420, 0), new Vector3D(500, -420, 0));
    Stances out = outboard(INCLINED, 25);
    double mount = swept(WORKED, INCLINED, LOCKS, MOUNT).gap();
    assertThat(swept(WORKED, out, LOCKS, MOUNT).gap()).isBetween(mount - 25, mount - 5);
    double before = swept(WORKED, INCLINED, LOCKS, rail).gap();
    assertThat(swept(WORKED, out, LOCKS, rail).gap()).isBetween(before + 5, before + 25);
    SweepRange bump = new SweepRange(0, 60, -36, 36);
    assertThat(swept(WORKED, INCLINED, bump, MOUNT).gap()).isLessThan(mount - 1);
    Obstacle.Segment lip =
        new Obstacle.Segment(new Vector3D(-200, 150, 460), new Vector3D(200, 150, 460));
    ClosestApproach arch = swept(WORKED, INCLINED, bump, lip);
    assertThat(arch.travel()).isEqualTo(60);
    assertThat(arch.gap()).isLessThan(swept(WORKED, INCLINED, LOCKS, lip).gap() - 30);
  }

  /** Common practice: a left wheel meets the mount behind it at left lock, a right one at right. */
  @ParameterizedTest
  @CsvSource({"1", "-1"})
  void theMountBehindIsMetAtTheWheelsOwnLock(int side) {
    SimpleCorner corner = new SimpleCorner(side, 11.6, 3, 17.9, 390, 400);
    SweepRange range = new SweepRange(-80, 70, -36, 36);
    Obstacle.Shape mount = side == 1 ? MOUNT : mirrored(MOUNT);
    ClosestApproach found = swept(WORKED, corner, range, mount);
    assertThat(side * found.steer()).isBetween(15.0, 36.0);
    assertThat(found.surface()).isEqualTo(TireSurface.OUTER_SHOULDER);
  }

  private static Vector3D mirrored(Vector3D at) {
    return new Vector3D(at.getX(), -at.getY(), at.getZ());
  }

  private static Obstacle.Shape mirrored(Obstacle.Shape shape) {
    if (shape instanceof Obstacle.Segment segment) {
      return new Obstacle.Segment(mirrored(segment.from()), mirrored(segment.to()));
    }
    if (shape instanceof Obstacle.Box box) {
      return new Obstacle.Box(
          mirrored(box.middle()),
          mirrored(box.halfLength()),
          mirrored(box.halfWidth()),
          mirrored(box.halfHeight()));
    }
    if (shape instanceof Obstacle.Disc disc) {
      return new Obstacle.Disc(mirrored(disc.middle()), mirrored(disc.normal()), disc.radius());
    }
    return new Obstacle.Point(mirrored(shape.middle()));
  }

  @Property(tries = 400)
  void aMirroredCornerMirrors(@ForAll @LongRange(min = 0) long seed) {
    RandomCorner random = new RandomCorner(seed);
    SimpleCorner one = random.corner;
    SimpleCorner other =
        new SimpleCorner(
            -one.side(), one.kingpin(), one.caster(), one.scrub(), one.loadedRadius(), one.arm());
    Obstacle obstacle = random.obstacle((int) (seed % 4));
    Obstacle across = new Obstacle(mirrored(obstacle.shape()), obstacle.fixedTo());
    ClosestApproach here =
        SteeringSweep.sweep(random.tire, one, random.range, List.of(obstacle)).approaches().get(0);
    ClosestApproach there =
        SteeringSweep.sweep(random.tire, other, random.range, List.of(across)).approaches().get(0);
    assertThat(there.gap()).isCloseTo(here.gap(), Offset.offset(0.1));
  }

  /** Envelope theorem: tire and obstacle varied, the whole sweep made anew each time. */
  @ParameterizedTest
  @CsvSource({"0", "1", "2", "3"})
  void theSweepChangesAsTheGapAtItsDecidingPose(int input) {
    SweepRange range = new SweepRange(-80, 70, -36, 36);
    ClosestApproach found = swept(WORKED, INCLINED, range, MOUNT);
    Gradient radius = Gradient.variable(4, 0, 407.5);
    Gradient width = Gradient.variable(4, 1, 275);
    Gradient shoulder = Gradient.variable(4, 2, 40);
    Gradient behind = Gradient.variable(4, 3, 0);
    FieldVector3D<Gradient> point =
        new FieldVector3D<>(radius.getField(), found.onObstacle())
            .add(new FieldVector3D<>(behind, Vector3D.MINUS_I));
    Gradient gap =
        TireSolid.gap(
            new FieldVector3D<>(radius.getField(), found.stance().center()),
            new FieldVector3D<>(radius.getField(), found.stance().axis()),
            point,
            radius,
            width,
            shoulder);
    assertThat(gap.getValue()).isCloseTo(found.gap(), Offset.offset(1e-9));
    double step = 0.5;
    double change = (varied(input, step, range) - varied(input, -step, range)) / (2 * step);
    assertThat(gap.getPartialDerivative(input)).isCloseTo(change, Offset.offset(2e-3));
    assertThat(Math.abs(change)).isGreaterThan(0.05);
  }

  private static double varied(int input, double by, SweepRange range) {
    TireSolid tire =
        new TireSolid(
            407.5 + (input == 0 ? by : 0), 275 + (input == 1 ? by : 0), 40 + (input == 2 ? by : 0));
    Obstacle.Box moved =
        new Obstacle.Box(
            MOUNT.middle().add(input == 3 ? by : 0, Vector3D.MINUS_I),
            MOUNT.halfLength(),
            MOUNT.halfWidth(),
            MOUNT.halfHeight());
    return swept(tire, INCLINED, range, moved).gap();
  }
}
