package trammel.derive;

/** A state of the vehicle that loads and heights are told of. */
enum Stage {
  /** As its maker built it, with the book's load. */
  BOOK,
  /** As it stands today. */
  FOUND,
  /** With the changes, and with what will be carried. */
  PROPOSED
}
