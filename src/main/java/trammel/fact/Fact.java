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
        Alignment,
        ArmRoom,
        AxleShift,
        AxleTurn,
        BarRoom,
        BrakeRoom,
        BumpSteer,
        ChainRoom,
        ClaimedLift,
        Clearance,
        Coverage,
        DriveMatch,
        Fastening,
        FittedPart,
        GearChange,
        HalfShaft,
        JointSwing,
        LinkMismatch,
        LinkageReach,
        ListedFor,
        MeterReading,
        OrderLine,
        PartOnVehicle,
        PieceCount,
        PropShaft,
        RideHeight,
        Seating,
        SideCount,
        SideToSide,
        SpacerStack,
        SpareMatch,
        SpareRoom,
        SpringSeating,
        Stability,
        StudPocket,
        Supply,
        TireCapacity,
        TireOnRim,
        TirePair,
        TireSpeed,
        TireState,
        ToeThread,
        TrackChange,
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
