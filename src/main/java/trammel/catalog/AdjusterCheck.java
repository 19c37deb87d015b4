package trammel.catalog;

import java.util.List;
import java.util.Locale;
import trammel.geometry.HardPoint;
import trammel.quantity.Quantity;

/** Finds adjusters that adjust nothing. */
final class AdjusterCheck {
  private final SurveyFaults faults;

  AdjusterCheck(SurveyFaults faults) {
    this.faults = faults;
  }

  void check(List<Adjuster> adjusters) {
    for (Adjuster adjuster : adjusters) {
      means(adjuster);
      if (adjuster.means() == Adjuster.Means.ECCENTRIC) {
        eccentric(adjuster);
      } else {
        straight(adjuster);
      }
    }
  }

  /** What an upper arm brings can move its own joints only. */
  void ofUpperArm(List<Adjuster> adjusters) {
    check(adjusters);
    for (Adjuster adjuster : adjusters) {
      for (HardPoint point : adjuster.moves().points()) {
        if (!point.ofUpperArm()) {
          faults.at(
              adjuster.place(),
              "an adjuster of an upper arm moves the "
                  + point.words()
                  + "; expected a joint of the upper arm",
              "Write it in the vehicle's profile, or correct what it moves.");
        }
      }
    }
  }

  /** What cannot be moved in the way that is said, or in the direction. */
  private void means(Adjuster adjuster) {
    boolean strutTop = adjuster.moves() == Adjuster.Moves.STRUT_TOP;
    boolean length = adjuster.means() == Adjuster.Means.LENGTH;
    boolean shims = adjuster.means() == Adjuster.Means.SHIMS;
    if (adjuster.moves().atKnuckle() && (length || shims)) {
      faults.at(
          adjuster.place(),
          "found a " + words(adjuster) + "; expected an eccentric bolt or a slot there",
          "Write means: eccentric or slot; or correct what it moves.");
    } else if (strutTop && length) {
      faults.at(
          adjuster.place(),
          "found a " + words(adjuster) + ", where no arm is made longer; expected a slot",
          "Write means: slot with from and to; a plate above the strut is a part that raises.");
    } else if (adjuster.toward().isKnown()
        && (length
            || adjuster.means() == Adjuster.Means.ECCENTRIC
            || adjuster.moves().atKnuckle())) {
      faults.at(
          adjuster.toward(),
          "is a direction, which the " + words(adjuster) + " has not; expected none",
          "A slot or shims have one. Take it out.");
    }
  }

  private static String words(Adjuster adjuster) {
    String means = adjuster.means().name().toLowerCase(Locale.ROOT);
    return means + " at the " + adjuster.moves().words();
  }

  private void eccentric(Adjuster adjuster) {
    for (Quantity end : List.of(adjuster.from(), adjuster.to())) {
      if (end.isKnown()) {
        faults.at(
            end,
            "is a shift, which an eccentric does not have; expected its eccentricity alone",
            "Write eccentricity, half its total throw; or means: slot, shims or length.");
        return;
      }
    }
    if (!adjuster.eccentricity().isKnown()) {
      faults.at(
          adjuster.place(),
          "no range for the " + words(adjuster) + "; expected its eccentricity",
          "Add eccentricity, half its total throw; or remove the adjuster.");
    } else if (adjuster.eccentricity().value() <= 0) {
      faults.at(
          adjuster.eccentricity(),
          "leaves the eccentric without a range; expected more than 0 mm",
          "Write half its total throw; or remove the adjuster if its bolt is plain.");
    }
  }

  private void straight(Adjuster adjuster) {
    Quantity from = adjuster.from();
    Quantity to = adjuster.to();
    if (adjuster.eccentricity().isKnown()) {
      faults.at(
          adjuster.eccentricity(),
          "is an eccentricity, and this is not an eccentric; expected from and to",
          "Write means: eccentric, or from and to in its place.");
    } else if (!from.isKnown() || !to.isKnown()) {
      faults.at(
          adjuster.place(),
          "no range for the " + words(adjuster) + "; expected from and to",
          "Add the least shift as from and the greatest as to; or remove the adjuster.");
    } else if (from.value() >= to.value()) {
      faults.at(
          from,
          "is no less than to, which is "
              + SurveyFaults.written(to)
              + ": no range; expected from below to",
          from.value() > to.value()
              ? "Are from and to swapped? From is the least shift: inward is negative."
              : "Write the least and the greatest shift; or remove the adjuster.");
    }
  }
}
