package trammel.catalog;

import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.MASS;
import static trammel.quantity.Dimension.PRESSURE;
import static trammel.quantity.Dimension.RATIO;
import static trammel.quantity.Instrument.CALIPER;
import static trammel.quantity.Instrument.FENDER;
import static trammel.quantity.Instrument.STATED;
import static trammel.quantity.Instrument.TAPE;
import static trammel.quantity.Instrument.WEIGHED;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.geometry.HardPoint;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.Required;
import trammel.subject.Station;

/**
 * What is known of one axle of a vehicle type.
 *
 * @param rating the most the axle may carry
 * @param bookLoad what it carries in the book state
 * @param placard cold pressure on the door label
 * @param book part numbers of what the maker fitted here
 * @param fenderHeight hub center to fender edge in the book state
 * @param springMotionRatio spring travel over wheel travel
 * @param treadCover how far the body covers outboard of the hub face at the top of the tire
 * @param stations what is known of each clearance station of a wheel of this axle
 * @param alignment what a wheel alignment must come to
 * @param adjusters what sets camber and caster
 * @param linkage the surveyed linkage of an independent wheel
 * @param location what holds a beam axle
 * @param support what carries its load and follows its wheels
 */
public record AxleProfile(
    @Required Layout layout,
    @Required Springs springs,
    boolean heightControlled,
    @Measured(value = LENGTH, by = STATED, how = "maker's table", min = 900, max = 2500)
        Quantity track,
    @Measured(value = MASS, by = STATED, how = "read the rating plate", min = 300, max = 6000)
        Quantity rating,
    @Measured(value = MASS, by = WEIGHED, how = "weigh the axle", min = 200, max = 6000)
        Quantity bookLoad,
    @Measured(
            value = PRESSURE,
            by = STATED,
            how = "read the label on the door",
            min = 120,
            max = 900)
        Quantity placard,
    List<String> book,
    @Required Hub hub,
    Brake brake,
    @Measured(value = LENGTH, by = FENDER, how = "hub center to fender edge", min = 250, max = 900)
        Quantity fenderHeight,
    @Measured(value = LENGTH, by = TAPE, how = "stop to its seat at rest", min = 0, max = 350)
        Quantity bumpTravel,
    @Measured(value = LENGTH, by = TAPE, how = "rest to hanging", min = 0, max = 400)
        Quantity droopTravel,
    @Measured(
            value = RATIO,
            by = STATED,
            how = "spring travel for 50 mm at the wheel",
            min = 0.2,
            max = 1.5)
        Quantity springMotionRatio,
    SpringSeat springSeat,
    @Measured(
            value = LENGTH,
            by = TAPE,
            how = "straightedge down the fender to the hub face",
            min = -100,
            max = 400)
        Quantity treadCover,
    @Measured(
            value = LENGTH,
            by = TAPE,
            how = "tread to the nearest line, spring or fender",
            min = 0,
            max = 300)
        Quantity chainRoom,
    Map<Station, StationProfile> stations,
    AlignmentSpec alignment,
    List<Adjuster> adjusters,
    Linkage linkage,
    BeamLocation location,
    Support support) {

  /** The same axle with the motion ratio that its springs were found to have. */
  public AxleProfile withSpringMotionRatio(Quantity found) {
    return new AxleProfile(
        layout,
        springs,
        heightControlled,
        track,
        rating,
        bookLoad,
        placard,
        book,
        hub,
        brake,
        fenderHeight,
        bumpTravel,
        droopTravel,
        found,
        springSeat,
        treadCover,
        chainRoom,
        stations,
        alignment,
        adjusters,
        linkage,
        location,
        support);
  }

  /** How the wheels are carried. */
  public enum Layout {
    DOUBLE_WISHBONE,
    STRUT,
    MULTI_LINK,
    TRAILING_ARM,
    BEAM;

    /** Whether both wheels share one axle beam. */
    public boolean beam() {
      return this == BEAM;
    }

    /** The joints that a wheel is solved from; those of two wishbones for what has no model. */
    public List<HardPoint> joints() {
      return this == STRUT ? HardPoint.ofStrut() : HardPoint.ofWishbones();
    }

    /** Whether a wheel carried so is solved from its hard points. */
    public boolean solved() {
      return this == DOUBLE_WISHBONE || this == STRUT;
    }

    /** In a fitter's words. */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** What carries the load. */
  public enum Springs {
    COIL,
    LEAF,
    TORSION_BAR,
    AIR,
    HYDROPNEUMATIC
  }

  /**
   * What the wheel must clear inside, measured from the hub face and the hub's center.
   *
   * @param caliperRadius the radius that the caliper needs
   * @param caliperFace how far the caliper stands outboard of the hub face
   * @param capDiameter the hub or locking-hub cap that must go through the bore
   */
  public record Brake(
      @Measured(
              value = LENGTH,
              by = TAPE,
              how = "hub center to the caliper's outermost point",
              min = 80,
              max = 350)
          Quantity caliperRadius,
      @Measured(
              value = LENGTH,
              by = CALIPER,
              how = "straightedge over the hub face to the caliper",
              min = -80,
              max = 100)
          Quantity caliperFace,
      @Measured(value = LENGTH, by = CALIPER, how = "caliper over the hub cap", min = 20, max = 260)
          Quantity capDiameter) {}

  /**
   * Where a coil spring sits.
   *
   * @param pinDiameter the pilot that the coil or a spacer's bore goes over
   * @param cupDiameter the cup that a spring or a spacer's flange goes into
   * @param end the shape the seat was made for
   */
  public record SpringSeat(
      @Measured(
              value = LENGTH,
              by = CALIPER,
              how = "caliper over the seat's pilot",
              min = 0,
              max = 300)
          Quantity pinDiameter,
      @Measured(
              value = LENGTH,
              by = CALIPER,
              how = "caliper across the seat's cup",
              min = 0,
              max = 400)
          Quantity cupDiameter,
      SuspensionPart.@Nullable EndShape end) {}
}
