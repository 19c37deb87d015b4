package trammel.derive;

import trammel.quantity.Quantity;

/** How far a wheel hangs under book height (mm), and on what. */
record Droop(Quantity hang, DroopEnd end) {

  /** What ends the way first, this or another; unknown where either is. */
  Droop orSooner(Droop other) {
    if (!hang.isKnown() || !other.hang.isKnown()) {
      return hang.isKnown() ? other : this;
    }
    return other.hang.value() < hang.value() ? other : this;
  }
}
