package trammel.read;

import java.util.OptionalDouble;
import trammel.quantity.Unit;

/**
 * A value as somebody wrote it.
 *
 * @param value the value, in the dimension's kept unit
 * @param expanded its expanded uncertainty (k = 2) in the same unit; empty where none is written
 * @param unit the unit it was written in; of two (degrees and minutes) the first
 */
public record Reading(double value, OptionalDouble expanded, Unit unit) {}
