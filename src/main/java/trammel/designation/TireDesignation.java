package trammel.designation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A tire designation as stamped on the sidewall.
 *
 * <p>The families are those of the EU product register, US design standards and vehicle makers'
 * manuals. A trailing C is a load range behind the prefix LT or ST and behind a flotation size;
 * without prefix it makes a commercial tire. Size and load range never give a load: P235/75R15 and
 * 235/75R15 carry differently, so only the load index does.
 *
 * @param prefix the letters before the size
 * @param size the dimensions before the construction letter
 * @param construction how the carcass is built
 * @param speedInSize a speed letter before the construction letter, as older tires have it
 * @param rim the rim it is made for
 * @param suffix the letters directly after the rim code
 * @param loadClass the load class, if stamped
 * @param loadRange the load range or ply rating, if stamped
 * @param service load indices and speed symbol, if stamped
 * @param marks what else is stamped
 */
public record TireDesignation(
    Prefix prefix,
    TireSize size,
    Construction construction,
    Optional<SpeedSymbol> speedInSize,
    RimCode rim,
    Suffix suffix,
    Optional<LoadClass> loadClass,
    Optional<LoadRange> loadRange,
    Optional<ServiceDescription> service,
    Set<Mark> marks) {

  /**
   * Section height in percent of width where a metric size states none: the normal ratio of such
   * tires by an older vehicle maker's manual, common practice.
   */
  public static final int ASSUMED_ASPECT = 82;

  /** The letters before the size. */
  public enum Prefix {
    NONE(""),
    P("P"),
    LT("LT"),
    ST("ST"),
    T("T"),
    S("S"),
    HL("HL");

    private final String letters;

    Prefix(String letters) {
      this.letters = letters;
    }

    @Override
    public String toString() {
      return letters;
    }
  }

  /** The letters after the rim code that belong to the size. */
  public enum Suffix {
    NONE(""),
    LT("LT"),
    C("C");

    private final String letters;

    Suffix(String letters) {
      this.letters = letters;
    }

    @Override
    public String toString() {
      return letters;
    }
  }

  /** The family of designations, which decides by which standard a tire is rated. */
  public enum Family {
    METRIC("metric passenger tire"),
    P_METRIC("P-metric passenger tire"),
    HIGH_LOAD("high-load passenger tire"),
    LT_METRIC("LT-metric tire"),
    LT_SUFFIX("light-truck tire with LT behind the size"),
    COMMERCIAL("commercial tire"),
    FLOTATION("flotation tire"),
    NUMERIC("numeric inch tire"),
    TEMPORARY("temporary spare"),
    SPECIAL_TRAILER("special trailer tire");

    private final String words;

    Family(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    /** Rated as a passenger tire, so that its load counts less on a light truck. */
    public boolean isPassenger() {
      return this == METRIC || this == P_METRIC || this == HIGH_LOAD;
    }

    /** Rated for light trucks. */
    public boolean isLightTruck() {
      return this == LT_METRIC
          || this == LT_SUFFIX
          || this == COMMERCIAL
          || this == FLOTATION
          || this == NUMERIC;
    }
  }

  /** Throws {@link IllegalArgumentException} where the parts contradict each other. */
  public TireDesignation {
    marks = marks.isEmpty() ? Set.of() : Set.copyOf(EnumSet.copyOf(marks));
    boolean metric = size instanceof TireSize.Metric;
    if (!metric && prefix != Prefix.NONE && !(prefix == Prefix.ST && isNumeric(size))) {
      throw Unreadable.found(
          "prefix " + prefix + " before the inch size " + size,
          "no prefix there",
          "Write LT behind an inch size, for example 33x12.50R15LT");
    }
    if (suffix != Suffix.NONE && prefix != Prefix.NONE) {
      throw Unreadable.found(
          "prefix " + prefix + " and suffix " + suffix,
          "one of them",
          "Write LT either before the size or behind it, and C only on a size without prefix");
    }
    if (suffix == Suffix.C && size instanceof TireSize.Flotation) {
      throw Unreadable.found(
          "a commercial mark C on a flotation size", "a load range", "Write LR C for a load range");
    }
    if (size instanceof TireSize.Flotation flotation && flotation.diameterInches() <= rim.code()) {
      throw Unreadable.found(
          "overall diameter " + Lettering.shortest(flotation.diameterInches()) + " on rim " + rim,
          "a tire larger than its rim",
          "Write diameter, width and rim, for example 33x12.50R15LT");
    }
    if (rim.isTapered() && metric && suffix != Suffix.C) {
      throw Unreadable.found(
          "rim code " + rim + " on a metric size",
          "a whole rim code, or a numeric, flotation or commercial size",
          "Check the rim code on the sidewall");
    }
    boolean pairAllowed = !metric || suffix != Suffix.NONE || prefix == Prefix.LT;
    if (!pairAllowed && service.flatMap(ServiceDescription::dual).isPresent()) {
      throw Unreadable.found(
          "two load indices on " + prefix + size,
          "one index, or an LT, C or inch size",
          "Look for LT before the size or for LT or C behind it, and write that too");
    }
    if (speedInSize.isPresent() && construction == Construction.RADIAL_Z) {
      throw Unreadable.found(
          "speed letters " + speedInSize.get() + " and Z in the size",
          "one of them",
          "Read the letters before the rim code again");
    }
    Optional<SpeedSymbol> stamped = service.flatMap(ServiceDescription::speed);
    if (speedInSize.isPresent() && stamped.isPresent() && !speedInSize.equals(stamped)) {
      throw Unreadable.found(
          "speed letter " + speedInSize.get() + " in the size and symbol " + stamped.get(),
          "the same letter twice",
          "Read both again; one of them is misread");
    }
    if (marks.contains(Mark.TUBELESS) && marks.contains(Mark.TUBE_TYPE)) {
      throw Unreadable.found(
          "both TL and TT", "one of them", "Read on the sidewall whether a tube belongs in it");
    }
  }

  private static boolean isNumeric(TireSize size) {
    return size instanceof TireSize.Numeric;
  }

  /**
   * Reads a designation in any of the usual spellings: blanks anywhere, small letters, decimal
   * commas, × or x, Cyrillic or Greek letters that look Latin.
   *
   * @throws IllegalArgumentException if it is none, saying what was found and expected
   */
  public static TireDesignation parse(String text) {
    return TireDesignationParser.parse(text);
  }

  /** The family, from prefix, size and suffix. */
  public Family family() {
    return switch (prefix) {
      case P -> Family.P_METRIC;
      case LT -> Family.LT_METRIC;
      case ST -> Family.SPECIAL_TRAILER;
      case T, S -> Family.TEMPORARY;
      case HL -> Family.HIGH_LOAD;
      case NONE -> familyWithoutPrefix();
    };
  }

  private Family familyWithoutPrefix() {
    if (size instanceof TireSize.Flotation) {
      return Family.FLOTATION;
    }
    return switch (suffix) {
      case LT -> Family.LT_SUFFIX;
      case C -> Family.COMMERCIAL;
      case NONE -> isNumeric(size) ? Family.NUMERIC : Family.METRIC;
    };
  }

  /** The nominal section width (mm), on the theoretical rim. */
  public double sectionWidthMillimeters() {
    return size.sectionWidthMillimeters();
  }

  /**
   * Section height in percent of width: as stated, else {@link #ASSUMED_ASPECT} for a metric size;
   * empty for inch sizes.
   */
  public OptionalInt aspect() {
    return size instanceof TireSize.Metric metric
        ? OptionalInt.of(metric.statedAspect().orElse(ASSUMED_ASPECT))
        : OptionalInt.empty();
  }

  /** Whether {@link #aspect()} is not stated but assumed. */
  public boolean isAspectAssumed() {
    return size instanceof TireSize.Metric metric && metric.statedAspect().isEmpty();
  }

  /** The overall diameter that a flotation size states (in); empty for all others. */
  public OptionalDouble overallDiameterInches() {
    return size instanceof TireSize.Flotation flotation
        ? OptionalDouble.of(flotation.diameterInches())
        : OptionalDouble.empty();
  }

  /** The load index of a tire that runs alone, if stamped. */
  public Optional<LoadIndex> loadIndex() {
    return service.map(ServiceDescription::single);
  }

  /** The load index of each of two tires side by side, if stamped. */
  public Optional<LoadIndex> dualLoadIndex() {
    return service.flatMap(ServiceDescription::dual);
  }

  /** The speed symbol: of the service description, else the letter in the size. */
  public Optional<SpeedSymbol> speedSymbol() {
    return service.flatMap(ServiceDescription::speed).or(() -> speedInSize);
  }

  /** What is assumed, incomplete or unusual, one sentence each; empty if all is well. */
  public List<String> warnings() {
    List<String> warnings = new ArrayList<>();
    if (size instanceof TireSize.Metric metric) {
      if (metric.statedAspect().isEmpty()) {
        warnings.add(
            "no aspect ratio is stamped; " + ASSUMED_ASPECT + " is assumed: measure the diameter");
      } else if (metric.statedAspect().getAsInt() % 5 != 0) {
        warnings.add("aspect ratio " + metric.statedAspect().getAsInt() + " is no multiple of 5");
      }
      if (metric.width() % 10 != 5) {
        warnings.add("section width " + metric.width() + " does not end in 5");
      }
    }
    if (service.isPresent() && speedSymbol().isEmpty()) {
      warnings.add("a load index without speed symbol: the service description is incomplete");
    }
    loadIndex().filter(i -> i.kilograms().isEmpty()).ifPresent(i -> warnings.add(i.whyNoLoad()));
    dualLoadIndex()
        .filter(i -> i.kilograms().isEmpty())
        .ifPresent(i -> warnings.add(i.whyNoLoad()));
    if (construction == Construction.RADIAL_Z
        && speedSymbol().filter(s -> s.compareTo(SpeedSymbol.V) <= 0).isPresent()) {
      warnings.add("ZR stands for more than 240 km/h, but the speed symbol does not");
    }
    if (loadRange.isPresent() && family().isPassenger()) {
      warnings.add(
          "load range " + loadRange.get() + " on a passenger size: look for LT on the sidewall");
    }
    return List.copyOf(warnings);
  }

  /** The canonical spelling, for example {@code LT285/70R17 LRE 121/118Q}. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    text.append(prefix).append(spelled(size));
    speedInSize.ifPresent(text::append);
    boolean inch = !(size instanceof TireSize.Metric);
    text.append(inch && construction == Construction.DIAGONAL ? "-" : construction.toString());
    text.append(rim).append(suffix);
    loadRange.ifPresent(range -> text.append(' ').append(spelled(range)));
    service.ifPresent(mark -> text.append(' ').append(mark));
    loadClass.ifPresent(mark -> text.append(' ').append(mark));
    marks.stream().sorted().forEach(mark -> text.append(' ').append(mark));
    return text.toString();
  }

  /** Inch widths for tapered rims are stamped without idle zeros: 12R22.5, but 12.00R20. */
  private String spelled(TireSize dimensions) {
    return dimensions instanceof TireSize.Numeric numeric && rim.isTapered()
        ? Lettering.shortest(numeric.widthInches())
        : dimensions.toString();
  }

  /** Commercial and numeric tires are stamped with the ply rating, all others with the letter. */
  private String spelled(LoadRange range) {
    return suffix == Suffix.C || family() == Family.NUMERIC
        ? range.plyRating() + "PR"
        : "LR" + range;
  }
}
