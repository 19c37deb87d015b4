package trammel.compare;

import trammel.quantity.Quantity;

/**
 * One value that would explain what deviates, if it were another.
 *
 * @param input the value as it was read, with its place
 * @param shift how far it would have to be off, in units of its own standard uncertainty
 * @param wanted what it would have to be, in its kept unit
 */
public record Explanation(Quantity input, double shift, double wanted) {
  /** How far off a value may be (standard uncertainties) and still be a likely cause. */
  static final double LIKELY = 3;
}
