package trammel.designation;

import java.util.OptionalInt;

/** The dimensions that a tire designation states before its construction letter. */
public sealed interface TireSize {
  /** The nominal section width (mm), on the theoretical rim. */
  double sectionWidthMillimeters();

  /**
   * Width in millimeters and aspect ratio in percent: {@code 285/70}.
   *
   * @param width nominal section width (mm), 105 (a temporary spare) to 395
   * @param statedAspect section height in percent of the width, 25 to 100, if the mark states it
   */
  record Metric(int width, OptionalInt statedAspect) implements TireSize {
    /** Throws {@link IllegalArgumentException} for dimensions no tire has. */
    public Metric {
      if (width < 105 || width > 395) {
        throw Unreadable.found(
            "section width " + width, "105 to 395 mm", "Read the three digits before the slash");
      }
      int aspect = statedAspect.orElse(100);
      if (aspect < 25 || aspect > 100) {
        throw Unreadable.found(
            "aspect ratio " + aspect, "25 to 100", "Read the two digits after the slash");
      }
    }

    @Override
    public double sectionWidthMillimeters() {
      return width;
    }

    @Override
    public String toString() {
      return statedAspect.isPresent() ? width + "/" + statedAspect.getAsInt() : width + "";
    }
  }

  /**
   * Overall diameter and section width in inches: {@code 33x12.50}.
   *
   * @param diameterInches nominal overall diameter (in), 20 to 60
   * @param widthInches nominal section width (in), at least 5 and below the diameter
   */
  record Flotation(double diameterInches, double widthInches) implements TireSize {
    /** Throws {@link IllegalArgumentException} for dimensions no tire has. */
    public Flotation {
      if (diameterInches < 20 || diameterInches > 60) {
        throw Unreadable.found(
            "overall diameter " + Lettering.shortest(diameterInches),
            "20 to 60 in",
            "Write diameter, width and rim, for example 33x12.50R15LT");
      }
      if (widthInches < 5 || widthInches > diameterInches / 2) {
        throw Unreadable.found(
            "section width " + Lettering.shortest(widthInches),
            "5 in to half of the diameter",
            "Write diameter, width and rim, for example 33x12.50R15LT");
      }
    }

    @Override
    public double sectionWidthMillimeters() {
      return Inch.toMillimeters(widthInches);
    }

    @Override
    public String toString() {
      return Lettering.shortest(diameterInches) + "x" + Lettering.twoDecimals(widthInches);
    }
  }

  /**
   * Section width in inches only: {@code 7.50}.
   *
   * @param widthInches nominal section width (in), 3 to 20
   */
  record Numeric(double widthInches) implements TireSize {
    /** Throws {@link IllegalArgumentException} for dimensions no tire has. */
    public Numeric {
      if (widthInches < 3 || widthInches > 20) {
        throw Unreadable.found(
            "section width " + Lettering.shortest(widthInches),
            "3 to 20 in",
            "Write width and rim, for example 7.50R16");
      }
    }

    @Override
    public double sectionWidthMillimeters() {
      return Inch.toMillimeters(widthInches);
    }

    @Override
    public String toString() {
      return Lettering.twoDecimals(widthInches);
    }
  }
}
