package trammel.report;

/** Who may do a step of the work. */
enum Worker {
  FITTER("a fitter"),
  TIRE_SHOP("a tire shop"),
  ALIGNMENT_SHOP("a licensed alignment shop"),
  LICENSED_SHOP("a licensed shop only");

  private final String words;

  Worker(String words) {
    this.words = words;
  }

  /** As reports say it. */
  @Override
  public String toString() {
    return words;
  }
}
