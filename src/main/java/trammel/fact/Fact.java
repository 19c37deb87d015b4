package trammel.fact;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.List;
import trammel.catalog.PartKind;
import trammel.subject.Subject;

/**
 * Something a rule can judge. Every fact always carries its quantities; a missing one is an absent
 * value, never a null.
 */
public sealed interface Fact
    permits AdjusterState,
        AfterWork,
        AirSpringLoad,
        Alignment,
        ArmRoom,
        AxleLoad,
        AxleShift,
        AxleTurn,
        BarRoom,
        BodyBlocks,
        BodyCrossing,
        BracketMatch,
        BrakeRoom,
        BrakeValveRod,
        BumpSteer,
        ChainRoom,
        ClaimedLift,
        Clearance,
        CoilRoom,
        Coverage,
        DamperReach,
        DriveMatch,
        EnvelopeRoom,
        FastenerSupply,
        Fastening,
        FittedPart,
        FluidLoad,
        GearChange,
        GroundRoom,
        HalfShaft,
        HeightOffBook,
        JointSwing,
        LegalMeasures,
        LiftStack,
        LineReach,
        LinkMismatch,
        LinkageReach,
        ListedFor,
        MeterReading,
        OrderLine,
        PartOnVehicle,
        PieceCount,
        PropShaft,
        RampAngle,
        RideHeight,
        Seating,
        SensorRange,
        SideCount,
        SideLean,
        SideToSide,
        SpacerStack,
        SpacerStep,
        SpareMatch,
        SpareRoom,
        SpringBand,
        SpringSeating,
        Stability,
        StopNeed,
        StudPocket,
        Supply,
        SwayLink,
        TireCapacity,
        TireOnRim,
        TirePair,
        TireSpeed,
        TireState,
        ToeThread,
        TrackChange,
        TravelBudget,
        Vehicle,
        WheelRating {

  /** What it is about. */
  Subject subject();

  /** How the change bears on it. */
  Standing standing();

  /** The numbers of the parts it is about. */
  List<String> parts();

  /**
   * The kinds of part whose fit a fact describes: a rule with a condition on it judges those kinds.
   */
  @Documented
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.TYPE)
  @interface Concerns {
    PartKind[] value();
  }

  /** The version of the fact vocabulary that first had a record. */
  @Documented
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.TYPE)
  @interface Since {
    String value();
  }
}
