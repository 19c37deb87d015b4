package trammel.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.subject.Subject;

/** Numbers findings through a report; those that say the same of several places share a number. */
final class Numbering {
  private int last;

  private record Said(
      String rule,
      String kind,
      String sentence,
      String figures,
      List<String> remedies,
      Report.@Nullable Waived waived) {}

  /** The items in order, with those of one number next to each other. */
  List<Report.Item> number(List<Report.Item> items) {
    Map<Said, List<Report.Item>> groups = new LinkedHashMap<>();
    for (Report.Item item : items) {
      Said said =
          new Said(
              item.rule(),
              item.kind(),
              item.sentence(),
              item.figures(),
              item.remedies(),
              item.waived());
      groups.computeIfAbsent(said, key -> new ArrayList<>()).add(item);
    }
    List<Report.Item> numbered = new ArrayList<>();
    for (List<Report.Item> group : groups.values()) {
      last++;
      String where =
          Places.words(group.stream().map(item -> Subject.parse(item.subject())).toList());
      group.forEach(item -> numbered.add(item.numbered(last, where)));
    }
    return List.copyOf(numbered);
  }
}
