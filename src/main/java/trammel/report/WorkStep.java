package trammel.report;

import static trammel.catalog.PartKind.*;
import static trammel.report.WorkState.*;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.FlexibleLine;
import trammel.catalog.SuspensionPart.FlexibleLine.Carries;

/**
 * The steps of the work in the order in which they are done: how the vehicle must stand, what is
 * done, where the danger is, when a sheet calls for it on an axle, and which parts it fits. Common
 * practice throughout.
 */
// The predicates are lambdas without state.
@SuppressWarnings("ImmutableEnumChecker")
enum WorkStep {
  RECORD(
      AS_IT_STANDS,
      "Measure hub to fender at all four wheels and write it down; keep the last alignment printout"
          + " and mark how every adjuster stands.",
      "",
      AxleWork::geometry,
      parts()),
  TRY_ADJUSTERS(
      AS_IT_STANDS,
      "Try whether the alignment's adjusters turn before anything is taken apart.",
      "",
      work -> work.geometry() && !work.beam() && !work.profile().adjusters().isEmpty(),
      parts()),
  HEIGHT_CONTROL_OFF(
      KEY_OUT,
      "Switch the height control off, take the key out and keep it with whoever works underneath.",
      "A height control that wakes moves the vehicle by itself, onto whoever is under it.",
      work -> work.heightControlled() && work.wheelsOff(),
      parts()),
  RAISE_VEHICLE(
      ON_STANDS,
      "Loosen the wheel nuts a quarter turn, raise the vehicle at its maker's points, set stands"
          + " under the frame and take the wheels off.",
      "A jack holds nothing: nobody reaches underneath before the stands carry and the wheels left"
          + " on the ground are chocked.",
      AxleWork::wheelsOff,
      parts()),
  RELEASE_PRESSURE(
      PRESSURE_RELEASED,
      "Let the pressure off as the maker's book says, through a hose into a can, until nothing more"
          + " comes.",
      "Fluid or gas under this pressure goes through skin and into eyes: goggles and gloves, no"
          + " hand before a joint, nobody underneath while it settles.",
      work -> work.pressed() && (work.apart() || work.newLine(Carries.SUSPENSION_FLUID)),
      parts()),
  UNDO_WHAT_FOLLOWS(
      AXLE_HELD,
      "Undo what would hang on the wheel: sway-bar links, height-sensor links, clips of hoses and"
          + " wires, dampers at one end. Hang the caliper from a wire.",
      "Nothing hangs by a brake hose or a sensor's wire: it tears inside, where nobody sees it.",
      AxleWork::apart,
      parts()),
  TURN_TORSION_BARS(
      ON_STANDS,
      "Turn the torsion bars' adjusters on both sides by the same count of turns.",
      "A loaded bar throws its lever: turn it with the wheels hanging, and stay out of its way.",
      AxleWork::torsionBarsTurned,
      parts()),
  COILS_LET_DOWN(
      AXLE_HELD,
      "Let the axle down evenly until the coils are slack; change springs, spacers and retainers,"
          + " each coil's end against the step of its seat.",
      "A coil under load flies out and kills: no hand near it before it turns loose in its seat.",
      work -> work.beam() && !work.leaves() && work.changes(SPRING, SPRING_SPACER, COIL_RETAINER),
      parts(SPRING, SPRING_SPACER, COIL_RETAINER)),
  COILS_COMPRESSED(
      SPRING_HELD,
      "Hold the springs in a compressor, take them out, change springs, spacers and plates, and set"
          + " each coil's end against the step of its seat.",
      "A coil under load flies out and kills: the nut of the damper's rod stays shut until the"
          + " spring is held, and the compressor's hooks grip opposite each other.",
      work ->
          !work.beam()
              && (work.changes(SPRING, SPRING_SPACER, STRUT_TOP_SPACER, COIL_RETAINER)
                  || (work.strut() && work.changes(DAMPER))),
      parts(SPRING, SPRING_SPACER, STRUT_TOP_SPACER, COIL_RETAINER)),
  LEAF_SPRINGS(
      AXLE_HELD,
      "Undo the U-bolts evenly; change packs, blocks and shackles, the center bolt's head in its"
          + " hole.",
      "An arched pack springs out as its last bolt goes, and the axle rolls: hold both.",
      work -> work.leaves() && work.changes(SPRING, LEAF_BLOCK, SHACKLE),
      parts(SPRING, LEAF_BLOCK, SHACKLE)),
  AIR_SPRINGS(
      AXLE_HELD,
      "Fit the air springs empty, each between its plates without a twist; lead their lines clear of"
          + " exhaust and tire, and set the pressure only with the vehicle on its wheels.",
      "A bag that is filled with the wheels hanging bursts or walks out of its plates.",
      work -> work.changes(AIR_SPRING),
      parts(AIR_SPRING)),
  DAMPERS(
      AXLE_HELD,
      "Change the dampers and their brackets, bolts hand-tight.",
      "A gas-charged damper pushes itself out to its end; one that a coil surrounds comes out only"
          + " with the spring held.",
      work -> work.changes(DAMPER, DAMPER_BRACKET),
      parts(DAMPER, DAMPER_BRACKET)),
  STOPS(
      AXLE_HELD,
      "Fit the bump stops and straps.",
      "",
      work -> work.changes(BUMP_STOP, DROOP_STRAP),
      parts(BUMP_STOP, DROOP_STRAP)),
  UPPER_ARMS(
      AXLE_HELD,
      "Change one upper arm, then the other: press the ball joint off with its tool, pivot bolts"
          + " hand-tight.",
      "The spring pushes through this joint: the lower arm stays on its jack until the new joint"
          + " is tight.",
      work -> work.changes(UPPER_ARM),
      parts(UPPER_ARM)),
  ECCENTRICS(
      AXLE_HELD,
      "Fit the eccentric bolts, in the middle of their range.",
      "The spring pushes on the arm: the lower arm stays on its jack.",
      work -> work.changes(ECCENTRIC_BOLT),
      parts(ECCENTRIC_BOLT)),
  LINKS(
      AXLE_HELD,
      "Change one link after the other, each set to the length of the old one first; hand-tight.",
      "With two links off, the axle turns or rolls away: one at a time.",
      work -> work.changes(AXLE_LINK),
      parts(AXLE_LINK)),
  PANHARD(
      AXLE_HELD,
      "Fit the panhard bar and its bracket, bolts hand-tight.",
      "A bracket that has to be welded, or a mount that has to be cut, is a licensed shop's work.",
      work -> work.changes(PANHARD_BAR, PANHARD_BRACKET),
      parts(PANHARD_BAR, PANHARD_BRACKET)),
  LOWER_DIFFERENTIAL(
      DIFFERENTIAL_HELD,
      "Let the differential down on its spacers; free its breather and wires first.",
      "It weighs more than arms can hold.",
      work -> work.changes(DIFFERENTIAL_DROP),
      parts(DIFFERENTIAL_DROP)),
  RAISE_BODY(
      BODY_HELD,
      "Give way to steering shaft, filler neck, radiator hoses, levers, brake lines, wires and"
          + " ground straps; then raise one side of the body after the other onto its blocks.",
      "A body that slips off its jack cuts off what is between it and the frame.",
      work -> work.changes(BODY_LIFT_KIT),
      parts(BODY_LIFT_KIT)),
  BRAKE_LINES(
      ON_STANDS,
      "Change the brake hoses, bleed the brakes and look for leaks with the pedal held down.",
      "Brake fluid burns eyes and eats paint, and one bubble left in it takes the brake away.",
      work -> work.newLine(Carries.BRAKE_FLUID),
      lines(Carries.BRAKE_FLUID)),
  FLUID_LINES(
      PRESSURE_RELEASED,
      "Change the rams' lines.",
      "Open a joint only where no pressure is left behind it.",
      work -> work.newLine(Carries.SUSPENSION_FLUID),
      lines(Carries.SUSPENSION_FLUID)),
  BREATHERS_AND_WIRES(
      ON_STANDS,
      "Lay breathers and sensors' wires clear of whatever moves, the breather's end high.",
      "",
      work -> work.newLine(Carries.BREATHER) || work.newLine(Carries.SENSOR_WIRE),
      lines(Carries.BREATHER, Carries.SENSOR_WIRE)),
  CONNECT_WHAT_FOLLOWS(
      AXLE_HELD,
      "Connect sway-bar links with both wheels equally high, then height-sensor links, calipers and"
          + " clips.",
      "",
      work -> work.apart() || work.changes(SWAY_BAR_LINK, HEIGHT_SENSOR_LINK),
      parts(SWAY_BAR_LINK, HEIGHT_SENSOR_LINK)),
  ACCESSORIES(
      AS_IT_STANDS,
      "Fit what is carried for good, as its maker says.",
      "Leave airbags, their sensors and wires alone, and cover none of them.",
      work -> work.changes(ACCESSORY),
      parts(ACCESSORY)),
  MOUNT_TIRES(
      OFF_THE_VEHICLE,
      "Hold one bare wheel to the tightest corner first; then mount the tires with their valves or"
          + " sensors and balance them.",
      "A bead that seats late bursts: clip-on chuck, stand aside, never beyond the pressure that"
          + " tire or rim allows.",
      work -> work.changes(TIRE, WHEEL, PRESSURE_SENSOR),
      parts(TIRE, PRESSURE_SENSOR)),
  STUDS(
      ON_STANDS,
      "Press the studs into the hubs until their heads bear all round.",
      "",
      work -> work.changes(STUD),
      parts(STUD)),
  FIT_WHEELS(
      ON_STANDS,
      "Clean hub and wheel faces to the metal; spacers and rings first, then the wheels, every nut"
          + " by hand before any is tightened crosswise.",
      "Paint, rust or grease between hub and wheel lets the nuts work loose.",
      AxleWork::wheelsOff,
      parts(WHEEL, WHEEL_SPACER, CENTERING_RING, FASTENER)),
  LOOK_HANGING(
      ON_STANDS,
      "With the wheels hanging, turn the steering from lock to lock and look at hoses, wires, ball"
          + " joints, half shafts and the room about each tire.",
      "",
      AxleWork::wheelsOff,
      parts()),
  HEIGHT_CONTROL_ON(
      ON_THE_GROUND,
      "Fill and bleed what was let out, as the maker's book says; then key in, height control on,"
          + " and let it find its middle setting.",
      "Nobody under the vehicle or at a wheel arch while it moves.",
      work -> work.heightControlled() && work.wheelsOff(),
      parts()),
  SET_HEIGHT(
      LOADED,
      "Set the height control's height by its maker's procedure, both sides alike.",
      "It moves by itself: nobody under it or at a wheel arch.",
      work -> work.raised() && work.heightControlled(),
      parts()),
  SETTLE(
      ON_THE_GROUND,
      "Roll it forth and back, rock it, and measure hub to fender at all four wheels again.",
      "",
      AxleWork::geometry,
      parts()),
  CENTER_AXLE(
      AT_RIDE_HEIGHT,
      "Measure how far the axle stands to one side, and set an adjustable bar until it stands in"
          + " the middle.",
      "",
      AxleWork::barSlopes,
      parts()),
  TIGHTEN_RUBBER(
      AT_RIDE_HEIGHT,
      "Only now tighten the joints that turn in rubber; where the height is new, loosen the others"
          + " once and tighten them again.",
      "Rubber tightened with the wheels hanging is wrung when the vehicle stands, and tears.",
      AxleWork::rubberWrung,
      parts()),
  BRAKE_VALVE(
      LOADED,
      "Set the rod of the load-sensing brake valve for the new height by the workshop book.",
      "A valve that feels a wrong height lets the rear wheels lock first.",
      work -> work.changes(BRAKE_VALVE_BRACKET) || (work.loadSensingValve() && work.height()),
      parts(BRAKE_VALVE_BRACKET)),
  TORQUE(
      AT_RIDE_HEIGHT,
      "Tighten all that was undone to its maker's torque; the wheel nuts crosswise.",
      "",
      AxleWork::tightened,
      parts()),
  BRAKE_TEST(
      ON_THE_GROUND,
      "Try the brakes standing, then at a walk, before the road.",
      "A pedal that is soft or sinks: it stays where it is.",
      work ->
          work.newLine(Carries.BRAKE_FLUID)
              || work.changes(BRAKE_VALVE_BRACKET)
              || (work.loadSensingValve() && work.height()),
      parts()),
  PRESSURES(
      TIRES_COLD,
      "Set the cold pressures; teach the sensors and set their threshold; a new figure goes on a"
          + " label at the door.",
      "",
      work -> work.changes(TIRE, WHEEL, PRESSURE_SENSOR) || work.geometry(),
      parts()),
  ALIGNMENT(
      LOADED,
      "Set the alignment on a rack: caster, then camber, toe last, the steering wheel held straight;"
          + " look where the rear axle points.",
      "",
      AxleWork::geometry,
      parts()),
  STEERING_ZERO(
      ON_THE_GROUND,
      "Set the zero of the steering-angle sensor, where there is one.",
      "",
      AxleWork::geometry,
      parts()),
  LAMPS(
      LOADED,
      "Aim the head and fog lamps.",
      "",
      work -> work.geometry() || work.tireSize(),
      parts()),
  DRIVER_ASSISTANCE(
      LOADED,
      "Run the maker's procedure for camera and radar, where there are any.",
      "",
      work -> work.geometry() || work.tireSize(),
      parts()),
  SPEEDOMETER(
      DRIVEN,
      "Hold the speedometer against a measured distance or a satellite receiver, and set it anew.",
      "",
      AxleWork::tireSize,
      parts()),
  BREATHERS_AND_CABLES(
      DRIVEN,
      "Look at breathers, hoses, wires and cables at full lock and with a wheel hanging: nothing"
          + " taut, nothing rubbed.",
      "",
      AxleWork::chassis,
      parts()),
  TIGHTEN_AGAIN(
      DRIVEN_FAR,
      "Tighten the wheel nuts, and all else that was undone, again to the maker's torque.",
      "",
      AxleWork::tightened,
      parts());

