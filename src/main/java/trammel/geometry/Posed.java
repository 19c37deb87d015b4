package trammel.geometry;

import org.hipparchus.CalculusFieldElement;

/** What comes of asking a linkage for a pose: the pose, or the limit that it does not pass. */
public sealed interface Posed<T extends CalculusFieldElement<T>> permits Pose, OutOfReach {}
