package trammel.fact;

/**
 * How the proposed change bears on what a fact describes, which decides what an open question about
 * it means.
 */
public enum Standing {
  /** The sheet says it is sound as found, and the change moves it the safe way or not at all. */
  SOUND_AND_NO_WORSE,
  /** The change moves it the safe way or not at all, but nobody says that it is sound. */
  NO_WORSE,
  /** The change makes it worse, or it is new. */
  WORSE_OR_NEW;

  /** The standing of something that is new where the change touches it, and as it was elsewhere. */
  public static Standing ofChange(boolean touched) {
    return touched ? WORSE_OR_NEW : NO_WORSE;
  }
}
