package trammel.cli;

/** Something the user asked for that there is not; told in one line with one line of advice. */
final class Mistake extends RuntimeException {
  /**
   * @param what what was found and what was expected
   * @param advice one line on how to mend it
   */
  Mistake(String what, String advice) {
    super(what + "\n  " + advice);
  }
}