  private final WorkState state;
  private final String what;
  private final String caution;
  private final Predicate<AxleWork> called;
  private final Predicate<Part> fits;

  WorkStep(
      WorkState state,
      String what,
      String caution,
      Predicate<AxleWork> called,
      Predicate<Part> fits) {
    this.state = state;
    this.what = what;
    this.caution = caution;
    this.called = called;
    this.fits = fits;
  }

  private static Predicate<Part> parts(PartKind... kinds) {
    return part -> List.of(kinds).contains(part.kind());
  }

  private static Predicate<Part> lines(Carries... contents) {
    return part -> part instanceof FlexibleLine line && List.of(contents).contains(line.carries());
  }

  /** Who may do it. */
  Worker by() {
    return switch (this) {
      case BRAKE_LINES, FLUID_LINES, BRAKE_VALVE, BRAKE_TEST, DRIVER_ASSISTANCE ->
          Worker.LICENSED_SHOP;
      case ALIGNMENT, STEERING_ZERO -> Worker.ALIGNMENT_SHOP;
      case MOUNT_TIRES -> Worker.TIRE_SHOP;
      default -> Worker.FITTER;
    };
  }

  WorkState state() {
    return state;
  }

  String what() {
    return what;
  }

  /** Where the danger is; empty where there is none of its own. */
  String caution() {
    return caution;
  }

  /** Whether a sheet calls for it on an axle. */
  boolean calledFor(AxleWork work) {
    return called.test(work);
  }

  /** Whether it is the step in which a part is fitted or taken off. */
  boolean fits(Part part) {
    return fits.test(part);
  }

  /** Its name as data has it. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
