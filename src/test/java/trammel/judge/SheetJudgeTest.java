package trammel.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import trammel.book.Book;
import trammel.book.Books;
import trammel.book.TestBook;
import trammel.catalog.PartKind;
import trammel.catalog.VehicleProfile.Drive;
import trammel.catalog.VehicleProfile.VehicleClass;
import trammel.fact.Clearance;
import trammel.fact.Fact;
import trammel.fact.PartOnVehicle;
import trammel.fact.Standing;
import trammel.fact.Vehicle;
import trammel.quantity.Absence;
import trammel.quantity.Constants;
import trammel.quantity.Dimension;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.UnreadableFile;
import trammel.subject.Station;
import trammel.subject.Subject;

/** Sheets judge beside the base book, and cannot loosen it. */
class SheetJudgeTest {
  private static final String ROOM =
      """
      rule: shop.room
      title: Twenty millimeters stay free
      kind: conflict
      says: "{value} is left."
      reason: Mud packs.
      source: common practice
      since: 1.0
      about: clearance
      where: { value: clearance.station, is: rear-mount }
      demands: { value: clearance.gap, at-least: 20 mm }
      cases:
      """
          + IntStream.rangeClosed(1, 4)
              .mapToObj(
                  i ->
                      "  - { case: number "
                          + i
                          + ", clearance: { station: arch }, expects: nothing }\n")
              .collect(Collectors.joining());
  private static final String STRICTER =
      ROOM.replace("since:", "stricter-than: clearance.rear-mount\nsince:");

  private final List<AutoCloseable> open = new ArrayList<>();

  @AfterEach
  void close() throws Exception {
    for (AutoCloseable one : open) {
      one.close();
    }
  }

  private static String sheet(String... rules) {
    return Stream.of(rules)
        .map(rule -> "  - " + rule.strip().replace("\n", "\n    ") + "\n")
        .collect(Collectors.joining("", "rules:\n", ""));
  }

  private static List<Book> read(TestBook... books) {
    return Books.read(List.of(books), Judge.knownRules());
  }

  private Judge judge(String... rules) {
    Judge judge = Judge.of(read(TestBook.shop("shop", sheet(rules))));
    open.add(judge);
    return judge;
  }

  private static Clearance gap(String subject, Quantity gap) {
    return new Clearance(
        Subject.parse(subject),
        Standing.WORSE_OR_NEW,
        List.of(),
        Station.REAR_MOUNT,
        "shoulder",
        "mount",
        gap,
        Constants.mm(-5),
        "at lock",
        "",
        Constants.number(1),
        Constants.number(1));
  }

  private static List<String> found(Judge judge, Fact... facts) {
    return judge.judge(List.of(facts)).findings().stream()
        .map(
            f ->
                f.identity() + " " + f.kind() + " by " + f.told().by() + " also " + f.told().also())
        .toList();
  }

  private static Vehicle vehicle(String name, String place) {
    return new Vehicle(
        Subject.VEHICLE,
        Standing.WORSE_OR_NEW,
        List.of(),
        name,
        VehicleClass.LIGHT_TRUCK,
        Drive.FULL_TIME,
        Constants.kg(2500),
        Constants.mm(2700),
        place);
  }

  private static Quantity absent() {
    return Quantity.absent(Dimension.LENGTH, new Absence("gap", "not taken", Instrument.TAPE, ""));
  }

  @Test
  void aRuleOfASheetStandsAmongAllOthers() {
    Judge judge = judge(ROOM);
    Rule rule = judge.rule("shop.room").orElseThrow();
    assertThat(rule.book()).isEqualTo("shop");
    assertThat(rule.facts()).isEqualTo(Set.of(Clearance.class));
    assertThat(found(judge, gap("front-left:rear-mount", Constants.mm(15))))
        .containsExactly("shop.room@front-left:rear-mount conflict by shop.room also []");
    assertThat(found(judge, gap("front-left:rear-mount", Constants.mm(30)))).isEmpty();
  }

  @Test
  void whatIsStricterIsOneFindingUnderTheTightenedRulesName() {
    Judge judge = judge(STRICTER);
    String at = "front-left:rear-mount";
    assertThat(found(judge, gap(at, Constants.mm(15))))
        .contains("clearance.rear-mount@" + at + " conflict by shop.room also [shop.room]")
        .noneMatch(finding -> finding.startsWith("shop.room@"));
    assertThat(found(judge, gap(at, Constants.mm(-4))))
        .contains(
            "clearance.rear-mount@" + at + " conflict by clearance.rear-mount also [shop.room]")
        .hasSize(1);
    assertThat(found(judge, gap(at, absent())))
        .contains(
            "clearance.rear-mount@" + at + " unproven by clearance.rear-mount also [shop.room]");
    assertThat(found(judge, gap(at, Constants.mm(30)))).isEmpty();
  }

