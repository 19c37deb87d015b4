package trammel.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Subject;

/** Several subjects in few words. */
final class Places {
  private Places() {}

  /** {@code Both front wheels, arch; rear, brake} and the like. */
  static String words(Collection<Subject> subjects) {
    Map<String, Set<String>> byDetail = new LinkedHashMap<>();
    for (Subject subject : subjects) {
      byDetail
          .computeIfAbsent(subject.detail(), detail -> new LinkedHashSet<>())
          .add(subject.where());
    }
    return Sentences.upperFirst(
        byDetail.entrySet().stream()
            .map(entry -> words(entry.getKey(), entry.getValue()))
            .collect(Collectors.joining("; ")));
  }

  private static String words(String detail, Set<String> where) {
    Set<String> left = new LinkedHashSet<>(where);
    List<String> said = new ArrayList<>();
    if (takeAll(left, Position.running())) {
      said.add("all four wheels");
    }
    for (Axle axle : Axle.values()) {
      if (takeAll(left, Position.of(axle))) {
        said.add("both " + axle + " wheels");
      }
    }
    left.forEach(place -> said.add(place.replace('-', ' ')));
    String joined = String.join(" and ", said);
    String spoken = new Subject(where.iterator().next(), detail).detailWords();
    return detail.isEmpty() ? joined : joined + ", " + spoken;
  }

  private static boolean takeAll(Set<String> left, Collection<Position> wheels) {
    Set<String> names = wheels.stream().map(Position::toString).collect(Collectors.toSet());
    return left.containsAll(names) && left.removeAll(names);
  }
}
