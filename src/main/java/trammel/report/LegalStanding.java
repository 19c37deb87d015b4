package trammel.report;

import trammel.book.LawOutcome;
import trammel.read.Words;

/** How a vehicle stands before the law of the place where it is registered, worst first. */
public enum LegalStanding {
  NOT_LAWFUL,
  FAILS_INSPECTION,
  NEEDS_CERTIFICATION,
  /** No book of that place is at hand, or a value that a text asks for is open. */
  NOT_JUDGED,
  /** No limit of the books at hand is passed; more than that no book can say. */
  WITHIN_LIMITS;

  /** Where a vehicle stands of which a rule with this outcome is certainly broken. */
  static LegalStanding of(LawOutcome outcome) {
    return switch (outcome) {
      case NOT_LAWFUL -> NOT_LAWFUL;
      case FAILS_INSPECTION -> FAILS_INSPECTION;
      case NEEDS_CERTIFICATION -> NEEDS_CERTIFICATION;
      case NOT_JUDGED -> NOT_JUDGED;
    };
  }

  /** Whether it may not be driven there as it stands. */
  boolean notLawfulAsItStands() {
    return this == NOT_LAWFUL || this == FAILS_INSPECTION;
  }

  /** In words, at a place. */
  String at(String place) {
    return switch (this) {
      case NOT_LAWFUL -> "not lawful at " + place;
      case FAILS_INSPECTION -> "fails inspection at " + place;
      case NEEDS_CERTIFICATION -> "needs certification at " + place;
      case NOT_JUDGED -> "law not judged";
      case WITHIN_LIMITS -> "no limit on file passed at " + place;
    };
  }

  /** As data has it. */
  @Override
  public String toString() {
    return Words.kebab(name());
  }
}
