package trammel.derive;

/** What ends a wheel's way down. */
enum DroopEnd {
  DAMPER("the damper"),
  STOP("a stop"),
  STRAP("a strap"),
  UNKNOWN("nobody knows what");

  private final String words;

  DroopEnd(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }
}
