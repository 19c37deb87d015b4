package trammel.quantity;

/**
 * Why a value is missing, and the cheapest way to get it.
 *
 * @param what the value's name, as a fitter would say it
 * @param reason why it is not there
 * @param instrument the cheapest tool that would give it
 * @param how what to do with that tool
 * @param assumed what a rule book assumes in its place and was not accepted here: the value and
 *     whose it is; empty where none does
 */
public record Absence(
    String what, String reason, Instrument instrument, String how, String assumed) {

  /** A value that nobody has given and no book assumes. */
  public Absence(String what, String reason, Instrument instrument, String how) {
    this(what, reason, instrument, how, "");
  }
}
