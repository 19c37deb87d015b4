package trammel.build;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.WheelPart.Fastener;

/**
 * What is fitted at one wheel of the vehicle: on the wheel, at its hub and at its corner.
 * Immutable.
 */
public final class Equipment {
  /** Nothing known to be fitted. */
  public static final Equipment NONE = new Equipment(Map.of());

  private final Map<PartKind, List<Part>> parts;

  private Equipment(Map<PartKind, List<Part>> parts) {
    this.parts = parts;
  }

  /**
   * This equipment after a part was fitted, in the place of its like or beside it as its kind has
   * it.
   */
  public Equipment with(Part part) {
    EnumMap<PartKind, List<Part>> next = copy();
    List<Part> now = new ArrayList<>(all(part.kind()));
    if (part.kind().takesThePlace()) {
      now.removeIf(other -> isLock(other) == isLock(part));
    }
    now.add(part);
    next.put(part.kind(), List.copyOf(now));
    return new Equipment(next);
  }

  /** A locking nut stands among plain ones and takes the place of another lock only. */
  private static boolean isLock(Part part) {
    return part instanceof Fastener fastener && fastener.lock();
  }

  /** This equipment without any part of the kind. */
  public Equipment without(PartKind kind) {
    EnumMap<PartKind, List<Part>> next = copy();
    next.remove(kind);
    return new Equipment(next);
  }

  /** This equipment without one part. */
  public Equipment without(Part part) {
    EnumMap<PartKind, List<Part>> next = copy();
    List<Part> left = new ArrayList<>(all(part.kind()));
    left.remove(part);
    next.put(part.kind(), List.copyOf(left));
    return new Equipment(next);
  }

  private EnumMap<PartKind, List<Part>> copy() {
    EnumMap<PartKind, List<Part>> copy = new EnumMap<>(PartKind.class);
    copy.putAll(parts);
    return copy;
  }

  /** Every part of a kind, from the hub outward. */
  public List<Part> all(PartKind kind) {
    return parts.getOrDefault(kind, List.of());
  }

  /** Every part of a type, from the hub outward. */
  public <T extends Part> List<T> all(PartKind kind, Class<T> type) {
    List<Part> found = all(kind);
    // Asked for very often, and mostly of what is not there, or there once.
    return switch (found.size()) {
      case 0 -> List.of();
      case 1 -> List.of(type.cast(found.get(0)));
      default -> found.stream().map(type::cast).toList();
    };
  }

  /** The part of a type, where one is known to be fitted. */
  public <T extends Part> Optional<T> one(PartKind kind, Class<T> type) {
    List<Part> found = all(kind);
    return found.isEmpty() ? Optional.empty() : Optional.of(type.cast(found.get(found.size() - 1)));
  }

  /** Whether it has the same parts of a kind as another. */
  public boolean sameAs(Equipment other, PartKind kind) {
    return all(kind).equals(other.all(kind));
  }

  /** Whether it has the same parts as another. */
  public boolean sameAs(Equipment other) {
    return parts.equals(other.parts);
  }

  /** Every part, in order of kind. */
  public List<Part> everything() {
    return parts.values().stream().flatMap(List::stream).toList();
  }
}
