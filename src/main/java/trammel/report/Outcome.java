package trammel.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trammel.book.Manifest;
import trammel.judge.Finding;
import trammel.judge.Kind;
import trammel.judge.Rule;
import trammel.quantity.Comparison;
import trammel.quantity.Decision;
import trammel.remedy.Remedy;

/**
 * A finding with what would settle it and what it does to the verdict.
 *
 * @param rule the rule whose identity and safety flag it bears
 * @param words the rule in whose words it is told: that one, or a stricter one
 * @param stricter the stricter rules that found it too or in its stead
 * @param law the book of the law that the words are from; null where they are from another
 */
record Outcome(
    Finding finding,
    Rule rule,
    Rule words,
    List<Rule> stricter,
    @Nullable Manifest law,
    List<Remedy> remedies,
    Optional<Report.Waived> waived) {
  private static final String SETTING = "setting";

  /** The verdict that this finding alone would give; none where it changes nothing. */
  Optional<Verdict> verdict() {
    if (waived.isPresent() || !finding.decides()) {
      return Optional.empty();
    }
    return switch (finding.kind()) {
      case CONFLICT -> Optional.of(Verdict.DOES_NOT_FIT);
      case ALIGNMENT -> alignment();
      case UNPROVEN -> Optional.of(Verdict.NOT_PROVEN);
      case COMPANION -> Optional.of(Verdict.FITS_WITH_ADDITIONS);
      case LAW, CAUTION -> Optional.empty();
    };
  }

  private Optional<Verdict> alignment() {
    if (remedies.stream().anyMatch(remedy -> remedy.kind().equals(SETTING))) {
      return Optional.empty();
    }
    boolean mended = remedies.stream().anyMatch(remedy -> !remedy.parts().isEmpty());
    return Optional.of(mended ? Verdict.FITS_WITH_ADDITIONS : Verdict.DOES_NOT_FIT);
  }

  /** Whether it is an open question that the change neither raises nor worsens. */
  boolean background() {
    return finding.kind() == Kind.UNPROVEN && !finding.decides();
  }

  /**
   * What the rule says a fitter would try; where a value is missing, getting it comes before all
   * else.
   */
  private Stream<String> settings() {
    return finding.decision() == Decision.ABSENT && finding.kind() == Kind.UNPROVEN
        ? Stream.of("get what is missing first (see what to measure)")
        : words.settle().stream();
  }

  /** Why it matters, with the reasons of stricter rules, which say whose they are. */
  private String reason() {
    StringBuilder reason = new StringBuilder(rule.reason());
    for (Rule other : stricter) {
      reason.append(" The book ").append(other.book()).append(" is stricter here: ");
      reason.append(other.title()).append(". ").append(other.reason());
    }
    return reason.toString();
  }

  /** It as reports hold it, not yet numbered. */
  Report.Item item() {
    Sentences sentences = new Sentences(finding, words);
    Comparison comparison = finding.comparison();
    boolean numbers = comparison != null;
    return new Report.Item(
        finding.identity(),
        0,
        rule.id(),
        finding.kind().toString(),
        finding.fact().subject().toString(),
        finding.fact().subject().words(),
        sentences.sentence(),
        sentences.figures(),
        numbers ? Figures.number(comparison.quantity()) : null,
        numbers ? Figures.expanded(comparison.margin()) : null,
        numbers ? Figures.number(comparison.limit()) : null,
        numbers ? Figures.number(comparison.margin()) : null,
        numbers ? comparison.quantity().dimension().unit().symbol() : null,
        reason(),
        law == null ? rule.source() : words.source() + "; read " + law.readOn(),
        law == null ? null : law.authority(),
        rule.safetyCritical(),
        verdict().isPresent(),
        waived.orElse(null),
        Stream.concat(settings(), remedies.stream().map(Remedy::text))
            .map(sentences::filled)
            .distinct()
            .toList());
  }
}
