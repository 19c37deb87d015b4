package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hipparchus.analysis.differentiation.Gradient;
import org.jspecify.annotations.Nullable;
import trammel.catalog.Adjuster;
import trammel.catalog.AlignmentSpec;
import trammel.catalog.AlignmentSpec.Angles;
import trammel.derive.WheelAlignment.Depth;
import trammel.geometry.AlignmentMap;
import trammel.geometry.AngleWindow;
import trammel.geometry.Overlap;
import trammel.geometry.Pose;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;

/**
 * Alignment from hard points: what the rack showed in one state, plus what the linkage makes of the
 * way to another. The survey's error mostly cancels in that change.
 */
final class SurveyedAlignment {
  /** Which of a corner model's ride heights is which. */
  static final int AS_SHOWN = 0;

  static final int PROPOSED = 1;

  private static final Formula CHANGE =
      new Formula(
          "change by the linkage",
          "angle at the proposed height and setting − angle as shown",
          "closed form from hard points, toe reset");
  private static final Formula LEFT_ALONE =
      new Formula(
          "change by the linkage",
          "angle at the proposed height − angle as shown",
          "closed form from hard points; nothing is turned, the tie rod keeps its length");
  private static final Formula AFTER =
      new Formula("angle as proposed", "as the rack showed + change + rake", "definition");
  private static final Formula BUMP_STEER =
      new Formula(
          "change of toe by the linkage",
          "toe at the proposed height − toe as shown",
          "closed form from hard points; the tie rod keeps its length");
  private static final Formula TOE_AFTER =
      new Formula("toe as proposed", "as the rack showed + change", "definition");
  private static final Formula TIE_ROD =
      new Formula(
          "change of the tie rod",
          "length that gives the toe wanted − length as surveyed",
          "closed form from hard points, toe reset");

  private final CornerModel model;
  private final Variables variables;
  private final Angles shown;
  private final AlignmentSpec spec;
  private final Quantity rake;

  /**
   * @param variables those of the model, or their like for the other side
   * @param shown what the rack showed, at the model's first ride height
   * @param rake what the body's change of attitude adds to caster
   */
  SurveyedAlignment(
      CornerModel model, Variables variables, Angles shown, AlignmentSpec spec, Quantity rake) {
    this.model = model;
    this.variables = variables;
    this.shown = shown;
    this.spec = spec;
    this.rake = rake;
  }

  /** What of the solution takes time, and is the same for both sides of one state. */
  record Solved(
      AlignmentMap map,
      AngleWindow camberWindow,
      AngleWindow casterWindow,
      double camberOffset,
      double casterOffset,
      List<AlignmentMap.Angles> outline,
      AlignmentMap.Angles best,
      Overlap overlap,
      boolean turned,
      Pose<Gradient> before,
      Pose<Gradient> after) {}

  /** What the body's change of attitude adds to caster (degrees). */
  double rake() {
    return rake.value();
  }

  /** The toe of one wheel to set (degrees). */
  double toe() {
    return spec.toe().preferred().isKnown() ? spec.toe().preferred().value() : 0;
  }

  /** Solves for the best setting; empty where the linkage does not reach the ride height. */
  Optional<Solved> solve() {
    double shownToe = shown.toe().isKnown() ? shown.toe().value() : toe();
    Pose<Gradient> before = model.pose(false, List.of(), AS_SHOWN, shownToe);
    if (before == null) {
      return Optional.empty();
    }
    double camberOffset = shown.camber().value() - before.camber().getValue();
    double casterOffset = shown.caster().value() - before.caster().getValue() + rake.value();
    AngleWindow camber = window(spec.camber(), camberOffset);
    AngleWindow caster = window(spec.caster(), casterOffset);
    AlignmentMap map =
        new AlignmentMap(model.plain(), model.arm(), model.ranges(), model.travel(PROPOSED), toe());
    List<AlignmentMap.Angles> outline = map.outline();
    Optional<AlignmentMap.Angles> best = map.best(camber, caster);
    Optional<AlignmentMap.Angles> untouched = map.at(new double[model.ranges().size()]);
    if (outline.isEmpty() || best.isEmpty() || untouched.isEmpty()) {
      return Optional.empty();
    }
    Pose<Gradient> after = model.pose(true, best.get().settings(), PROPOSED, toe());
    if (after == null) {
      return Optional.empty();
    }
    boolean turned =
        camber.reserve(untouched.get().camber()) < 0
            || caster.reserve(untouched.get().caster()) < 0;
    return Optional.of(
        new Solved(
            map,
            camber,
            caster,
            camberOffset,
            casterOffset,
            outline,
            best.get(),
            Overlap.of(outline, best.get(), camber, caster),
            turned,
            before,
            after));
  }

  private static AngleWindow window(AlignmentSpec.Window window, double offset) {
    double from = window.from().value() - offset;
    double to = window.to().value() - offset;
    double preferred =
        window.preferred().isKnown() ? window.preferred().value() - offset : (from + to) / 2;
    return new AngleWindow(from, preferred, to);
  }

