package trammel.report;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trammel.book.Manifest;
import trammel.book.Unread;
import trammel.build.Build;
import trammel.catalog.Catalog;
import trammel.catalog.PartKind;
import trammel.fact.PieceCount;
import trammel.judge.Finding;
import trammel.judge.Judge;
import trammel.judge.Judgement;
import trammel.judge.Kind;
import trammel.judge.Rule;
import trammel.read.Words;
import trammel.remedy.Remedies;

/** Makes the report of one build from what the rules found. */
public final class Reporter {
  /** Rules whose findings say that an order line should wait. */
  private static final Set<String> HOLDING =
      Set.of("order.hold-order", "order.hold-long-lead", "order.leave-out");

  private static final List<String> CAUTIONS =
      List.of(
          "This is work that can kill: stand the vehicle on stands under its frame, chock the"
              + " wheels, and never undo a spring that is not held.",
          "Torque is the vehicle maker's figure; this report gives none. Tighten again after the"
              + " first drive.",
          "Local law and a licensed mechanic or engineer have the last word.");

  /** What counts comes before what was waived; of one kind, safety first. */
  private static final Comparator<Outcome> GRAVEST_FIRST =
      Comparator.comparing((Outcome outcome) -> outcome.waived().isPresent())
          .thenComparing(outcome -> outcome.finding().kind())
          .thenComparing(outcome -> !outcome.rule().safetyCritical());

  private final Build build;
  private final Judgement judgement;
  private final Judge judge;
  private final Catalog catalog;
  private final LocalDate on;
  private final Waivers waivers;
  private final Remedies remedies;
  private final List<Outcome> outcomes;
  private final List<Unread> unread;

  private Reporter(
      Build build,
      Judgement judgement,
      Judge judge,
      List<Unread> unread,
      Catalog catalog,
      LocalDate on) {
    this.unread = unread;
    this.build = build;
    this.judgement = judgement;
    this.judge = judge;
    this.catalog = catalog;
    this.on = on;
    this.waivers = new Waivers(build.waivers(), judgement.findings(), judge, on);
    this.remedies = new Remedies(build, judgement, judge, catalog, on);
    this.outcomes = judgement.findings().stream().map(this::outcome).sorted(GRAVEST_FIRST).toList();
  }

  /**
   * The report of a build.
   *
   * @param unread the user's books that could not be read
   * @param on the day it is checked for, which decides which waivers still count
   */
  public static Report report(
      Build build,
      Judgement judgement,
      Judge judge,
      List<Unread> unread,
      Catalog catalog,
      LocalDate on) {
    return new Reporter(build, judgement, judge, unread, catalog, on).report();
  }

  private Outcome outcome(Finding finding) {
    Rule words = rule(finding.told().by());
    return new Outcome(
        finding,
        rule(finding.rule()),
        words,
        finding.told().also().stream().map(this::rule).toList(),
        book(words.book()).filter(book -> book.kind() == Manifest.Kind.LAW).orElse(null),
        remedies.of(finding),
        waivers.of(finding));
  }

  private Optional<Manifest> book(String name) {
    return judge.manifests().stream().filter(book -> book.name().equals(name)).findFirst();
  }

  private Rule rule(String id) {
    return judge
        .rule(id)
        .orElseThrow(() -> new IllegalStateException("a finding names no rule in force: " + id));
  }

  private Report report() {
    Predicate<Outcome> hold = outcome -> HOLDING.contains(outcome.rule().id());
    Predicate<Outcome> possible = outcome -> outcome.finding().possibly();
    Predicate<Outcome> background = Outcome::background;
    Numbering numbering = new Numbering();
    List<Report.Item> findings = numbering.number(items(hold.or(possible).or(background).negate()));
    List<String> notChecked = notChecked();
    List<Report.NotRead> notRead = NotReadBooks.of(unread, build);
    List<String> notJudged =
        Stream.concat(
                notRead.stream().filter(Report.NotRead::mayConcern).map(NotReadBooks::decides),
                notChecked.stream())
            .toList();
    Verdict verdict = verdict(notJudged);
    String place = build.found().registeredAt();
    return new Report(
        verdict,
        decidedBy(verdict, findings, notJudged),
        place == null || place.isBlank() ? null : Law.of(place, judge, outcomes, unreadLaw(place)),
        build.title(),
        build.place().file(),
        build.vehicle().maker() + " " + build.vehicle().model(),
        on,
        findings,
        numbering.number(items(possible.and(hold.negate()))),
        numbering.number(items(background.and(hold.negate()))),
        numbering.number(items(hold)),
        additions(),
        FittingSequence.of(build, verdict, findings),
        MeasuringList.of(open()),
        precedents(),
        parts(),
        notChecked,
        waivers.notices(),
        CAUTIONS,
        Assumed.of(build),
        books(),
        notRead);
  }

