package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.catalog.Linkage.HalfShaftProfile;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.DifferentialDrop;
import trammel.fact.Standing;
import trammel.geometry.HalfShaft;
import trammel.geometry.Mount;
import trammel.geometry.Mount.Carrier;
import trammel.geometry.Pose;
import trammel.quantity.Constants;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Subject;

/** Half shafts of surveyed corners over travel and lock. */
final class HalfShaftFacts {
  private static final Formula PLACE =
      new Formula(
          "center of the outer joint",
          "as surveyed + what the pose moves it",
          "closed form from hard points");
  private static final Formula INNER =
      new Formula("height of the inner joint", "as surveyed − differential's drop", "definition");
  private static final Formula SPINDLE =
      new Formula(
          "direction of the spindle", "pose of the linkage", "closed form from hard points");
  private static final Formula JOINT =
      new Formula("joint angle", "angle between shaft and joint axis, in space", "HalfShaft");
  private static final Formula DISTANCE =
      new Formula("distance of the joints", "between their centers", "HalfShaft");
  private static final Formula OUT_LEFT =
      new Formula("plunge left", "outward room − what the shaft draws out", "HalfShaft");
  private static final Formula IN_LEFT =
      new Formula("plunge left", "inward room − what the shaft pushes in", "HalfShaft");

  /**
   * Tripod joints reach 22 to 26 degrees, fixed ball joints 42 to 47: where the maker is silent.
   */
  private static final Quantity USUAL_INNER = usual("inner joint's limit", 24, 2);

  private static final Quantity USUAL_OUTER = usual("outer joint's limit", 44.5, 2.5);

  private final Derivation derivation;
  private final Build build;

  HalfShaftFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  private static Quantity usual(String name, double value, double expanded) {
    return Quantity.read(
        name,
        ANGLE,
        value,
        expanded,
        new Input(
            "HalfShaftFacts", name, 0, "pages of the trade: common practice", Instrument.STATED));
  }

  void add() {
    for (Axle axle : Axle.values()) {
      HalfShaftProfile shaft = build.vehicle().axle(axle).linkage().halfShaft();
      boolean drop = build.changes(axle, PartKind.DIFFERENTIAL_DROP);
      Map<Place, Optional<Run>> runs = new HashMap<>();
      for (Position position : Position.of(axle)) {
        Quantity lift = derivation.heights().lift(position);
        // Droop and lock are where they were unless the linkage or its stroke is another.
        boolean farther =
            drop || build.changes(position, PartKind.UPPER_ARM, PartKind.STRUT_TOP_SPACER);
        boolean touched = farther || !lift.isKnown() || lift.value() != 0;
        Optional<Corners.Surveyed> corner =
            shaft != null && touched
                ? derivation
                    .corners(axle)
                    .solvable(position)
                    .filter(solved -> solved.model().bounded())
                : Optional.empty();
        if (shaft != null && corner.isPresent()) {
          Shaft side = new Shaft(position, shaft, corner.get());
          Optional<Run> run = runs.computeIfAbsent(side.place(), place -> side.run());
          run.ifPresentOrElse(
              found -> side.add(found, Standing.ofChange(farther)),
              () -> unmeasured(position, Standing.ofChange(farther)));
        } else if (drop || (shaft != null && touched)) {
          unmeasured(position, Standing.ofChange(farther));
        }
      }
    }
  }

  private void unmeasured(Position position, Standing standing) {
    String what = "half shaft of the " + position.toString().replace('-', ' ');
    Quantity angle =
        Figures.missing(
            ANGLE, what, "nobody has surveyed it", Instrument.HARD_POINT, "survey both joints");
    Quantity length =
        Figures.missing(
            LENGTH, what, "nobody has surveyed it", Instrument.HARD_POINT, "survey both joints");
    derivation.facts.add(
        new trammel.fact.HalfShaft(
            Subject.of(position),
            standing,
            numbers(position),
            angle,
            angle,
            USUAL_INNER,
            angle,
            USUAL_OUTER,
            length));
  }

  private List<String> numbers(Position position) {
    return build.after(position).all(PartKind.DIFFERENTIAL_DROP).stream()
        .map(part -> part.number())
        .toList();
  }