  @Test
  void aStricterRuleNeverTakesAFindingOfTheBaseAway() {
    Judge base = Judge.ofBaseBook();
    open.add(base);
    Judge judge = judge(STRICTER.replace("at-least: 20 mm", "at-least: -90 mm"));
    Random random = new Random(7);
    for (int round = 0; round < 50; round++) {
      Fact fact =
          random.nextInt(5) == 0
              ? gap("rear-left:rear-mount", absent())
              : gap("rear-left:rear-mount", Constants.mm(random.nextInt(60) - 30));
      List<Finding> without = base.judge(List.of(fact)).findings();
      List<Finding> with = judge.judge(List.of(fact)).findings();
      assertThat(with)
          .extracting(Finding::identity)
          .containsAll(without.stream().map(Finding::identity).toList());
      assertThat(with)
          .extracting(Finding::kind)
          .containsAll(without.stream().map(Finding::kind).toList());
    }
  }

  @Test
  void aWantedPartIsNamedByWhatIsWanted() {
    Judge judge =
        judge(
            ROOM.replace("{value} is left.", "A {need} is wanted.")
                .replace(
                    "demands: { value: clearance.gap, at-least: 20 mm }",
                    "needs: { kind: bump-stop }"));
    Clearance gap = gap("front-left:rear-mount", Constants.mm(30));
    assertThat(judge.judge(List.of(gap)).findings())
        .singleElement()
        .satisfies(f -> assertThat(f.need()).isEqualTo(new Need(PartKind.BUMP_STOP, "front-left")));
    PartOnVehicle there =
        new PartOnVehicle(
            Subject.parse("front-left:bump-stop"),
            Standing.NO_WORSE,
            List.of("B-1"),
            "B-1",
            PartKind.BUMP_STOP);
    assertThat(judge.judge(List.of(gap, there)).findings()).isEmpty();
  }

  @Test
  void anOpenLawIsToldEvenWhereNothingChanges() {
    String law = ROOM.replace("kind: conflict", "kind: law\noutcome: not-lawful");
    Judge judge = Judge.of(read(TestBook.law(sheet(law))));
    open.add(judge);
    Clearance open =
        new Clearance(
            Subject.parse("front-left:rear-mount"),
            Standing.NO_WORSE,
            List.of(),
            Station.REAR_MOUNT,
            "",
            "",
            absent(),
            absent(),
            "",
            "",
            Constants.number(1),
            Constants.number(1));
    assertThat(judge.judge(List.of(open)).findings())
        .filteredOn(finding -> finding.rule().equals("shop.room"))
        .singleElement()
        .satisfies(finding -> assertThat(finding.kind()).isEqualTo(Kind.LAW))
        .satisfies(finding -> assertThat(finding.possibly()).isTrue());
    assertThat(judge.rule("shop.room").orElseThrow().outcome()).isNotNull();
  }

  @Test
  void booksOfOtherVehiclesAndPlacesAreNotInTheBaseThatJudges() {
    TestBook mine =
        TestBook.shop("mine", sheet(ROOM))
            .manifest("vocabulary", "vehicles: [skerrow]\nvocabulary");
    TestBook others =
        TestBook.shop("others", sheet(ROOM.replace("shop.room", "shop.other-room")))
            .manifest("vocabulary", "vehicles: [cairnback]\nvocabulary");
    TestBook law =
        TestBook.law(
            sheet(
                ROOM.replace("shop.room", "road.room")
                    .replace("kind: conflict", "kind: law\noutcome: not-lawful")));
    Judges judges = Judges.of(read(mine, others, law));
    open.add(judges);
    assertThat(ids(judges.over("skerrow", "")))
        .contains("shop.room")
        .doesNotContain("shop.other-room", "road.room");
    assertThat(ids(judges.over("skerrow", "LOWMARK"))).contains("shop.room", "road.room");
    assertThat(ids(judges.over("cairnback", "elsewhere")))
        .contains("shop.other-room")
        .doesNotContain("shop.room");
    assertThat(judges.over("skerrow", "")).isSameAs(judges.over("skerrow", "elsewhere"));
    assertThat(judges.rules())
        .extracting(Rule::id)
        .contains("shop.room", "shop.other-room", "road.room");
  }

