package trammel.catalog;

import trammel.read.Discriminator;

/** A part that can be fitted: what it is listed as, and what of it decides whether it fits. */
@Discriminator("kind")
public sealed interface Part permits WheelPart, SuspensionPart {

  /** What the catalog says of it as of any part. */
  Listing listing();

  /** Its kind. */
  PartKind kind();

  /** Its part number. */
  default String number() {
    return listing().part();
  }
}
