package trammel.derive;

import org.jspecify.annotations.Nullable;

/**
 * One height of a beam axle, both wheels alike, straight ahead, everything as set at the proposed
 * height. Lengths in mm, angles in degrees; null where it is not surveyed or out of reach.
 *
 * @param travel rise of the axle from its proposed height
 * @param caster as a rack would show it
 * @param rollCenter height over the ground, by the panhard bar, on the proposed tires
 * @param shift of the axle from where it was surveyed, positive to the left
 * @param barSlope in front view, positive with the bar's frame end higher
 * @param noseUp turn of the axle, positive with the pinion's nose up
 * @param forward shift of the wheels
 * @param steer of the wheels, straight at the proposed height, positive to the left
 */
public record BeamPoint(
    double travel,
    @Nullable Double caster,
    @Nullable Double rollCenter,
    @Nullable Double shift,
    @Nullable Double barSlope,
    @Nullable Double noseUp,
    @Nullable Double forward,
    @Nullable Double steer) {}
