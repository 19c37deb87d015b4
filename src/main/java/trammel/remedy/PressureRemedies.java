package trammel.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.fact.Fact;
import trammel.fact.FluidLoad;
import trammel.judge.Finding;
import trammel.quantity.Quantity;
import trammel.read.QuantityWriter;

/**
 * Spring spacers and springs that bring a fluid's pressure home: of each kind the two that leave it
 * nearest to the preferred pressure, one on either side of it, with what each leaves.
 */
final class PressureRemedies {
  /** What may take load from the fluid, in the order a fitter would try. */
  static final List<PartKind> KINDS = List.of(PartKind.SPRING_SPACER, PartKind.SPRING);

  private PressureRemedies() {}

  /** A part that settles the finding, and the pressure that it leaves. */
  record Left(Part part, Quantity pressure, double overPreferred) {}

  /** The pressure that a trial leaves where the finding is, where it is known. */
  static Optional<Left> left(Part part, Finding finding, List<Fact> tried) {
    return tried.stream()
        .filter(FluidLoad.class::isInstance)
        .map(FluidLoad.class::cast)
        .filter(load -> load.subject().equals(finding.fact().subject()))
        .filter(load -> load.pressureAfter().isKnown() && load.preferred().isKnown())
        .findFirst()
        .map(
            load ->
                new Left(
                    part,
                    load.pressureAfter(),
                    load.pressureAfter().value() - load.preferred().value()));
  }

  /** The nearest below and above the preferred pressure, nearest first; nothing where none is. */
  static Optional<Remedy> remedy(PartKind kind, List<Left> all) {
    List<Left> named = new ArrayList<>();
    Comparator<Left> nearest = Comparator.comparingDouble(left -> Math.abs(left.overPreferred()));
    all.stream().filter(left -> left.overPreferred() <= 0).min(nearest).ifPresent(named::add);
    all.stream().filter(left -> left.overPreferred() > 0).min(nearest).ifPresent(named::add);
    named.sort(nearest);
    if (named.isEmpty()) {
      return Optional.empty();
    }
    List<String> words = new ArrayList<>();
    for (Left left : named) {
      words.add(
          left.part().number() + ", which leaves " + QuantityWriter.uncertain(left.pressure()));
    }
    return Optional.of(
        new Remedy(
            "part",
            kind.words() + " " + String.join("; or ", words),
            named.stream().map(left -> left.part().number()).toList()));
  }
}