  /** What both sides have in common if they have it: the corner's poses, and the drop (mm). */
  private record Place(CornerPoses poses, double lower) {}

  /**
   * The shaft in one pose.
   *
   * @param moved what the outer center has moved since it was surveyed
   * @param apart from the inner to the outer center
   * @param inner angle of the inner joint, with derivatives by the coordinates of inner center,
   *     outer center and spindle
   * @param outer angle of the outer joint, likewise
   */
  private record Stand(
      FieldVector3D<Gradient> moved,
      FieldVector3D<Gradient> spindle,
      Vector3D apart,
      Gradient inner,
      Gradient outer) {}

  /**
   * The shaft over travel and lock, whichever side it is on.
   *
   * @param rest at rest as proposed
   * @param hanging at droop, straight ahead
   * @param up on the bump stop, straight ahead
   * @param bent where its outer joint is bent most: at droop, straight ahead or at a lock
   */
  private record Run(Stand rest, Stand hanging, Stand up, Stand bent) {}

  /** One shaft on its corner. */
  private final class Shaft {
    private final Position position;
    private final HalfShaftProfile shaft;
    private final Variables variables;
    private final CornerPoses poses;

    Shaft(Position position, HalfShaftProfile shaft, Corners.Surveyed corner) {
      this.position = position;
      this.shaft = shaft;
      this.variables = corner.variables();
      this.poses = corner.poses().orElseThrow();
    }

    Place place() {
      return new Place(poses, lower());
    }

    private boolean known() {
      return surveyedEnds().stream().allMatch(Quantity::isKnown);
    }

    private Vector3D inner() {
      return SurveyedShape.vector(shaft.inner());
    }

    private Vector3D outer() {
      return SurveyedShape.vector(shaft.outer());
    }

    private FieldVector3D<Gradient> constant(Vector3D at) {
      return new FieldVector3D<>(
          variables.constant(at.getX()),
          variables.constant(at.getY()),
          variables.constant(at.getZ()));
    }

    /**
     * Over travel and lock; empty where a joint was not surveyed or the linkage does not get there.
     */
    Optional<Run> run() {
      Optional<Pose<Gradient>> hanging = poses.atDroop(true);
      Optional<Pose<Gradient>> up = poses.atBump(true);
      if (!known() || hanging.isEmpty() || up.isEmpty()) {
        return Optional.empty();
      }
      Mount<Gradient> joint =
          Mount.of(poses.linkage(false), Carrier.UPRIGHT, constant(inner()), constant(outer()));
      Stand atDroop = stand(joint, hanging.get());
      Stand bent = atDroop;
      for (boolean lock : new boolean[] {true, false}) {
        Optional<Pose<Gradient>> locked = poses.atDroopAndLock(lock);
        if (locked.isPresent()) {
          Stand there = stand(joint, locked.get());
          bent = there.outer().getValue() > bent.outer().getValue() ? there : bent;
        }
      }
      return Optional.of(
          new Run(stand(joint, poses.atRest()), atDroop, stand(joint, up.get()), bent));
    }

    private Stand stand(Mount<Gradient> joint, Pose<Gradient> pose) {
      FieldVector3D<Gradient> at = joint.moving(poses.linkage(true), pose);
      Vector3D from = inner().subtract(new Vector3D(0, 0, lower()));
      Vector3D to = at.toVector3D();
      HalfShaft<Gradient> geometry =
          new HalfShaft<>(
              variable(0, from),
              new FieldVector3D<>(
                  Gradient.constant(9, 0), Gradient.constant(9, 1), Gradient.constant(9, 0)),
              variable(3, to),
              variable(6, pose.spindle().toVector3D()));
      return new Stand(
          at.subtract(constant(outer())),
          pose.spindle(),
          to.subtract(from),
          geometry.innerAngle(),
          geometry.outerAngle());
    }

    private static FieldVector3D<Gradient> variable(int first, Vector3D at) {
      return new FieldVector3D<>(
          Gradient.variable(9, first, at.getX()),
          Gradient.variable(9, first + 1, at.getY()),
          Gradient.variable(9, first + 2, at.getZ()));
    }

