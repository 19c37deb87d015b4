package trammel.book;

import trammel.read.Words;
import trammel.subject.Axle;
import trammel.subject.Subject;

/** Where another fact stands, seen from the fact that is judged. */
public enum Of {
  SAME_WHEEL,
  SAME_AXLE,
  /** It is about the vehicle as a whole. */
  VEHICLE,
  /** Wherever it stands. */
  ANY;

  /** Whether a fact about {@code other} stands so, seen from one about {@code here}. */
  public boolean holds(Subject here, Subject other) {
    return switch (this) {
      case SAME_WHEEL -> here.where().equals(other.where());
      case SAME_AXLE -> {
        String axle = axle(here);
        yield !axle.isEmpty() && axle.equals(axle(other));
      }
      case VEHICLE -> other.where().equals(Subject.VEHICLE.where());
      case ANY -> true;
    };
  }

  /** The axle that a place belongs to, as files write it; empty where it belongs to none. */
  static String axle(Subject subject) {
    for (Axle axle : Axle.values()) {
      String name = axle.toString();
      if (subject.where().equals(name) || subject.where().startsWith(name + "-")) {
        return name;
      }
    }
    return "";
  }

  /** As sheets write it. */
  @Override
  public String toString() {
    return Words.kebab(name());
  }
}
