package trammel.judge;

import trammel.catalog.PartKind;

/**
 * What a rule says must be present. It holds identity only; reasons are collected beside it.
 *
 * @param kind the kind of part
 * @param where the wheel, axle or whole that needs it
 */
public record Need(PartKind kind, String where) {

  /**
   * Why something is needed.
   *
   * @param finding what is said where nothing meets the need
   */
  public record Reason(Need need, Finding finding) {}
}
