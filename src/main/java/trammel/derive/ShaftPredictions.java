package trammel.derive;

import trammel.catalog.ShaftProfile;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Subject;

/** How a prop shaft should stand with everything fitted: what the check works out of it. */
public final class ShaftPredictions {
  private static final Formula PINION =
      new Formula(
          "slope of the pinion",
          "slope as surveyed + turn of the axle + slope of the frame",
          "definition: each positive with the front up");

  private final Derivation derivation;
  private final ShaftProfile shaft;

  ShaftPredictions(Derivation derivation, ShaftProfile shaft) {
    this.derivation = derivation;
    this.shaft = shaft;
  }

  /** The axle it drives and its name. */
  public Subject subject() {
    return Subject.of(shaft.drives(), shaft.shaft().replace(' ', '-'));
  }

  /**
   * Slope of the pinion's axis against level (degrees), positive where it rises toward the front;
   * the vehicle stands on level ground.
   */
  public Quantity pinionSlope() {
    Axle axle = shaft.drives();
    Quantity lift = derivation.ride(axle).proposed();
    return PINION.linear(
        1,
        shaft.pinionSlope(),
        1,
        new AxleTurns(derivation.build).at(axle, lift, true).frontUp(),
        1,
        Rake.sinceSurvey(derivation));
  }

  /** Angle of the joint at gearbox or transfer case (degrees, in space). */
  public Quantity gearboxJoint() {
    return new ShaftFacts(derivation).joints(shaft).output();
  }

  /** Angle of the joint at the axle (degrees, in space). */
  public Quantity axleJoint() {
    return new ShaftFacts(derivation).joints(shaft).pinion();
  }
}
