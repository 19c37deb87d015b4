package trammel.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trammel.catalog.Catalog;
import trammel.catalog.Money;
import trammel.judge.Finding;
import trammel.judge.Need;
import trammel.subject.Subject;

/** What to add to the order, with the parts of this catalog that would do. */
final class Additions {
  private static final String NO_CANDIDATE = "no part of this catalog would do";

  private record Wanted(String what, boolean part, List<String> candidates) {}

  private record Asked(Set<Subject> places, Set<String> findings) {}

  private final Catalog catalog;
  private final Map<Wanted, Asked> wanted = new LinkedHashMap<>();

  Additions(Catalog catalog) {
    this.catalog = catalog;
  }

  /** Notes what a finding asks for. */
  void ask(Outcome outcome) {
    Finding finding = outcome.finding();
    Set<String> candidates = new LinkedHashSet<>();
    outcome.remedies().forEach(remedy -> candidates.addAll(remedy.parts()));
    Need need = finding.need();
    Report.Item item = outcome.item();
    String what = item.remedies().isEmpty() ? item.sentence() : item.remedies().get(0);
    Asked asked =
        wanted.computeIfAbsent(
            new Wanted(
                need == null ? what : need.kind().words(), need != null, List.copyOf(candidates)),
            key -> new Asked(new LinkedHashSet<>(), new LinkedHashSet<>()));
    asked.places().add(need == null ? finding.fact().subject() : new Subject(need.where(), ""));
    asked.findings().add(finding.identity());
  }

  List<Report.Addition> all() {
    List<Report.Addition> additions = new ArrayList<>();
    wanted.forEach(
        (what, asked) ->
            additions.add(
                new Report.Addition(
                    what.what(),
                    Places.words(asked.places()),
                    what.candidates().stream().map(part -> named(catalog, part)).toList(),
                    what.part() && what.candidates().isEmpty() ? NO_CANDIDATE : "",
                    List.copyOf(asked.findings()))));
    return additions;
  }

  /** A part as reports name it. */
  static Report.NamedPart named(Catalog catalog, String number) {
    return catalog
        .part(number)
        .map(
            part ->
                new Report.NamedPart(
                    number,
                    part.listing().name(),
                    price(part.listing().price(), catalog.currency())))
        .orElseGet(() -> new Report.NamedPart(number, "not in this catalog", null));
  }

  private static @Nullable String price(@Nullable Money price, String currency) {
    return price == null ? null : price + " " + currency;
  }
}
