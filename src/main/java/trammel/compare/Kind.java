package trammel.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trammel.build.MeasuredFile;
import trammel.derive.Predictions;
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
      java.util.function.Function<MeasuredFile.Rack, Quantity> measured,
      java.util.function.Function<MeasuredFile.Rack, Quantity> predicted) {
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

  /** What it is, for a heading. */
  public String words() {
    return words;
  }

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