  /** The alignment as quantities. */
  WheelAlignment quantities(Solved solved) {
    Gradient camberChange = solved.after.camber().subtract(solved.before.camber());
    Gradient casterChange = solved.after.caster().subtract(solved.before.caster());
    double camberBefore = solved.before.camber().getValue();
    double casterBefore = solved.before.caster().getValue();
    Quantity camber =
        after(shown.camber(), solved.best.camber() - camberBefore, camberChange, null);
    Quantity caster =
        after(shown.caster(), solved.best.caster() - casterBefore, casterChange, rake);
    Quantity camberEnd =
        after(shown.camber(), solved.overlap.camber().camber() - camberBefore, camberChange, null);
    Quantity casterEnd =
        after(shown.caster(), solved.overlap.caster().caster() - casterBefore, casterChange, rake);
    return new WheelAlignment(
        Depth.SURVEYED,
        camber.called("camber at the best setting"),
        caster.called("caster at the best setting"),
        WheelAlignment.reserve(camberEnd, spec.camber(), solved.overlap.camberLow()),
        solved.overlap.camberLow(),
        WheelAlignment.reserve(casterEnd, spec.caster(), solved.overlap.casterLow()),
        solved.overlap.casterLow(),
        setting(model.adjusters(), solved.best.settings()),
        solved.turned,
        variables.quantity(
            TIE_ROD, LENGTH, solved.after.tieRodLength().subtract(solved.before.tieRodLength())));
  }

  /**
   * Camber, then caster, as proposed with nothing turned, the tie rod as long as it was on the
   * rack: the wheel stands at the toe that bump steer has left it; empty where that is out of
   * reach.
   */
  List<Quantity> untouched(Solved solved) {
    Pose<Gradient> pose = leftAlone(solved);
    if (pose == null) {
      return List.of();
    }
    Quantity camber =
        variables.quantity(LEFT_ALONE, ANGLE, pose.camber().subtract(solved.before.camber()));
    Quantity caster =
        variables.quantity(LEFT_ALONE, ANGLE, pose.caster().subtract(solved.before.caster()));
    return List.of(
        AFTER.linear(1, shown.camber(), 1, camber).called("camber with nothing turned"),
        AFTER.linear(1, shown.caster(), 1, caster, 1, rake).called("caster with nothing turned"));
  }

  /** The wheel at the proposed height with nothing turned; null where that is out of reach. */
  private @Nullable Pose<Gradient> leftAlone(Solved solved) {
    List<Double> nothing = Collections.nCopies(model.ranges().size(), 0.0);
    return model.steered(nothing, PROPOSED, solved.before.tieRodLength());
  }

  /**
   * Toe of this wheel as proposed with nothing turned, the tie rod as long as it was on the rack:
   * what the rack showed and the bump steer of the way; empty where that is out of reach.
   */
  Optional<Quantity> untouchedToe(Solved solved) {
    Pose<Gradient> pose = leftAlone(solved);
    if (pose == null) {
      return Optional.empty();
    }
    Gradient change = pose.toe().subtract(solved.before.toe());
    return Optional.of(
        TOE_AFTER
            .linear(
                1, shown.toe(), 1, variables.quantity(BUMP_STEER, ANGLE, change.getValue(), change))
            .called("toe with nothing turned"));
  }

  private Quantity after(
      Quantity from, double change, Gradient derivatives, @Nullable Quantity more) {
    Quantity changed = variables.quantity(CHANGE, ANGLE, change, derivatives);
    return more == null
        ? AFTER.linear(1, from, 1, changed)
        : AFTER.linear(1, from, 1, changed, 1, more);
  }

  /** A setting in the units that a fitter turns. */
  static String setting(List<Adjuster> adjusters, List<Double> settings) {
    if (adjusters.isEmpty()) {
      return "nothing can be set";
    }
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < adjusters.size(); i++) {
      words.append(i == 0 ? "" : "; ").append(setting(adjusters.get(i), settings.get(i)));
    }
    return words.toString();
  }

  private static String setting(Adjuster adjuster, double shift) {
    String where = adjuster.moves().words();
    boolean length = adjuster.means() == Adjuster.Means.LENGTH;
    String way = length ? shift < 0 ? "shorter" : "longer" : way(adjuster, shift);
    if (Math.abs(shift) < 0.05) {
      return where + " as it is";
    }
    String millimeters = Math.round(Math.abs(shift) * 10) / 10.0 + " mm";
    if (adjuster.means() != Adjuster.Means.ECCENTRIC) {
      return where + " " + millimeters + " " + way;
    }
    double share = Math.min(1, Math.abs(shift) / adjuster.eccentricity().value());
    long turned = Math.round(Math.toDegrees(Math.asin(share)));
    return where + ": cam turned " + turned + "° " + way + " (" + millimeters + ")";
  }

  /** Which way in plan a shift goes. */
  private static String way(Adjuster adjuster, double shift) {
    double toward = Math.toRadians(adjuster.toward().isKnown() ? adjuster.toward().value() : 0);
    double out = Math.cos(toward) * shift;
    double fore = Math.sin(toward) * shift;
    String across = out < 0 ? "inward" : "outward";
    String along = fore < 0 ? "rearward" : "forward";
    if (Math.abs(fore) < AS_GOOD_AS_STRAIGHT * Math.abs(shift)) {
      return across;
    }
    return Math.abs(out) < AS_GOOD_AS_STRAIGHT * Math.abs(shift) ? along : along + " and " + across;
  }

  /** Sine of 10°: a slot that runs so nearly straight is told as straight. */
  private static final double AS_GOOD_AS_STRAIGHT = 0.17;

  /** What has to be known before anything can be solved. */
  static List<Quantity> needed(AlignmentSpec spec, Angles shown) {
    return List.of(
        shown.camber(),
        shown.caster(),
        spec.camber().from(),
        spec.camber().to(),
        spec.caster().from(),
        spec.caster().to());
  }

  /** The adjusters in words. */
  static String words(List<Adjuster> adjusters) {
    return adjusters.stream()
        .map(adjuster -> adjuster.moves().words() + " (" + means(adjuster) + ")")
        .collect(Collectors.joining(", "));
  }

  private static String means(Adjuster adjuster) {
    return switch (adjuster.means()) {
      case ECCENTRIC -> "eccentric bolt";
      case SHIMS -> "shims";
      case SLOT -> "slotted plate";
      case LENGTH -> "thread";
    };
  }
}
