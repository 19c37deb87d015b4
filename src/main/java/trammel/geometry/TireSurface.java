package trammel.geometry;

/** The surfaces of a tire; outer ones lie toward where its axis points. */
public enum TireSurface {
  CROWN,
  OUTER_SHOULDER,
  INNER_SHOULDER,
  OUTER_SIDEWALL,
  INNER_SIDEWALL
}
