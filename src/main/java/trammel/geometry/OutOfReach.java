package trammel.geometry;

import org.hipparchus.CalculusFieldElement;

/**
 * A pose that the linkage cannot take.
 *
 * @param limit what would have to give, in a fitter's words
 */
public record OutOfReach<T extends CalculusFieldElement<T>>(String limit) implements Posed<T> {}
