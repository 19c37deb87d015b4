package trammel.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import trammel.judge.Finding;
import trammel.quantity.Absence;
import trammel.quantity.Quantity;
import trammel.vocabulary.Vocabulary;

/** The missing values behind a quantity that cannot be worked out. */
final class Absences {
  private Absences() {}

  /** The values that a finding misses: of its comparison, or of its fact where it has none. */
  static List<Absence> behind(Finding finding) {
    if (finding.comparison() != null) {
      return behind(finding.comparison().margin());
    }
    if (!finding.decision().isOpen()) {
      return List.of();
    }
    return Vocabulary.fact(finding.fact().getClass()).components().stream()
        .map(component -> component.of(finding.fact()))
        .filter(Quantity.class::isInstance)
        .flatMap(value -> behind((Quantity) value).stream())
        .toList();
  }

  /** Each missing value once, in the order of the working. */
  static List<Absence> behind(Quantity quantity) {
    Set<Absence> found = Collections.newSetFromMap(new IdentityHashMap<>());
    List<Absence> inOrder = new ArrayList<>();
    collect(quantity, found, inOrder);
    return List.copyOf(inOrder);
  }

  private static void collect(Quantity quantity, Set<Absence> found, List<Absence> inOrder) {
    Absence absence = quantity.absence();
    if (absence == null) {
      return;
    }
    boolean own = true;
    for (Quantity operand : quantity.operands()) {
      own = own && operand.isKnown();
      collect(operand, found, inOrder);
    }
    if (own && found.add(absence)) {
      inOrder.add(absence);
    }
  }
}
