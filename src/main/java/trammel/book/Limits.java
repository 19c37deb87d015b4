package trammel.book;

/** What a book may hold, so that no book can exhaust the machine. */
final class Limits {
  /** Rules and tables in a book. */
  static final int RULES = 10_000;

  static final int FILES = 200;

  /** Levels of conditions inside conditions. */
  static final int DEPTH = 10;

  /** Conditions in a rule. */
  static final int CONDITIONS = 200;

  /** Conditions on other facts in a rule: each triples what the engine must build. */
  static final int JOINED = 3;

  /** Names that one condition may list. */
  static final int NAMES = 1000;

  /** Characters in a text. */
  static final int TEXT = 2000;

  static final int ROWS = 20_000;

  static final int COLUMNS = 20;

  static final int CASES = 200;

  /** Size of a file (bytes). */
  static final long FILE = 3_000_000;

  private Limits() {}
}
