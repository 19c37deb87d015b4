package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
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
import trammel.geometry.Corner;
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
          new Shaft(position, shaft, corner.get(), Standing.ofChange(farther)).add();
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

  /** One shaft on its corner. */
  private final class Shaft {
    private final Position position;
    private final HalfShaftProfile shaft;
    private final Standing standing;
    private final CornerModel model;
    private final Variables variables;
    private final CornerPoses poses;
    private final Corner<Gradient> linkage;
    private final @Nullable Mount<Gradient> joint;

    Shaft(Position position, HalfShaftProfile shaft, Corners.Surveyed corner, Standing standing) {
      this.standing = standing;
      this.position = position;
      this.shaft = shaft;
      this.model = corner.model();
      this.variables = corner.variables();
      this.poses = corner.poses().orElseThrow();
      this.linkage = poses.linkage(true);
      this.joint =
          known()
              ? poses
                  .asSurveyed()
                  .map(
                      pose ->
                          Mount.of(
                              poses.linkage(false),
                              pose,
                              Carrier.UPRIGHT,
                              constant(inner()),
                              constant(outer())))
                  .orElse(null)
              : null;
    }

    private boolean known() {
      return List.of(
              shaft.inner().fore(),
              shaft.inner().out(),
              shaft.inner().up(),
              shaft.outer().fore(),
              shaft.outer().out(),
              shaft.outer().up())
          .stream()
          .allMatch(Quantity::isKnown);
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

    void add() {
      Gradient droop = model.endVariable(CornerModel.DROOP).negate();
      Gradient lock = model.endVariable(CornerModel.LOCK);
      Optional<Stand> rest = stand(Optional.of(poses.atRest()));
      Optional<Stand> hanging = stand(poses.atDroop(true));
      Optional<Stand> up = stand(poses.atBump(true));
      Optional<Stand> left =
          stand(poses.at("at droop, one lock", true, () -> droop, () -> poses.steered(true, lock)));
      Optional<Stand> right =
          stand(
              poses.at(
                  "at droop, other lock",
                  true,
                  () -> droop,
                  () -> poses.steered(true, lock.negate())));
      if (rest.isEmpty() || hanging.isEmpty() || up.isEmpty()) {
        unmeasured(position, standing);
        return;
      }
      Quantity outer = hanging.get().outerAngle();
      for (Optional<Stand> locked : List.of(left, right)) {
        if (locked.isPresent() && locked.get().outerAngle().value() > outer.value()) {
          outer = locked.get().outerAngle();
        }
      }
      derivation.facts.add(
          new trammel.fact.HalfShaft(
              Subject.of(position),
              standing,
              numbers(position),
              rest.get().innerAngle().called("inner joint at rest"),
              hanging.get().innerAngle().called("inner joint at droop"),
              shaft.innerLimit().isKnown() ? shaft.innerLimit() : USUAL_INNER,
              outer.called("outer joint at droop and lock"),
              shaft.outerLimit().isKnown() ? shaft.outerLimit() : USUAL_OUTER,
              plunge(List.of(rest.get(), hanging.get(), up.get()))));
    }

    /** What is left of the plunge at the nearer end. */
    private Quantity plunge(List<Stand> stands) {
      Quantity surveyed = surveyedLength();
      @Nullable Quantity least = null;
      for (Stand stand : stands) {
        Quantity length = stand.length();
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

    private Quantity surveyedLength() {
      return length(coordinates(null), outer().subtract(inner()));
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

    /** Both joints' coordinates; the outer one's as surveyed where it is not moved. */
    private List<Quantity> coordinates(@Nullable FieldVector3D<Gradient> moved) {
      List<Quantity> ends = new ArrayList<>();
      ends.add(shaft.inner().fore());
      ends.add(shaft.inner().out());
      ends.add(
          moved == null ? shaft.inner().up() : INNER.linear(1, shaft.inner().up(), -1, drop()));
      List<Quantity> surveyed =
          List.of(shaft.outer().fore(), shaft.outer().out(), shaft.outer().up());
      for (int i = 0; i < 3; i++) {
        ends.add(
            moved == null
                ? surveyed.get(i)
                : PLACE.linear(
                    1, surveyed.get(i), 1, variables.quantity(PLACE, LENGTH, component(moved, i))));
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

    private Optional<Stand> stand(Optional<Pose<Gradient>> posed) {
      Mount<Gradient> outer = joint;
      return outer == null
          ? Optional.empty()
          : posed.map(pose -> new Stand(pose, outer.moving(linkage, pose)));
    }

    /** The shaft in one pose. */
    private final class Stand {
      private final Vector3D apart;
      private final List<Quantity> ends;
      private final HalfShaft<Gradient> geometry;
      private final List<Quantity> operands;

      Stand(Pose<Gradient> pose, FieldVector3D<Gradient> at) {
        FieldVector3D<Gradient> moved = at.subtract(constant(outer()));
        ends = coordinates(moved);
        double lower = drop().isKnown() ? drop().value() : 0;
        Vector3D from = inner().subtract(new Vector3D(0, 0, lower));
        Vector3D to = at.toVector3D();
        apart = to.subtract(from);
        operands = new ArrayList<>(ends);
        for (int i = 0; i < 3; i++) {
          operands.add(variables.quantity(SPINDLE, RATIO, component(pose.spindle(), i)));
        }
        geometry =
            new HalfShaft<>(
                variable(0, from),
                new FieldVector3D<>(
                    Gradient.constant(9, 0), Gradient.constant(9, 1), Gradient.constant(9, 0)),
                variable(3, to),
                variable(6, pose.spindle().toVector3D()));
      }

      private FieldVector3D<Gradient> variable(int first, Vector3D at) {
        return new FieldVector3D<>(
            Gradient.variable(9, first, at.getX()),
            Gradient.variable(9, first + 1, at.getY()),
            Gradient.variable(9, first + 2, at.getZ()));
      }

      Quantity innerAngle() {
        return of(geometry.innerAngle());
      }

      Quantity outerAngle() {
        return of(geometry.outerAngle());
      }

      private Quantity of(Gradient angle) {
        return JOINT.of(
            Dimension.ANGLE,
            angle.getValue(),
            angle.getGradient(),
            operands.toArray(Quantity[]::new));
      }

      Quantity length() {
        return Shaft.this.length(ends, apart);
      }
    }
  }
}
