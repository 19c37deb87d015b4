package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.BuildSheet;
import trammel.build.Equipment;
import trammel.build.Trial;
import trammel.catalog.AxleProfile;
import trammel.catalog.PartKind;
import trammel.catalog.StationProfile;
import trammel.catalog.StationProfile.PosedGap;
import trammel.fact.Clearance;
import trammel.fact.Standing;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Position;
import trammel.subject.Side;
import trammel.subject.Station;
import trammel.subject.Station.FixedTo;
import trammel.subject.Station.Height;
import trammel.subject.Station.Steer;
import trammel.subject.Subject;

/** What is left of each posed gap once the proposed tire stands where the measured one stood. */
final class ClearanceFacts {
  private static final Formula CHANGE =
      new Formula(
          "change of gap",
          "−cₑ·Δedge − cᵣ·Δradius + c_z·lift",
          "StationModel: coefficients by station");
  private static final Formula GAP =
      new Formula(
          "gap",
          "gap measured + change − c_z·bump still to come ± model + c_z·what a taller stop takes",
          "StationModel: coefficients by station");
  private static final Formula DIFFERENCE =
      new Formula("difference", "new − measured with", "definition");

  private final Derivation derivation;
  private final Build build;
  private final HeightFacts heights;
  private final SweptGaps sweptGaps;
  private final @Nullable EnvelopeRooms envelopes;
  private final Map<Position, WheelEnd> book = new EnumMap<>(Position.class);

  ClearanceFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
    this.heights = derivation.heights();
    this.sweptGaps = new SweptGaps(derivation, heights);
    this.envelopes = build.found().registeredAt() == null ? null : new EnvelopeRooms(derivation);
  }

  void add() {
    for (Position position : Position.running()) {
      AxleProfile axle = build.vehicle().axle(position.axle().orElseThrow());
      Map<Station, SweptGaps.Swept> swept = sweptGaps.at(position, axle);
      for (Station station : Station.values()) {
        StationProfile profile = axle.stations().get(station);
        boolean there = profile == null || profile.none() == null;
        if (station.belongsTo(position.axle().orElseThrow()) && there) {
          boolean measured = measured(position, station);
          station(position, station, profile, measured ? null : swept.get(station));
        }
      }
    }
  }

  /** Whether the sheet has a gap of its own here, which outranks what a survey gives. */
  private boolean measured(Position position, Station station) {
    Subject at = Subject.of(position, station.toString());
    return build.measurements().gaps().stream()
        .anyMatch(
            gap ->
                gap.at().equals(at)
                    && station.lock().shownBy(gap.steer(), position.side().orElseThrow()));
  }

  /**
   * A gap with what it was measured on.
   *
   * @param lifted how much higher than the book the suspension stood at rest
   */
  record Measured(Quantity gap, Steer steer, Height height, WheelEnd with, Quantity lifted) {}

  private void station(
      Position position,
      Station station,
      @Nullable StationProfile profile,
      SweptGaps.@Nullable Swept swept) {
    StationModel model = StationModel.of(station);
    WheelEnd before = derivation.before(position);
    WheelEnd after = derivation.after(position);
    boolean body = profile != null && profile.fixedTo() == FixedTo.BODY;
    boolean moved =
        !build.trial().equals(Trial.NONE)
            || build.changes(position, PartKind.TIRE, PartKind.WHEEL, PartKind.WHEEL_SPACER);
    Quantity raise = body ? heights.bodyLift(position) : Constants.mm(0);
    Quantity change =
        swept != null
            ? swept.change()
            : moved ? change(model, station, after, before, raise) : raise;
    Subject subject = Subject.of(position, station.toString());
    Posed posed =
        swept != null
            ? new Posed(swept.gap(), swept.pose())
            : worst(position, station, model, profile, after, raise);
    boolean noWorse = change.isKnown() ? change.atLeast(Constants.mm(0)).isMet() : !moved;
    Standing standing =
        !noWorse
            ? Standing.WORSE_OR_NEW
            : build.soundAt(subject) ? Standing.SOUND_AND_NO_WORSE : Standing.NO_WORSE;
    String obstacle =
        profile != null && profile.obstacle() != null ? profile.obstacle() : station.obstacle();
    String trim =
        profile == null || profile.trim() == null
            ? "unknown"
            : profile.trim().name().toLowerCase(Locale.ROOT);
    Clearance found =
        new Clearance(
            subject,
            standing,
            after.numbers(),
            station,
            swept != null ? swept.surface() : station.surface().toString(),
            obstacle,
            posed.gap,
            change,
            posed.words,
            trim,
            Constants.number(model.perEdge()),
            Constants.number(model.perRadius()));
    derivation.facts.add(found);
    if (envelopes != null) {
      envelopes.add(position, found);
    }
  }

  /** The gap in the pose that decides, and that pose in words. */
  private record Posed(Quantity gap, String words) {}

  private Posed worst(
      Position position,
      Station station,
      StationModel model,
      @Nullable StationProfile profile,
      WheelEnd after,
      Quantity raise) {
    List<Posed> posed = new ArrayList<>();
    List<Measured> gaps = gaps(position, station, profile);
    CornerTravel now = derivation.ends(position, Stage.PROPOSED);
    CornerTravel then = derivation.ends(position, Stage.FOUND);
    boolean bumpMeasured = gaps.stream().anyMatch(gap -> gap.height == Height.BUMP_STOP);
    for (Measured measured : gaps) {
      Quantity change = change(model, station, after, measured.with, raise);
      Quantity unsure = model.uncertainty(station, change);
      Quantity gap = GAP.linear(new double[] {1, 1, 1}, measured.gap, change, unsure);
      boolean otherStop =
          model.perBump() > 0
              && measured.height == Height.BUMP_STOP
              && build.changes(position, PartKind.BUMP_STOP);
      if (otherStop) {
        gap =
            GAP.linear(1, gap, model.perBump(), then.stopRise(), -model.perBump(), now.stopRise());
      }
      posed.add(new Posed(gap, pose(measured.steer, measured.height)));
      if (measured.height == Height.REST && model.perBump() > 0 && !bumpMeasured) {
        posed.add(
            new Posed(
                GAP.linear(
                    new double[] {1, 1, 1, -model.perBump()},
                    measured.gap,
                    change,
                    unsure,
                    now.stopRise()),
                pose(measured.steer, Height.BUMP_STOP)));
      }
    }
    if (posed.isEmpty()) {
      Steer steer = lock(station, position);
      Quantity unknown =
          Figures.missing(
              LENGTH,
              "gap at the " + station.toString().replace('-', ' '),
              "nobody has measured it in a pose that counts",
              Instrument.LOCK_GAP,
              "measure the gap to the "
                  + station.obstacle()
                  + " at "
                  + position.toString().replace('-', ' ')
                  + ", steering "
                  + steer
                  + ", at rest");
      return new Posed(unknown, pose(steer, Height.REST));
    }
    Posed worst = posed.get(0);
    for (Posed next : posed) {
      if (worse(next.gap, worst.gap)) {
        worst = next;
      }
    }
    return worst;
  }

  /**
   * A gap that is certainly too small outweighs one that is absent; otherwise the smaller, at the
   * end of its uncertainty.
   */
  private static boolean worse(Quantity next, Quantity now) {
    if (!now.isKnown()) {
      return next.isKnown() && next.atLeast(Constants.mm(0)).isBroken();
    }
    if (!next.isKnown()) {
      return !now.atLeast(Constants.mm(0)).isBroken();
    }
    return next.value() - next.expanded() < now.value() - now.expanded();
  }

  /** The gaps of a station that count: the sheet's, or else the profile's. */
  List<Measured> gaps(Position position, Station station, @Nullable StationProfile profile) {
    Side side = position.side().orElseThrow();
    List<Measured> found = new ArrayList<>();
    for (BuildSheet.Gap gap : build.measurements().gaps()) {
      if (gap.at().equals(Subject.of(position, station.toString()))
          && station.lock().shownBy(gap.steer(), side)) {
        found.add(
            new Measured(
                gap.gap(),
                gap.steer(),
                gap.height(),
                with(position, gap),
                gap.lifted().isKnown() ? gap.lifted() : NOT_LIFTED));
      }
    }
    if (found.isEmpty() && profile != null) {
      for (PosedGap gap : profile.gaps()) {
        Steer steer = side == Side.LEFT ? gap.steer() : gap.steer().mirrored();
        if (station.lock().shownBy(steer, side)) {
          found.add(new Measured(gap.gap(), steer, gap.height(), with(position, gap), NOT_LIFTED));
        }
      }
    }
    return found;
  }

  /** Nobody has said that it stood higher than otherwise. */
  static final Quantity NOT_LIFTED = Constants.mm(0).called("no lift");

  /**
   * The wheel a gap of the sheet was measured with: the parts it names, else those of its state.
   */
  private WheelEnd with(Position position, BuildSheet.Gap gap) {
    if (gap.with().isEmpty()) {
      return gap.state() == BuildSheet.State.BOOK ? book(position) : derivation.before(position);
    }
    Equipment equipment = Equipment.NONE;
    for (String number : gap.with()) {
      equipment = equipment.with(build.measuredWith().get(number));
    }
    return new WheelEnd(equipment, derivation.figures);
  }

  /** The wheel the profile's gaps were measured with. */
  private WheelEnd book(Position position) {
    return book.computeIfAbsent(position, p -> new WheelEnd(build.bookAt(p), derivation.figures));
  }

  /** The wheel a gap of the profile was measured with: the parts it names, else the book's. */
  private WheelEnd with(Position position, PosedGap gap) {
    if (gap.wheel() == null && gap.tire() == null) {
      return book(position);
    }
    Equipment equipment = build.bookAt(position);
    for (String number : Arrays.asList(gap.wheel(), gap.tire())) {
      if (number != null) {
        equipment = equipment.with(build.measuredWith().get(number));
      }
    }
    return new WheelEnd(equipment, derivation.figures);
  }

  /** What other wheels and a raised body do to a gap. */
  static Quantity change(
      StationModel model, Station station, WheelEnd now, WheelEnd then, Quantity raise) {
    Quantity edge = Constants.mm(0);
    if (station.surface().outer()) {
      edge = DIFFERENCE.linear(1, now.outer, -1, then.outer);
    } else if (station.surface().inner()) {
      edge = DIFFERENCE.linear(1, now.inner, -1, then.inner);
    }
    Quantity radius = DIFFERENCE.linear(1, now.radius, -1, then.radius);
    return CHANGE.linear(
        -model.perEdge(), edge, -model.perRadius(), radius, model.perBump(), raise);
  }

  private static Steer lock(Station station, Position position) {
    boolean left = position.side().orElseThrow() == Side.LEFT;
    return switch (station.lock()) {
      case OWN -> left ? Steer.FULL_LEFT : Steer.FULL_RIGHT;
      case OPPOSITE -> left ? Steer.FULL_RIGHT : Steer.FULL_LEFT;
      case STRAIGHT, ANY -> Steer.STRAIGHT;
    };
  }

  /** A pose in words. */
  static String pose(Steer steer, Height height) {
    String lock =
        steer == Steer.STRAIGHT
            ? "Straight ahead"
            : steer == Steer.FULL_LEFT ? "Full left lock" : "Full right lock";
    return lock
        + switch (height) {
          case REST -> ", at rest";
          case BUMP_STOP -> ", on the bump stop";
          case DROOP -> ", hanging";
        };
  }
}
