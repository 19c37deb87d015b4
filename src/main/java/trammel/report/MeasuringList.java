package trammel.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.judge.Finding;
import trammel.quantity.Absence;
import trammel.quantity.Instrument;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Subject;

/** What to measure: one list, grouped by tool, most useful first. */
final class MeasuringList {
  private static final Comparator<Value> MOST_USEFUL_FIRST =
      Comparator.comparingLong(Value::deciding)
          .thenComparingInt(value -> value.findings.size())
          .reversed();

  private MeasuringList() {}

  /** A missing value, with what waits for it. */
  private static final class Value {
    final Absence absence;
    final List<Finding> findings = new ArrayList<>();

    Value(Absence absence) {
      this.absence = absence;
    }

    /** Where it is to be measured; the profile knows no difference of sides. */
    Set<Subject> places() {
      Set<Subject> places = new LinkedHashSet<>();
      findings.forEach(finding -> places.add(withoutSide(finding.fact().subject())));
      return places;
    }

    long deciding() {
      return findings.stream().filter(Finding::decides).count();
    }

    Report.Measurement measurement() {
      return new Report.Measurement(
          absence.what(),
          Places.words(places()),
          absence.how(),
          findings.stream().map(Finding::identity).distinct().toList());
    }
  }

  private record Key(Absence absence, Set<Subject> places) {}

  static List<Report.Tool> of(List<Finding> open) {
    Map<Instrument, List<Value>> byTool = new LinkedHashMap<>();
    for (Value value : values(open)) {
      byTool.computeIfAbsent(value.absence.instrument(), tool -> new ArrayList<>()).add(value);
    }
    return byTool.entrySet().stream()
        .sorted(
            Map.Entry.comparingByValue(
                Comparator.<List<Value>>comparingLong(
                        values -> values.stream().mapToLong(Value::deciding).sum())
                    .reversed()))
        .map(
            entry ->
                new Report.Tool(
                    entry.getKey().words(),
                    entry.getValue().stream()
                        .sorted(MOST_USEFUL_FIRST)
                        .map(Value::measurement)
                        .toList()))
        .toList();
  }

  /**
   * One entry for each place in a file that lacks a value; values that were missed at each wheel
   * anew are joined where they would be measured at the same places.
   */
  private static List<Value> values(List<Finding> open) {
    IdentityHashMap<Absence, Value> byAbsence = new IdentityHashMap<>();
    List<Value> inOrder = new ArrayList<>();
    for (Finding finding : open) {
      if (finding.comparison() == null) {
        continue;
      }
      for (Absence absence : Absences.behind(finding.comparison().margin())) {
        Value value = byAbsence.get(absence);
        if (value == null) {
          value = new Value(absence);
          byAbsence.put(absence, value);
          inOrder.add(value);
        }
        value.findings.add(finding);
      }
    }
    Map<Key, Value> joined = new LinkedHashMap<>();
    for (Value value : inOrder) {
      Value first = joined.putIfAbsent(new Key(value.absence, value.places()), value);
      if (first != null) {
        first.findings.addAll(value.findings);
      }
    }
    return List.copyOf(joined.values());
  }

  private static Subject withoutSide(Subject subject) {
    for (Axle axle : Axle.values()) {
      for (Position wheel : Position.of(axle)) {
        if (subject.where().equals(wheel.toString())) {
          return new Subject(axle.toString(), subject.detail());
        }
      }
    }
    return subject;
  }
}
