package trammel.designation;

import java.util.OptionalInt;

/**
 * The load index of a tire. Its load is known from 60 to 140; other indices can be read but carry
 * no load here.
 *
 * @param index the number as stamped, 0 to 279
 */
public record LoadIndex(int index) implements Comparable<LoadIndex> {
  private static final int FIRST = 60;
  private static final int LAST = 140;
  private static final int HIGHEST = 279;

  /** French ministerial order of 24 October 1994 on tires, annex II, indices 60 to 140 (kg). */
  private static final int[] KILOGRAMS = {
    250, 257, 265, 272, 280, 290, 300, 307, 315, 325, // 60
    335, 345, 355, 365, 375, 387, 400, 412, 425, 437, // 70
    450, 462, 475, 487, 500, 515, 530, 545, 560, 580, // 80
    600, 615, 630, 650, 670, 690, 710, 730, 750, 775, // 90
    800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, // 100
    1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360, // 110
    1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850, // 120
    1900, 1950, 2000, 2060, 2120, 2180, 2240, 2300, 2360, 2430, // 130
    2500 // 140
  };

  /** Throws {@link IllegalArgumentException} for a number that is no load index. */
  public LoadIndex {
    if (index < 0 || index > HIGHEST) {
      throw refused(Unreadable.quoted(Integer.toString(index)));
    }
  }

  /** Reads {@code 121}. */
  public static LoadIndex parse(String text) {
    String plain = Lettering.plain(text);
    if (!plain.matches("\\d{1,3}")) {
      throw refused(Unreadable.quoted(text));
    }
    return new LoadIndex(Integer.parseInt(plain));
  }

  private static IllegalArgumentException refused(String found) {
    return Unreadable.found(
        found + " as a load index",
        "a whole number from 0 to " + HIGHEST,
        "Read the number before the speed symbol on the sidewall, without any unit");
  }

  /**
   * The load this index stands for (kg), or empty outside 60 to 140. {@link #whyNoLoad()} words the
   * reason.
   */
  public OptionalInt kilograms() {
    return index < FIRST || index > LAST
        ? OptionalInt.empty()
        : OptionalInt.of(KILOGRAMS[index - FIRST]);
  }

  /** Why an index has no load here, and what to do; for one that has a load, this says so. */
  public String whyNoLoad() {
    return kilograms().isPresent()
        ? "load index " + index + " is in the table"
        : "load index "
            + index
            + " is outside the table (60 to 140); take the maximum load from the sidewall";
  }

  @Override
  public int compareTo(LoadIndex other) {
    return Integer.compare(index, other.index);
  }

  @Override
  public String toString() {
    return Integer.toString(index);
  }
}