  private static List<String> ids(Judge judge) {
    return judge.rules().stream().map(Rule::id).toList();
  }

  @Test
  void rulesThatSpeakWithoutEndAreRefusedByName() {
    String[] many =
        IntStream.range(0, 1000)
            .mapToObj(i -> ROOM.replace("shop.room", i == 500 ? "shop.a" : "shop.room-" + i))
            .toArray(String[]::new);
    Judge judge = judge(many);
    List<Fact> facts =
        IntStream.range(0, 1000)
            .mapToObj(i -> (Fact) gap("front-left:n" + i, Constants.mm(5)))
            .toList();
    assertThatThrownBy(() -> judge.judge(facts))
        .isInstanceOf(EndlessRules.class)
        .hasMessageContaining("do not come to an end on 1000 facts")
        .hasMessageContaining("shop.");
  }

  @Test
  void aConditionMayAskOfTheVehicle() {
    Judge judge =
        judge(
            ROOM.replace(
                "where: { value: clearance.station, is: rear-mount }",
                "where: { all: [{ value: vehicle.vehicle, of: vehicle, is: skerrow },"
                    + " { value: vehicle.drive, of: vehicle, is-not: front }] }"));
    Clearance gap = gap("front-left:rear-mount", Constants.mm(15));
    assertThat(found(judge, gap, vehicle("skerrow", ""))).hasSize(1);
    assertThat(found(judge, gap, vehicle("cairnback", ""))).isEmpty();
    assertThat(found(judge, gap)).isEmpty();
  }

  /** A row that fits loosens nothing; one that rubs is told under the rule that it tightens. */
  @Test
  void aTableTightensARuleToo() {
    String table =
        """
        tables:
          - table: clearance.seen
            title: What we have seen behind the wheel
            kind: caution
            says: "{gap} is left; seen here: {what}."
            reason: It stood on our lift.
            source: "our own: two vehicles"
            since: 1.0
            stricter-than: clearance.rear-mount
            about: clearance
            where: { value: clearance.station, is: rear-mount }
            columns:
              - { value: clearance.gap, reads: no-worse-than, worse: smaller }
            results: [outcome, what]
            hit: collect
            rows:
              - [15 mm, conflict, the mud flap was torn off]
              - [-9 mm, fits, ""]
            cases:
        """
            + "      - { case: c, clearance: { station: arch, gap: 1 mm }, expects: nothing }\n"
                .repeat(4);
    Judge judge = Judge.of(read(TestBook.shop("shop", table)));
    open.add(judge);
    String at = "front-left:rear-mount";
    assertThat(found(judge, gap(at, Constants.mm(12))))
        .contains(
            "clearance.rear-mount@" + at + " conflict by clearance.seen also [clearance.seen]")
        .noneMatch(finding -> finding.startsWith("clearance.seen@"));
    assertThat(found(judge, gap(at, Constants.mm(-4))))
        .contains(
            "clearance.rear-mount@"
                + at
                + " conflict by clearance.rear-mount also [clearance.seen]")
        .hasSize(1);
    assertThat(found(judge, gap(at, Constants.mm(30)))).isEmpty();
    assertThat(judge.judge(List.of(gap(at, Constants.mm(12)))).findings())
        .filteredOn(finding -> finding.rule().equals("clearance.rear-mount"))
        .singleElement()
        .satisfies(
            finding ->
                assertThat(finding.told().results())
                    .containsEntry("what", "the mud flap was torn off"));
  }

  @Test
  void aTableTightensNoRuleThatIsNotThere() {
    String[] wrong = {"clearance.rear-mont", "wheel.bore-loose", "clearance.seen"};
    String[] said = {"which is no rule in force", "which is not about clearance", "than itself"};
    for (int i = 0; i < wrong.length; i++) {
      String sheet =
          """
          tables:
            - table: clearance.seen
              title: What we have seen
              kind: caution
              says: "{gap} is left."
              reason: It stood on our lift.
              source: common practice
              since: 1.0
              stricter-than: WRONG
              about: clearance
              columns: [{ value: clearance.gap, reads: range }]
              hit: first
              rows: [[0 mm..5 mm]]
              cases:
          """
                  .replace("WRONG", wrong[i])
              + "      - { case: c, clearance: { gap: 9 mm }, expects: nothing }\n".repeat(4);
      assertThatThrownBy(() -> read(TestBook.shop("shop", sheet)))
          .isInstanceOf(UnreadableFile.class)
          .hasMessageContaining(said[i]);
    }
  }
}
