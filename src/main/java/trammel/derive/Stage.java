package trammel.derive;

import trammel.build.Build;
import trammel.build.Equipment;
import trammel.subject.Position;

/** A state of the vehicle that loads and heights are told of. */
enum Stage {
  /** As its maker built it, with the book's load. */
  BOOK,
  /** As it stands today. */
  FOUND,
  /** With the changes, and with what will be carried. */
  PROPOSED;

  /** What is fitted at a wheel in this state. */
  Equipment equipment(Build build, Position position) {
    return switch (this) {
      case BOOK -> build.bookAt(position);
      case FOUND -> build.before(position);
      case PROPOSED -> build.after(position);
    };
  }
}