  private boolean unreadLaw(String place) {
    return unread.stream()
        .anyMatch(book -> book.mayBeLaw() && book.mayJudge(build.vehicle().vehicle(), place));
  }

  private List<Report.Item> items(Predicate<Outcome> which) {
    return outcomes.stream().filter(which).map(Outcome::item).toList();
  }

  private Verdict verdict(List<String> notJudged) {
    Stream<Verdict> found = outcomes.stream().map(Outcome::verdict).flatMap(Optional::stream);
    Stream<Verdict> open = notJudged.isEmpty() ? Stream.of() : Stream.of(Verdict.NOT_PROVEN);
    return Verdict.worst(Stream.concat(found, open).toList());
  }

  private String decidedBy(Verdict verdict, List<Report.Item> findings, List<String> notJudged) {
    Optional<String> decisive =
        outcomes.stream()
            .filter(outcome -> outcome.verdict().filter(verdict::equals).isPresent())
            .findFirst()
            .flatMap(
                outcome ->
                    findings.stream()
                        .filter(item -> item.id().equals(outcome.finding().identity()))
                        .findFirst())
            .map(item -> item.where() + ": " + item.sentence());
    if (decisive.isPresent()) {
      return decisive.get();
    }
    if (!notJudged.isEmpty()) {
      return notJudged.get(0);
    }
    if (findings.stream().anyMatch(item -> item.kind().equals(Kind.LAW.toString()))) {
      return "Nothing was found that stands against the fit; read what is said below.";
    }
    long cautions = findings.stream().map(Report.Item::number).distinct().count();
    return cautions == 0
        ? "Nothing was found that stands against it."
        : "Nothing was found that stands against it; read what is said below.";
  }

  private List<Finding> open() {
    return outcomes.stream()
        .filter(outcome -> outcome.waived().isEmpty())
        .map(Outcome::finding)
        .filter(finding -> finding.kind() == Kind.UNPROVEN || finding.possibly())
        .toList();
  }

  private List<Report.Addition> additions() {
    Additions additions = new Additions(catalog);
    outcomes.stream()
        .filter(
            outcome -> outcome.verdict().filter(Verdict.FITS_WITH_ADDITIONS::equals).isPresent())
        .filter(outcome -> !ofWhatDoesNotFit(outcome.finding()))
        .forEach(additions::ask);
    return additions.all();
  }

  /** Nobody should buy more of a part that does not fit. */
  private boolean ofWhatDoesNotFit(Finding count) {
    return count.fact() instanceof PieceCount pieces
        && judgement.findings().stream()
            .anyMatch(f -> f.kind() == Kind.CONFLICT && f.about(pieces.part()));
  }

  private List<Report.Precedent> precedents() {
    return judgement.precedents().stream()
        .map(
            precedent ->
                new Report.Precedent(
                    precedent.rule(),
                    precedent.fact().subject().toString(),
                    precedent.fact().subject().words(),
                    rule(precedent.rule()).title()))
        .toList();
  }

  private List<Report.NamedPart> parts() {
    Set<String> numbers = new LinkedHashSet<>();
    build.lines().forEach(line -> numbers.add(line.part().number()));
    outcomes.forEach(outcome -> numbers.addAll(outcome.finding().fact().parts()));
    return numbers.stream().map(number -> Additions.named(catalog, number)).toList();
  }

  private List<String> notChecked() {
    Map<PartKind, Set<String>> unjudged = new TreeMap<>();
    for (Build.Line line : build.lines()) {
      PartKind kind = line.part().kind();
      if (!judge.judges(kind)) {
        unjudged.computeIfAbsent(kind, key -> new LinkedHashSet<>()).add(line.part().number());
      }
    }
    return unjudged.entrySet().stream()
        .map(
            entry ->
                "No rule in force judges the fit of "
                    + Words.withArticle(entry.getKey().words())
                    + ": "
                    + String.join(", ", entry.getValue())
                    + ".")
        .toList();
  }

  private static String newest(List<Rule> rules) {
    return rules.stream().map(Rule::since).max(Comparator.naturalOrder()).orElseThrow();
  }

  private List<Report.Book> books() {
    Map<String, List<Rule>> books =
        judge.rules().stream()
            .collect(Collectors.groupingBy(Rule::book, LinkedHashMap::new, Collectors.toList()));
    return books.entrySet().stream()
        .map(
            book ->
                new Report.Book(
                    book.getKey(),
                    book(book.getKey())
                        .map(manifest -> manifest.version().toString())
                        .orElseGet(() -> newest(book.getValue())),
                    book.getValue().size()))
        .toList();
  }
}
