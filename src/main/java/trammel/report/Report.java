package trammel.report;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * All that a check has to say, ready to be printed, drawn or sent.
 *
 * @param verdict what the sheet amounts to
 * @param decidedBy the one thing that decides it
 * @param law what is said of the law; null where the sheet names no place
 * @param build the sheet's title
 * @param sheet the sheet's file
 * @param vehicle maker and model
 * @param date the day it was checked for
 * @param findings what counts, gravest first; then what was waived
 * @param possible cautions that may or may not hold
 * @param background open questions that the change neither raises nor worsens
 * @param holds order lines to hold back
 * @param additions what to add to the order
 * @param fitting the work in its order
 * @param measuring what to measure, most useful tool first
 * @param precedents what is met because the vehicle is sound there as found
 * @param parts the parts that are spoken of
 * @param notChecked added parts that no rule judges
 * @param notices what is to be said of the sheet's waivers
 * @param cautions what to know before any wrench turns
 * @param assumed what rule books assume of the vehicle where nobody gives a value
 * @param books the rule books that judged
 * @param notRead the user's rule books that could not be read, so that they did not judge
 */
public record Report(
    Verdict verdict,
    String decidedBy,
    @Nullable Law law,
    String build,
    String sheet,
    String vehicle,
    LocalDate date,
    List<Item> findings,
    List<Item> possible,
    List<Item> background,
    List<Item> holds,
    List<Addition> additions,
    Fitting fitting,
    List<Tool> measuring,
    List<Precedent> precedents,
    List<NamedPart> parts,
    List<String> notChecked,
    List<String> notices,
    List<String> cautions,
    List<Assumed> assumed,
    List<Book> books,
    List<NotRead> notRead) {

  /** It fits or may, and is not lawful as it stands. */
  private static final int NOT_LAWFUL_AS_IT_STANDS = 6;

  /** The verdict in words, with what stands against it in law where the sheet names a place. */
  String headline() {
    if (law == null || law.standing() == LegalStanding.WITHIN_LIMITS) {
      return verdict.toString();
    }
    String fit = verdict == Verdict.FITS ? verdict + " the vehicle" : verdict.toString();
    return fit + "; " + law.words();
  }

  /** The exit status of a check that ends so. */
  public int exitStatus() {
    boolean unlawful = law != null && law.standing().notLawfulAsItStands();
    return unlawful && verdict != Verdict.DOES_NOT_FIT
        ? NOT_LAWFUL_AS_IT_STANDS
        : verdict.exitStatus();
  }

  /** Every finding, in the order of numbers. */
  public Stream<Item> items() {
    return Stream.of(findings, possible, background, holds).flatMap(List::stream);
  }

  /**
   * One finding.
   *
   * @param id its identity, {@code rule-id@subject}
   * @param number its number in this report; findings that say the same of several places share one
   * @param kind what it amounts to
   * @param subject the one place it is about
   * @param where all places of its number, in words
   * @param sentence what is found
   * @param figures the value and its uncertainty against the limit, in words; empty where the
   *     sentence says it or tokens were compared
   * @param value the value judged; null where it is absent or tokens were compared
   * @param limit what it was held against
   * @param margin how far inside the limit it lies; negative outside
   * @param uncertainty expanded uncertainty (k = 2) of the margin
   * @param unit the unit of all four
   * @param reason why it matters
   * @param source document and clause of the rule; of a book of the law also the day it was read
   * @param authority who decides what the law of the place means here; null where no book of the
   *     law speaks
   * @param decides whether the verdict rests on it
   * @param waived who lives with it, and until when; null where nobody does
   * @param remedies what would settle it, in the order a fitter would try
   */
  public record Item(
      String id,
      int number,
      String rule,
      String kind,
      String subject,
      String where,
      String sentence,
      String figures,
      @Nullable Double value,
      @Nullable Double uncertainty,
      @Nullable Double limit,
      @Nullable Double margin,
      @Nullable String unit,
      String reason,
      String source,
      @Nullable String authority,
      boolean safetyCritical,
      boolean decides,
      @Nullable Waived waived,
      List<String> remedies) {

    Item numbered(int newNumber, String newWhere) {
      return new Item(
          id,
          newNumber,
          rule,
          kind,
          subject,
          newWhere,
          sentence,
          figures,
          value,
          uncertainty,
          limit,
          margin,
          unit,
          reason,
          source,
          authority,
          safetyCritical,
          decides,
          waived,
          remedies);
    }
  }

  /** A decision to live with a finding. */
  public record Waived(String reason, String by, LocalDate until) {}

  /**
   * Something to add to the order.
   *
   * @param what the kind of part, or what is to be done to the order
   * @param where the places that want it, in words
   * @param candidates parts of this catalog that would do
   * @param note said where no part of this catalog would; empty otherwise
   * @param findings identities of what asks for it
   */
  public record Addition(
      String what, String where, List<NamedPart> candidates, String note, List<String> findings) {}

  /** A part by number and name, with its price where the catalog states one. */
  public record NamedPart(String part, String name, @Nullable String price) {}

  /**
   * The work that the sheet's parts and settings call for.
   *
   * @param begin whether it may be begun, in words
   * @param steps in the order in which they are done
   */
  public record Fitting(String begin, List<Step> steps) {}

  /**
   * One step of the work.
   *
   * @param number its place in the order, from 1
   * @param step its name, the same in every report
   * @param what what is done
   * @param where the wheels or axles, in words
   * @param takeOff numbers of the parts that come off
   * @param fit numbers of the parts that go on
   * @param state how the vehicle must stand meanwhile
   * @param by who may do it
   * @param caution where the danger is; empty where the step has none of its own
   * @param notes settings, figures and fasteners that belong to it
   */
  public record Step(
      int number,
      String step,
      String what,
      String where,
      List<String> takeOff,
      List<String> fit,
      String state,
      String by,
      String caution,
      List<String> notes) {}

  /** What one tool would settle. */
  public record Tool(String tool, List<Measurement> measurements) {}

  /**
   * One value to get.
   *
   * @param what the value
   * @param where on the vehicle, in words
   * @param how what to do with the tool
   * @param settles identities of the findings it would help to settle
   */
  public record Measurement(String what, String where, String how, List<String> settles) {}

  /** A requirement that is met without a number: sound as found, and the change moves it no way. */
  public record Precedent(String rule, String subject, String where, String title) {}

  /**
   * A rule book that judged.
   *
   * @param version its own version; of the base book the newest that any of its rules names
   * @param rules how many rules it has
   */
  public record Book(String name, String version, int rules) {}

  /**
   * A rule book that could not be read, so that none of its rules judged.
   *
   * @param book its name, or its folder where its manifest cannot be read
   * @param folder where it is
   * @param mayConcern whether its rules would judge this vehicle here, or might; then the verdict
   *     is no better than not proven
   * @param problems what is wrong with it, with file and line; the first few
   * @param more how many further problems it has
   */
  public record NotRead(
      String book, String folder, boolean mayConcern, List<String> problems, int more) {}
}
