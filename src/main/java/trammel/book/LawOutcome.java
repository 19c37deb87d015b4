package trammel.book;

import trammel.read.Words;

/** What a broken rule of the law means where the vehicle is registered, gravest first. */
public enum LawOutcome {
  NOT_LAWFUL,
  FAILS_INSPECTION,
  NEEDS_CERTIFICATION,
  /** The text is known and cannot be judged from a sheet. */
  NOT_JUDGED;

  /** As sheets write it. */
  @Override
  public String toString() {
    return Words.kebab(name());
  }
}
