package trammel.read;

/** A text that cannot be read as what it should be. */
final class Refusal extends IllegalArgumentException {
  private final String what;
  private final String advice;

  Refusal(String what, String advice) {
    super(what + "\n" + advice);
    this.what = what;
    this.advice = advice;
  }

  /**
   * Anybody's complaint about a text: its first line says what is wrong, the second, if there is
   * one, what to do.
   */
  static Refusal of(IllegalArgumentException complaint, String usualAdvice) {
    if (complaint instanceof Refusal refusal) {
      return refusal;
    }
    String message = String.valueOf(complaint.getMessage()).strip();
    int end = message.indexOf('\n');
    return end < 0
        ? new Refusal(message, usualAdvice)
        : new Refusal(
            message.substring(0, end).strip(),
            message.substring(end + 1).replace('\n', ' ').strip());
  }

  String what() {
    return what;
  }

  String advice() {
    return advice;
  }
}
