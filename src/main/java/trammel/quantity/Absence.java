package trammel.quantity;

/**
 * Why a value is missing, and the cheapest way to get it.
 *
 * @param what the value's name, as a fitter would say it
 * @param reason why it is not there
 * @param instrument the cheapest tool that would give it
 * @param how what to do with that tool
 */
public record Absence(String what, String reason, Instrument instrument, String how) {}
