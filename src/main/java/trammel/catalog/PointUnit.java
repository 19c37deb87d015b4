package trammel.catalog;

import java.util.Collection;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import trammel.quantity.Dimension;
import trammel.quantity.Quantity;
import trammel.read.QuantityWriter;

/**
 * Finds points that were written in another unit than they were measured in.
 *
 * <p>Coordinates count from the ground under the middle of an axle, and nothing of a vehicle is
 * there: a point whose three numbers are all small is small by its unit.
 */
final class PointUnit {
  /** No survey in inches goes past this far, none in mm stays within (mm); common practice. */
  private static final double INCHES = 60;

  /** The same of one in meters (mm). */
  private static final double METERS = 6;

  /** Points that belong together, enough to tell inches from centimeters. */
  private static final int MANY = 3;

  /** What they reach in inches at the most (mm). */
  private static final double INCHES_OF_MANY = 50;

  /** What they reach in centimeters at the most (mm). */
  private static final double CENTIMETERS_OF_MANY = 130;

  private final SurveyFaults faults;

  PointUnit(SurveyFaults faults) {
    this.faults = faults;
  }

  /** One fault for all the points that belong together, at the first of them. */
  void check(Collection<SurveyPoint> points, String words) {
    double farthest = 0;
    for (SurveyPoint point : points) {
      farthest = Math.max(farthest, point.vector().getNormInf());
    }
    Optional<String> unit = points.size() < MANY ? unit(farthest) : unitOfMany(farthest);
    if (unit.isPresent() && points.size() > 1) {
      Quantity first = points.iterator().next().out();
      faults.at(
          first,
          "is too small: no number of these "
              + words
              + " is greater than "
              + SurveyFaults.length(farthest)
              + "; expected lengths from the ground under the middle of the axle",
          advice(first, unit.get()));
      return;
    }
    for (SurveyPoint point : points) {
      small(point);
    }
  }

  /** A single point in another unit than the rest, or one below the ground. */
  private void small(SurveyPoint point) {
    Vector3D at = point.vector();
    Optional<String> unit = unit(at.getNormInf());
    if (unit.isPresent()) {
      faults.at(
          point.out(),
          "is too small: so near the ground under the middle of the axle there is nothing;"
              + " expected lengths from there",
          advice(point.out(), unit.get()));
    } else if (at.getZ() < 0) {
      faults.at(
          point.up(),
          "lies below the ground; expected a height above the ground",
          "Was it counted from the wheel's center? Add that center's height above the ground.");
    }
  }

  /** Many points reach the wheel or along a link, so that centimeters show too. */
  private static Optional<String> unitOfMany(double farthest) {
    return farthest > INCHES_OF_MANY && farthest <= CENTIMETERS_OF_MANY
        ? Optional.of("centimeters")
        : unit(farthest);
  }

  private static Optional<String> unit(double farthest) {
    if (farthest <= 0 || farthest > INCHES) {
      return Optional.empty();
    }
    return Optional.of(farthest <= METERS ? "meters" : "inches");
  }

  /** How many mm one has. */
  static double size(String unit) {
    return switch (unit) {
      case "meters" -> 1000;
      case "inches" -> 25.4;
      default -> 10;
    };
  }

  /** Asks about a unit, and gives the value in it. */
  static String advice(Quantity value, String unit) {
    return "Was it measured in "
        + unit
        + "? Write the unit it was measured in: here "
        + QuantityWriter.shortest(Dimension.LENGTH, value.value() * size(unit))
        + " would be meant.";
  }
}
