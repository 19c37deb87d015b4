package trammel.derive;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.BuildSheet;
import trammel.catalog.AlignmentSpec;
import trammel.catalog.AxleProfile;
import trammel.catalog.Linkage;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.UpperArm;
import trammel.fact.AdjusterState;
import trammel.fact.Alignment;
import trammel.fact.SideToSide;
import trammel.fact.Standing;
import trammel.fact.ToeThread;
import trammel.quantity.Constants;
import trammel.quantity.Decision;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;
import trammel.subject.Subject;

/** What independent wheels can be aligned to at the proposed height, and what that takes. */
final class AlignmentFacts {
  private static final Formula APART =
      new Formula("difference of the sides", "|left − right|", "definition");
  private static final Formula LEFT =
      new Formula("thread engaged", "engaged as surveyed − change of the tie rod", "definition");
  private static final Formula NEEDED =
      new Formula("thread needed", "1.5 · diameter", "common practice");

  /** A side-to-side limit where the maker states none (degrees). Common practice. */
  private static final Quantity USUAL_SIDE_LIMIT =
      Constants.degrees(0.5).called("usual limit of side to side");

  private final Derivation derivation;
  private final Build build;

  AlignmentFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  void add() {
    for (Axle axle : Axle.values()) {
      AxleProfile profile = build.vehicle().axle(axle);
      boolean arm = build.changes(axle, PartKind.UPPER_ARM, PartKind.ECCENTRIC_BOLT);
      boolean meant = axle == Axle.FRONT || arm || profile.alignment().stated();
      if (!profile.layout().beam() && meant && derivation.corners(axle).touched()) {
        axle(axle, profile, Standing.WORSE_OR_NEW);
      }
    }
  }

  private void axle(Axle axle, AxleProfile profile, Standing standing) {
    Map<Position, WheelAlignment> wheels = new EnumMap<>(Position.class);
    Corners corners = derivation.corners(axle);
    for (Position position : Position.of(axle)) {
      WheelAlignment wheel = corners.alignment(position);
      wheels.put(position, wheel);
      wheel(position, profile, wheel, standing);
    }
    sides(axle, profile, wheels, standing);
    adjusters(axle, profile, wheels, standing);
  }

  private void wheel(
      Position position, AxleProfile profile, WheelAlignment wheel, Standing standing) {
    List<String> parts = new ArrayList<>();
    build
        .after(position)
        .one(PartKind.UPPER_ARM, UpperArm.class)
        .filter(arm -> build.changes(position, PartKind.UPPER_ARM))
        .ifPresent(arm -> parts.add(arm.number()));
    derivation.facts.add(
        new Alignment(
            Subject.of(position),
            standing,
            parts,
            wheel.depth().toString(),
            wheel.camber(),
            wheel.caster(),
            wheel.camberReserve(),
            wheel.casterReserve(),
            wheel.setting(),
            wheel.camberMeans(),
            wheel.casterMeans()));
    Linkage linkage = profile.linkage();
    if (wheel.depth() == WheelAlignment.Depth.SURVEYED) {
      derivation.facts.add(
          new ToeThread(
              Subject.of(position),
              standing,
              parts,
              LEFT.linear(1, linkage.tieRod().engaged(), -1, wheel.tieRod()),
              NEEDED.linear(1.5, linkage.tieRod().thread()),
              wheel.tieRod()));
    }
  }

  private void sides(
      Axle axle, AxleProfile profile, Map<Position, WheelAlignment> wheels, Standing standing) {
    WheelAlignment left = wheels.get(Position.of(axle, Side.LEFT));
    WheelAlignment right = wheels.get(Position.of(axle, Side.RIGHT));
    if (left.depth() == WheelAlignment.Depth.TAPE) {
      return;
    }
    AlignmentSpec spec = profile.alignment();
    derivation.facts.add(
        new SideToSide(
            Subject.of(axle),
            standing,
            List.of(),
            apart(left.camber(), right.camber()),
            apart(left.caster(), right.caster()),
            limit(spec.sideToSideCamber()),
            limit(spec.sideToSideCaster()),
            pull(left, right)));
  }

  private static Quantity limit(Quantity stated) {
    return stated.isKnown() ? stated : USUAL_SIDE_LIMIT;
  }

  private static Quantity apart(Quantity left, Quantity right) {
    boolean turned = left.isKnown() && right.isKnown() && left.value() < right.value();
    return APART.linear(turned ? -1 : 1, left, turned ? 1 : -1, right);
  }

  /** A vehicle pulls to the side of less caster, and to that of more positive camber. */
  private static String pull(WheelAlignment left, WheelAlignment right) {
    if (!left.caster().isKnown() || !right.caster().isKnown()) {
      return "it pulls to the side of less caster";
    }
    return left.caster().value() < right.caster().value()
        ? "it pulls to the left, the side of less caster"
        : "it pulls to the right, the side of less caster";
  }

  private void adjusters(
      Axle axle, AxleProfile profile, Map<Position, WheelAlignment> wheels, Standing standing) {
    boolean turned = wheels.values().stream().anyMatch(WheelAlignment::turned);
    if (standing != Standing.WORSE_OR_NEW || !turned || profile.adjusters().isEmpty()) {
      return;
    }
    BuildSheet.AdjusterState state =
        axle == Axle.FRONT ? build.found().adjusters().front() : build.found().adjusters().rear();
    boolean fitted =
        Position.of(axle).stream()
            .allMatch(
                position ->
                    profile.adjusters().stream()
                        .allMatch(adjuster -> Corners.fitted(build, position, adjuster)));
    boolean renewed =
        Position.of(axle).stream().allMatch(position -> Corners.newBolts(build, position));
    derivation.facts.add(
        new AdjusterState(
            Subject.of(axle),
            standing,
            List.of(),
            renewed ? Decision.MET : free(state),
            Decision.of(fitted && (renewed || state != BuildSheet.AdjusterState.ABSENT)),
            SurveyedAlignment.words(profile.adjusters())));
  }

  private static Decision free(BuildSheet.@Nullable AdjusterState state) {
    if (state == null) {
      return Decision.ABSENT;
    }
    return switch (state) {
      case FREE, ABSENT -> Decision.MET;
      case SEIZED -> Decision.NOT_MET;
      case UNKNOWN -> Decision.ABSENT;
    };
  }
}
