package trammel.compare;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import trammel.build.MeasuredFile;
import trammel.build.MeasuredFile.BeamAxle;
import trammel.build.MeasuredFile.PropShaft;
import trammel.catalog.AlignmentSpec.Angles;
import trammel.derive.BeamPredictions;
import trammel.derive.Predictions;
import trammel.derive.ShaftPredictions;
import trammel.quantity.Quantity;
import trammel.subject.Position;
import trammel.subject.Subject;

/**
 * A kind of value that can be measured on the finished vehicle, and how each one is matched with
 * its prediction.
 */
public enum Kind {
  /** Hub to fender. */
  HEIGHT(
      "Heights, hub to fender",
      (kind, file, predictions) ->
          file.heights().stream()
              .map(
                  height ->
                      new Pair(
                          kind,
                          Subject.of(height.at()),
                          "",
                          height.height(),
                          predictions.height(height.at())))
              .toList()),
  CAMBER("Camber, top outward positive", angles(Angles::camber, Predictions::camber)),
  CASTER("Caster, axis top rearward positive", angles(Angles::caster, Predictions::caster)),
  TOE("Toe of one wheel, inward positive", angles(Angles::toe, Predictions::toe)),
  PRESSURE(
      "Pressures of rams or air springs, at rest",
      (kind, file, predictions) ->
          file.pressures().stream()
              .map(
                  pressure ->
                      new Pair(
                          kind,
                          Subject.of(pressure.at()),
                          "",
                          pressure.pressure(),
                          predictions.pressure(pressure.at())))
              .toList()),
  GAP(
      "Gaps between tire and vehicle",
      (kind, file, predictions) ->
          file.gaps().stream()
              .map(
                  gap ->
                      new Pair(
                          kind,
                          gap.at(),
                          gap.steer() + ", " + gap.height(),
                          gap.gap(),
                          predictions.gap(gap.wheel(), gap.station(), gap.steer(), gap.height())))
              .toList()),
  BAR_SLOPE(
      "Panhard bar, slope, frame end higher positive",
      axles(BeamAxle::barSlope, BeamPredictions::barSlope)),
  AXLE_SHIFT(
      "Beam axle, sideways shift, to the left positive",
      axles(BeamAxle::shift, BeamPredictions::shift)),
  AXLE_TURN(
      "Beam axle, turn against the frame, pinion's nose up positive",
      axles(BeamAxle::turn, BeamPredictions::turn)),
  LOWER_LINK_SLOPE(
      "Lower links, slope, frame end higher positive",
      axles(BeamAxle::lowerLinkSlope, BeamPredictions::lowerLinkSlope)),
  UPPER_LINK_SLOPE(
      "Upper links, slope, frame end higher positive",
      axles(BeamAxle::upperLinkSlope, BeamPredictions::upperLinkSlope)),
  DRAG_LINK_SLOPE(
      "Drag link, slope, rising to the left positive",
      axles(BeamAxle::dragLinkSlope, BeamPredictions::dragLinkSlope)),
  PINION_SLOPE(
      "Pinion, slope, rising toward the front positive",
      shafts(PropShaft::pinionSlope, ShaftPredictions::pinionSlope)),
  GEARBOX_JOINT(
      "Prop shaft, joint at the gearbox, angle in space",
      shafts(PropShaft::gearboxJoint, ShaftPredictions::gearboxJoint)),
  AXLE_JOINT(
      "Prop shaft, joint at the axle, angle in space",
      shafts(PropShaft::axleJoint, ShaftPredictions::axleJoint));

  /** How what was measured finds its prediction. */
  private interface Matching {
    List<Pair> pairs(Kind kind, MeasuredFile file, Predictions predictions);
  }

  /** What is foretold of a wheel on the rack, by whether its adjusters were set. */
  private interface OnRack {
    Quantity of(Predictions predictions, Position at, boolean adjusted);
  }

  private final String words;

  // A function without state.
  @SuppressWarnings("ImmutableEnumChecker")
  private final Matching matching;

  Kind(String words, Matching matching) {
    this.words = words;
    this.matching = matching;
  }

  /** The measured values of this kind, each with its prediction, known or not. */
  List<Pair> pairs(MeasuredFile file, Predictions predictions) {
    return matching.pairs(this, file, predictions);
  }

  /** One angle of each wheel that was on the rack. */
  private static Matching angles(Function<Angles, Quantity> measured, OnRack predicted) {
    return (kind, file, predictions) ->
        file.alignment().stream()
            .filter(rack -> measured.apply(rack.angles()).isKnown())
            .map(
                rack ->
                    new Pair(
                        kind,
                        Subject.of(rack.at()),
                        rack.adjusted() ? "adjusters set" : "nothing turned",
                        measured.apply(rack.angles()),
                        predicted.of(predictions, rack.at(), rack.adjusted())))
            .toList();
  }

  /** One value of each beam axle that was measured. */
  private static Matching axles(
      Function<BeamAxle, Quantity> measured, Function<BeamPredictions, Quantity> predicted) {
    return (kind, file, predictions) ->
        file.axles().stream()
            .filter(axle -> measured.apply(axle).isKnown())
            .map(
                axle ->
                    new Pair(
                        kind,
                        Subject.of(axle.at()),
                        "",
                        measured.apply(axle),
                        predicted.apply(predictions.beam(axle.at()))))
            .toList();
  }

  /** One value of each prop shaft that was measured. */
  private static Matching shafts(
      Function<PropShaft, Quantity> measured, Function<ShaftPredictions, Quantity> predicted) {
    return (kind, file, predictions) ->
        file.shafts().stream()
            .filter(shaft -> measured.apply(shaft).isKnown())
            .map(
                shaft -> {
                  ShaftPredictions then = predictions.shaft(shaft.shaft());
                  return new Pair(
                      kind, then.subject(), "", measured.apply(shaft), predicted.apply(then));
                })
            .toList();
  }

  /** What it is, for a heading. */
  public String words() {
    return words;
  }

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
