package trammel.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import trammel.build.MeasuredFile;
import trammel.build.MeasuredFile.BeamAxle;
import trammel.build.MeasuredFile.PropShaft;
import trammel.derive.BeamPredictions;
import trammel.derive.Predictions;
import trammel.derive.ShaftPredictions;
import trammel.quantity.Quantity;
import trammel.subject.Subject;

/**
 * A kind of value that can be measured on the finished vehicle, and how each one is matched with
 * its prediction.
 */
public enum Kind {
  /** Hub to fender. */
  HEIGHT("Heights, hub to fender") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return file.heights().stream()
          .map(
              height ->
                  new Pair(
                      this,
                      Subject.of(height.at()),
                      "",
                      height.height(),
                      predictions.height(height.at())))
          .toList();
    }
  },
  CAMBER("Camber, top outward positive") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return angles(
          file,
          rack -> rack.angles().camber(),
          rack -> predictions.camber(rack.at(), rack.adjusted()));
    }
  },
  CASTER("Caster, axis top rearward positive") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return angles(
          file,
          rack -> rack.angles().caster(),
          rack -> predictions.caster(rack.at(), rack.adjusted()));
    }
  },
  TOE("Toe of one wheel, inward positive") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return angles(
          file, rack -> rack.angles().toe(), rack -> predictions.toe(rack.at(), rack.adjusted()));
    }
  },
  PRESSURE("Pressures of rams or air springs, at rest") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return file.pressures().stream()
          .map(
              pressure ->
                  new Pair(
                      this,
                      Subject.of(pressure.at()),
                      "",
                      pressure.pressure(),
                      predictions.pressure(pressure.at())))
          .toList();
    }
  },
  GAP("Gaps between tire and vehicle") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return file.gaps().stream()
          .map(
              gap ->
                  new Pair(
                      this,
                      gap.at(),
                      gap.steer() + ", " + gap.height(),
                      gap.gap(),
                      predictions.gap(gap.wheel(), gap.station(), gap.steer(), gap.height())))
          .toList();
    }
  },
  BAR_SLOPE("Panhard bar, slope, frame end higher positive") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return axles(file, predictions, BeamAxle::barSlope, BeamPredictions::barSlope);
    }
  },
  AXLE_SHIFT("Beam axle, sideways shift, to the left positive") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return axles(file, predictions, BeamAxle::shift, BeamPredictions::shift);
    }
  },
  AXLE_TURN("Beam axle, turn against the frame, pinion's nose up positive") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return axles(file, predictions, BeamAxle::turn, BeamPredictions::turn);
    }
  },
  LOWER_LINK_SLOPE("Lower links, slope, frame end higher positive") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return axles(file, predictions, BeamAxle::lowerLinkSlope, BeamPredictions::lowerLinkSlope);
    }
  },
  UPPER_LINK_SLOPE("Upper links, slope, frame end higher positive") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return axles(file, predictions, BeamAxle::upperLinkSlope, BeamPredictions::upperLinkSlope);
    }
  },
  DRAG_LINK_SLOPE("Drag link, slope, rising to the left positive") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return axles(file, predictions, BeamAxle::dragLinkSlope, BeamPredictions::dragLinkSlope);
    }
  },
  PINION_SLOPE("Pinion, slope, rising toward the front positive") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return shafts(file, predictions, PropShaft::pinionSlope, ShaftPredictions::pinionSlope);
    }
  },
  GEARBOX_JOINT("Prop shaft, joint at the gearbox, angle in space") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return shafts(file, predictions, PropShaft::gearboxJoint, ShaftPredictions::gearboxJoint);
    }
  },
  AXLE_JOINT("Prop shaft, joint at the axle, angle in space") {
    @Override
    List<Pair> pairs(MeasuredFile file, Predictions predictions) {
      return shafts(file, predictions, PropShaft::axleJoint, ShaftPredictions::axleJoint);
    }
  };

  private final String words;

  Kind(String words) {
    this.words = words;
  }

  /** The measured values of this kind, each with its prediction, known or not. */
  abstract List<Pair> pairs(MeasuredFile file, Predictions predictions);

  /** One angle of each wheel that was on the rack. */
  List<Pair> angles(
      MeasuredFile file,
      Function<MeasuredFile.Rack, Quantity> measured,
      Function<MeasuredFile.Rack, Quantity> predicted) {
    List<Pair> pairs = new ArrayList<>();
    for (MeasuredFile.Rack rack : file.alignment()) {
      if (measured.apply(rack).isKnown()) {
        pairs.add(
            new Pair(
                this,
                Subject.of(rack.at()),
                rack.adjusted() ? "adjusters set" : "nothing turned",
                measured.apply(rack),
                predicted.apply(rack)));
      }
    }
    return pairs;
  }

  /** One value of each beam axle that was measured. */
  List<Pair> axles(
      MeasuredFile file,
      Predictions predictions,
      Function<BeamAxle, Quantity> measured,
      Function<BeamPredictions, Quantity> predicted) {
    return file.axles().stream()
        .filter(axle -> measured.apply(axle).isKnown())
        .map(
            axle ->
                new Pair(
                    this,
                    Subject.of(axle.at()),
                    "",
                    measured.apply(axle),
                    predicted.apply(predictions.beam(axle.at()))))
        .toList();
  }

  /** One value of each prop shaft that was measured. */
  List<Pair> shafts(
      MeasuredFile file,
      Predictions predictions,
      Function<PropShaft, Quantity> measured,
      Function<ShaftPredictions, Quantity> predicted) {
    List<Pair> pairs = new ArrayList<>();
    for (PropShaft shaft : file.shafts()) {
      if (measured.apply(shaft).isKnown()) {
        ShaftPredictions then = predictions.shaft(shaft.shaft());
        pairs.add(new Pair(this, then.subject(), "", measured.apply(shaft), predicted.apply(then)));
      }
    }
    return pairs;
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
