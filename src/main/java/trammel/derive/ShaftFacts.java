package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.util.FieldSinCos;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.catalog.AxleProfile;
import trammel.catalog.BeamLocation.Links;
import trammel.catalog.PartKind;
import trammel.catalog.ShaftProfile;
import trammel.catalog.ShaftProfile.Joints;
import trammel.catalog.ShaftProfile.Turns;
import trammel.catalog.SurveyPoint;
import trammel.catalog.SuspensionPart.DifferentialDrop;
import trammel.fact.PropShaft;
import trammel.fact.Standing;
import trammel.geometry.JointAngleLimit;
import trammel.geometry.ShaftJoints;
import trammel.quantity.Constants;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;
import trammel.subject.Subject;

/** Joint angles and slip of the prop shafts at the proposed height. */
final class ShaftFacts {
  private static final Formula ANGLE_AT =
      new Formula("joint angle", "angle between shaft and flange axis, in space", "ShaftJoints");
  private static final Formula DIFFERENCE =
      new Formula(
          "difference of the joint angles", "|at the gearbox − at the axle|", "ShaftJoints");
  private static final Formula ALLOWED =
      new Formula(
          "joint angle allowed at its speed",
          "by turns of the shaft: speed · final drive / circumference",
          "shared/reference/joint-angle-by-speed.csv");
  private static final Formula SPLINE =
      new Formula("spline engaged at droop", "engaged − what the shaft draws out", "ShaftJoints");
  private static final Formula THIRD =
      new Formula("spline needed", "a third of the spline", "common practice");

  /** The least of a spline that must stay in (mm). Common practice. */
  private static final double LEAST_SPLINE = 25;

  private final Derivation derivation;
  private final Build build;
  private final AxleTurns turns;

  ShaftFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.turns = new AxleTurns(build);
  }

  void add() {
    for (Axle axle : Axle.values()) {
      AxleRide ride = derivation.ride(axle);
      boolean beam = build.vehicle().axle(axle).layout().beam();
      boolean parts =
          build.changes(
              axle,
              PartKind.AXLE_LINK,
              PartKind.LEAF_BLOCK,
              PartKind.SHACKLE,
              PartKind.DIFFERENTIAL_DROP);
      List<ShaftProfile> shafts =
          build.vehicle().shafts().stream().filter(shaft -> shaft.drives() == axle).toList();
      if (parts || (beam && ride.moved())) {
        shafts.forEach(shaft -> shaft(axle, shaft, ride));
        if (shafts.isEmpty() && driven(axle) && (parts || ride.wantsMeasuring())) {
          unmeasured(axle);
        }
      }
    }
    new HalfShaftFacts(derivation).add();
  }

  private boolean driven(Axle axle) {
    return switch (build.vehicle().drive()) {
      case FRONT -> axle == Axle.FRONT;
      case REAR -> axle == Axle.REAR;
      case PART_TIME, FULL_TIME -> true;
    };
  }

  private void unmeasured(Axle axle) {
    String what = "prop shaft of the " + axle + " axle";
    String how = "angle finder on both flanges, tape between the joints";
    Quantity angle = Figures.missing(ANGLE, what, "nobody has measured it", Instrument.TAPE, how);
    Quantity length = Figures.missing(LENGTH, what, "nobody has measured it", Instrument.TAPE, how);
    derivation.facts.add(
        new PropShaft(
            Subject.of(axle, "prop-shaft"),
            Standing.WORSE_OR_NEW,
            numbers(axle),
            "prop shaft",
            angle,
            angle,
            angle,
            angle,
            angle,
            length,
            length));
  }

  private List<String> numbers(Axle axle) {
    List<String> numbers = new ArrayList<>(turns.numbers(axle));
    if (build.changes(axle, PartKind.DIFFERENTIAL_DROP)) {
      build
          .after(Position.of(axle, Side.LEFT))
          .all(PartKind.DIFFERENTIAL_DROP)
          .forEach(part -> numbers.add(part.number()));
    }
    return numbers;
  }

  /**
   * Both joints of a shaft at the proposed height.
   *
   * @param output angle of the one at gearbox or transfer case (degrees, in space)
   * @param pinion angle of the one at the axle
   */
  record JointAngles(Quantity output, Quantity pinion) {}

  /** The joints of a shaft at the proposed height. */
  JointAngles joints(ShaftProfile shaft) {
    Axle axle = shaft.drives();
    Shaft proposed = new Shaft(axle, shaft, derivation.ride(axle).proposed(), true);
    return new JointAngles(
        proposed.angle(ShaftJoints::outputAngle), proposed.angle(ShaftJoints::pinionAngle));
  }

  private void shaft(Axle axle, ShaftProfile shaft, AxleRide ride) {
    AxleProfile profile = build.vehicle().axle(axle);
    Shaft found = new Shaft(axle, shaft, Constants.mm(0), false);
    Shaft proposed = new Shaft(axle, shaft, ride.proposed(), true);
    Shaft droop =
        profile.layout().beam() ? new Shaft(axle, shaft, profile.droopTravel(), true) : proposed;
    Quantity output = proposed.angle(ShaftJoints::outputAngle);
    Quantity pinion = proposed.angle(ShaftJoints::pinionAngle);
    boolean single = shaft.joints() == Joints.SINGLE;
    boolean outputSteeper =
        single && output.isKnown() && pinion.isKnown() && output.value() > pinion.value();
    derivation.facts.add(
        new PropShaft(
            Subject.of(axle, shaft.shaft().replace(' ', '-')),
            Standing.WORSE_OR_NEW,
            numbers(axle),
            shaft.shaft(),
            output,
            pinion,
            outputSteeper ? output : pinion,
            allowed(axle, shaft),
            single
                ? proposed.difference()
                : Constants.degrees(0).called("difference of the joint angles"),
            splineLeft(shaft, found, droop),
            splineNeeded(shaft)));
  }

  private static Quantity splineLeft(ShaftProfile shaft, Shaft found, Shaft droop) {
    Quantity before = found.length();
    Quantity after = droop.length();
    return SPLINE.linear(1, shaft.splineEngaged(), -1, after, 1, before);
  }

  private static Quantity splineNeeded(ShaftProfile shaft) {
    Quantity third = THIRD.linear(1 / 3.0, shaft.splineFull());
    return third.isKnown() && third.value() < LEAST_SPLINE
        ? Constants.mm(LEAST_SPLINE).called("spline needed")
        : third;
  }

  /** The most at the speed at which the shaft really turns under torque. */
  private Quantity allowed(Axle axle, ShaftProfile shaft) {
    Quantity speed =
        shaft.turns() == Turns.FOUR_WHEEL_DRIVE && shaft.topSpeed().isKnown()
            ? shaft.topSpeed()
            : build.vehicle().topSpeed();
    Variables.Collector collector = new Variables.Collector();
    int fast = collector.add(speed);
    int ratio = collector.add(build.vehicle().finalDrive());
    int around = collector.add(derivation.after(Position.of(axle, Side.LEFT)).circumference);
    Variables variables = collector.all();
    Quantity missing = variables.missing();
    if (missing != null) {
      return Quantity.absent(ANGLE, Variables.absence(missing));
    }
    // km/h over mm of circumference: 10⁶ mm in a km, 60 minutes in an hour.
    Gradient turnsPerMinute =
        variables
            .variable(fast)
            .multiply(1e6 / 60)
            .divide(variables.variable(around))
            .multiply(variables.variable(ratio));
    return variables.quantity(ALLOWED, ANGLE, JointAngleLimit.largestAngle(turnsPerMinute));
  }

  /** A shaft with its axle at a lift. */
  private final class Shaft {
    private final Variables variables;
    private final @Nullable ShaftJoints<Gradient> joints;

    Shaft(Axle axle, ShaftProfile shaft, Quantity lift, boolean proposed) {
      AxleProfile profile = build.vehicle().axle(axle);
      AxleTurns.Turned turned = turns.at(axle, lift, proposed);
      Variables.Collector collector = new Variables.Collector();
      int[] output = collector.add(shaft.output(), "joint at the gearbox");
      int[] pinion = collector.add(shaft.pinion(), "joint at the axle");
      int outputSlope = collector.add(shaft.outputSlope());
      int pinionSlope = collector.add(shaft.pinionSlope());
      int raised = collector.add(lift);
      int frontUp = collector.add(turned.frontUp());
      int fore = collector.add(turned.fore());
      int drop = collector.add(proposed ? drop(axle) : Constants.mm(0));
      int wheelbase = collector.add(build.vehicle().wheelbase());
      Links links = profile.location().links();
      int centerUp = collector.add(links == null ? shaft.pinion().up() : links.wheelCenter().up());
      variables = collector.all();
      if (variables.missing() != null) {
        joints = null;
        return;
      }
      FieldVector3D<Gradient> at = vector(pinion, shaft.pinion(), axle, wheelbase);
      FieldVector3D<Gradient> flange = vector(output, shaft.output(), axle, wheelbase);
      Gradient slope = variables.variable(pinionSlope);
      if (profile.layout().beam()) {
        // The pinion goes with the axle: turned about the wheels' axis, moved fore, and down.
        FieldSinCos<Gradient> turn = variables.variable(frontUp).toRadians().sinCos();
        Gradient up = at.getZ().subtract(variables.variable(centerUp));
        at =
            new FieldVector3D<>(
                at.getX()
                    .multiply(turn.cos())
                    .subtract(up.multiply(turn.sin()))
                    .add(variables.variable(fore)),
                at.getY(),
                at.getX()
                    .multiply(turn.sin())
                    .add(up.multiply(turn.cos()))
                    .add(variables.variable(centerUp))
                    .subtract(variables.variable(raised)));
        slope = slope.add(variables.variable(frontUp));
      } else {
        at =
            new FieldVector3D<>(at.getX(), at.getY(), at.getZ().subtract(variables.variable(drop)));
      }
      joints = new ShaftJoints<>(flange, axis(variables.variable(outputSlope)), at, axis(slope));
    }

    private Quantity drop(Axle axle) {
      return build
          .after(Position.of(axle, Side.LEFT))
          .one(PartKind.DIFFERENTIAL_DROP, DifferentialDrop.class)
          .map(DifferentialDrop::drop)
          .orElseGet(() -> Constants.mm(0));
    }

    private FieldVector3D<Gradient> axis(Gradient slope) {
      FieldSinCos<Gradient> turn = slope.toRadians().sinCos();
      return new FieldVector3D<>(turn.cos(), variables.constant(0), turn.sin());
    }

    /** A point with fore counted from the axle that the shaft drives. */
    private FieldVector3D<Gradient> vector(
        int[] index, SurveyPoint point, Axle axle, int wheelbase) {
      FieldVector3D<Gradient> left = variables.left(index, point);
      Axle from = point.from() == null ? axle : point.from();
      Gradient base = variables.variable(wheelbase);
      Gradient fore = left.getX();
      return new FieldVector3D<>(
          from == axle ? fore : axle == Axle.REAR ? fore.add(base) : fore.subtract(base),
          left.getY(),
          left.getZ());
    }

    private Quantity of(
        Formula formula, Dimension dimension, Function<ShaftJoints<Gradient>, Gradient> what) {
      Quantity missing = variables.missing();
      if (missing != null || joints == null) {
        return Quantity.absent(dimension, Variables.absence(missing));
      }
      Gradient value = what.apply(joints);
      return variables.quantity(formula, dimension, value.getValue() < 0 ? value.negate() : value);
    }

    Quantity angle(Function<ShaftJoints<Gradient>, Gradient> which) {
      return of(ANGLE_AT, ANGLE, which);
    }

    Quantity difference() {
      return of(DIFFERENCE, ANGLE, ShaftJoints::difference);
    }

    Quantity length() {
      return of(SPLINE, LENGTH, ShaftJoints::length);
    }
  }
}