    void add(Run run, Standing standing) {
      List<Quantity> rest = ends(run.rest());
      List<Quantity> hanging = ends(run.hanging());
      derivation.facts.add(
          new trammel.fact.HalfShaft(
              Subject.of(position),
              standing,
              numbers(position),
              angle(run.rest(), rest, run.rest().inner()).called("inner joint at rest"),
              angle(run.hanging(), hanging, run.hanging().inner()).called("inner joint at droop"),
              shaft.innerLimit().isKnown() ? shaft.innerLimit() : USUAL_INNER,
              angle(run.bent(), ends(run.bent()), run.bent().outer())
                  .called("outer joint at droop and lock"),
              shaft.outerLimit().isKnown() ? shaft.outerLimit() : USUAL_OUTER,
              plunge(
                  List.of(
                      length(rest, run.rest().apart()),
                      length(hanging, run.hanging().apart()),
                      length(ends(run.up()), run.up().apart())))));
    }

    /** What is left of the plunge at the nearer end. */
    private Quantity plunge(List<Quantity> lengths) {
      Quantity surveyed = length(surveyedEnds(), outer().subtract(inner()));
      @Nullable Quantity least = null;
      for (Quantity length : lengths) {
        Quantity out = OUT_LEFT.linear(1, shaft.plungeOut(), -1, length, 1, surveyed);
        Quantity in = IN_LEFT.linear(1, shaft.plungeIn(), 1, length, -1, surveyed);
        for (Quantity left : List.of(out, in)) {
          if (least == null
              || (left.isKnown() && least.isKnown() && left.value() < least.value())
              || !left.isKnown()) {
            least = left;
          }
        }
      }
      return least == null ? shaft.plungeOut() : least;
    }

    private Quantity length(List<Quantity> ends, Vector3D apart) {
      Vector3D unit = apart.normalize();
      return DISTANCE.of(
          LENGTH,
          apart.getNorm(),
          new double[] {
            -unit.getX(), -unit.getY(), -unit.getZ(), unit.getX(), unit.getY(), unit.getZ()
          },
          ends.toArray(Quantity[]::new));
    }

    private Quantity angle(Stand stand, List<Quantity> ends, Gradient angle) {
      List<Quantity> operands = new ArrayList<>(ends);
      for (int i = 0; i < 3; i++) {
        operands.add(variables.quantity(SPINDLE, RATIO, component(stand.spindle(), i)));
      }
      return JOINT.of(
          Dimension.ANGLE,
          angle.getValue(),
          angle.getGradient(),
          operands.toArray(Quantity[]::new));
    }

    /** Both joints' coordinates as surveyed. */
    private List<Quantity> surveyedEnds() {
      return List.of(
          shaft.inner().fore(),
          shaft.inner().out(),
          shaft.inner().up(),
          shaft.outer().fore(),
          shaft.outer().out(),
          shaft.outer().up());
    }

    /** Both joints' coordinates in a pose. */
    private List<Quantity> ends(Stand stand) {
      List<Quantity> ends = new ArrayList<>(surveyedEnds());
      ends.set(2, INNER.linear(1, shaft.inner().up(), -1, drop()));
      for (int i = 0; i < 3; i++) {
        Quantity moved = variables.quantity(PLACE, LENGTH, component(stand.moved(), i));
        ends.set(3 + i, PLACE.linear(1, ends.get(3 + i), 1, moved));
      }
      return ends;
    }

    private static Gradient component(FieldVector3D<Gradient> vector, int index) {
      return index == 0 ? vector.getX() : index == 1 ? vector.getY() : vector.getZ();
    }

    private Quantity drop() {
      return build
          .after(position)
          .one(PartKind.DIFFERENTIAL_DROP, DifferentialDrop.class)
          .map(DifferentialDrop::drop)
          .orElseGet(() -> Constants.mm(0));
    }

    /** How far the differential is lowered (mm); 0 where nobody has said. */
    private double lower() {
      return drop().isKnown() ? drop().value() : 0;
    }
  }
}
