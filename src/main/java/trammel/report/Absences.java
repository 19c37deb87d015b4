package trammel.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import trammel.quantity.Absence;
import trammel.quantity.Quantity;

/** The missing values behind a quantity that cannot be worked out. */
final class Absences {
  private Absences() {}

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
