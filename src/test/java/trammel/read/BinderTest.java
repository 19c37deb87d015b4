package trammel.read;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.quantity.Absence;
import trammel.quantity.Dimension;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.Sample.Arm;
import trammel.read.Sample.Axle;
import trammel.read.Sample.Line;
import trammel.read.Sample.Part;
import trammel.read.Sample.Pattern;
import trammel.read.Sample.Seat;
import trammel.read.Sample.Sheet;
import trammel.read.Sample.Spacer;

class BinderTest {
  private static <T> T bind(Class<T> type, String text) {
    Problems problems = new Problems();
    Node node = YamlReader.parse("a.yaml", text.getBytes(UTF_8), problems).orElseThrow();
    T bound = Binder.bind(type, node, problems).orElse(null);
    assertThat(problems.sorted()).isEmpty();
    assertThat(bound).isNotNull();
    return java.util.Objects.requireNonNull(bound);
  }

  private static Input input(Quantity quantity) {
    return java.util.Objects.requireNonNull(quantity.input());
  }

  @Test
  void bindsEveryKindOfComponent() {
    Sheet sheet =
        bind(
            Sheet.class,
            """
            title: A sheet
            surveyed: 2026-02-28
            lifted: yes
            spares: 2
            for: trails
            pattern: 5x120
            hubs:
              front: { pilot: 71.5 mm, seat: flat-washer }
            lines:
              - part: a
                count: 4
              - { part: b, note: 'yes' }
            parts:
              t-1: { seat: ball }
            offsets: { rear: 38 mm, front: -12 mm ± 1 mm }
            fittings:
              - { kind: wheel-spacer, thickness: 20 mm }
              - { kind: control-arm, position: upper }
            """);
    assertThat(sheet.place()).isEqualTo(new Place("a.yaml", 1, 1));
    assertThat(sheet.title()).isEqualTo("A sheet");
    assertThat(sheet.surveyed()).isEqualTo(LocalDate.of(2026, 2, 28));
    assertThat(sheet.lifted()).isTrue();
    assertThat(sheet.spares()).isEqualTo(2);
    assertThat(sheet.purpose()).isEqualTo("trails");
    assertThat(sheet.pattern()).isEqualTo(new Pattern(5, "120"));
    assertThat(sheet.hubs().front().pilot().value()).isEqualTo(71.5);
    assertThat(sheet.hubs().front().seat()).isEqualTo(Seat.FLAT_WASHER);
    assertThat(sheet.lines()).containsExactly(new Line("a", 4, null), new Line("b", null, "yes"));
    assertThat(sheet.parts()).containsExactly(Map.entry("t-1", new Part("t-1", Seat.BALL)));
    assertThat(sheet.offsets().keySet()).containsExactly(Axle.REAR, Axle.FRONT);
    assertThat(sheet.offsets().get(Axle.FRONT)).extracting(Quantity::expanded).isEqualTo(1.0);
    assertThat(sheet.fittings()).hasSize(2);
    assertThat(sheet.fittings().get(0)).isInstanceOf(Spacer.class);
    assertThat(sheet.fittings().get(1)).isEqualTo(new Arm("upper"));
  }

  @Test
  void whatIsLeftOutIsEmptyOrAbsentAndNeverAPass() {
    for (String text :
        List.of("title: x\n", "title: x\nhubs:\n  front:\n  rear: {pilot: }\nlines:\nlifted:\n")) {
      Sheet sheet = bind(Sheet.class, text);
      assertThat(sheet.surveyed()).isNull();
      assertThat(sheet.lifted()).isFalse();
      assertThat(sheet.lines()).isEmpty();
      assertThat(sheet.parts()).isEmpty();
      Quantity pilot = sheet.hubs().rear().pilot();
      assertThat(pilot.dimension()).isEqualTo(Dimension.LENGTH);
      assertThat(pilot.absence())
          .isEqualTo(
              new Absence(
                  "pilot diameter",
                  "not stated in a.yaml at hubs.rear.pilot",
                  Instrument.CALIPER,
                  "measure the pilot across"));
      assertThat(sheet.hubs().rear().pilotLength().name()).isEqualTo("pilot length");
    }
  }

  @Test
  void oneValueIsAListOfOne() {
    assertThat(bind(Names.class, "names: a\n").names()).containsExactly("a");
    assertThat(bind(Names.class, "names: [a, b]\n").names()).containsExactly("a", "b");
    assertThat(bind(Names.class, "names: []\n").names()).isEmpty();
  }

  record Names(List<String> names) {}

  @Test
  void aKeyComponentOutsideAMapIsAnOrdinaryOne() {
    Part part = bind(Part.class, "number: t-9\nseat: ball\n");
    assertThat(part.number()).isEqualTo("t-9");
  }

  @Test
  void aQuantityKnowsItsInput() {
    Sheet sheet = bind(Sheet.class, "title: x\nhubs:\n  front: {pressure: 35 psi}\n");
    Quantity pressure = sheet.hubs().front().pressure();
    assertThat(pressure.name()).isEqualTo("tire pressure");
    // 35 psi of 6.894757 kPa each (NIST SP 811, B.8), ± 2 % of the gauge
    assertThat(pressure.value()).isCloseTo(241.3165, within(1e-4));
    assertThat(pressure.expanded()).isCloseTo(4.82633, within(1e-4));
    assertThat(input(pressure).file()).isEqualTo("a.yaml");
    assertThat(input(pressure).line()).isEqualTo(3);
    assertThat(input(pressure).path()).isEqualTo("hubs.front.pressure");
    assertThat(input(pressure).instrument()).isEqualTo(Instrument.GAUGE);
    assertThat(input(pressure).source()).isEmpty();
  }

  @Test
  void aDescribedQuantityNamesItsToolAndSource() {
    Sheet sheet =
        bind(
            Sheet.class,
            """
            title: x
            hubs:
              front:
                pilot: { value: 71.5 mm, by: tape, source: owner, note: rusty }
                pilot-length: { value: 9 mm ± 0.5 mm, by: tape }
            """);
    Quantity pilot = sheet.hubs().front().pilot();
    assertThat(pilot.expanded()).isEqualTo(3);
    assertThat(input(pilot).instrument()).isEqualTo(Instrument.TAPE);
    assertThat(input(pilot).source()).isEqualTo("owner");
    assertThat(input(pilot).path()).isEqualTo("hubs.front.pilot");
    assertThat(sheet.hubs().front().pilotLength().expanded()).isEqualTo(0.5);
  }

  @Test
  void theNearestSourceCounts() {
    Sheet sheet =
        bind(
            Sheet.class,
            """
            title: x
            source: workshop manual
            hubs:
              front: { pilot: 71 mm, pilot-length: { value: 9 mm, source: caliper } }
              rear: { source: maker's drawing, pilot: 71 mm }
            offsets: { source: stamped mark, front: 20 mm }
            fittings:
              - { kind: wheel-spacer, thickness: 20 mm }
            """);
    assertThat(input(sheet.hubs().front().pilot()).source()).isEqualTo("workshop manual");
    assertThat(input(sheet.hubs().front().pilotLength()).source()).isEqualTo("caliper");
    assertThat(input(sheet.hubs().rear().pilot()).source()).isEqualTo("maker's drawing");
    Quantity offset = java.util.Objects.requireNonNull(sheet.offsets().get(Axle.FRONT));
    assertThat(input(offset).source()).isEqualTo("stamped mark");
    assertThat(offset.name()).isEqualTo("front offset");
    assertThat(sheet.offsets()).hasSize(1);
    assertThat(input(((Spacer) sheet.fittings().get(0)).thickness()).source())
        .isEqualTo("workshop manual");
  }

  @Test
  void sourceIsAnOrdinaryKeyInAMapOfTexts() {
    assertThat(bind(Texts.class, "texts: {source: a, b: c}\n").texts())
        .containsExactly(Map.entry("source", "a"), Map.entry("b", "c"));
  }

  record Texts(Map<String, String> texts) {}

  @Test
  void yesAndNoInBothWords() {
    assertThat(bind(Sheet.class, "title: x\nlifted: true\n").lifted()).isTrue();
    assertThat(bind(Sheet.class, "title: x\nlifted: No\n").lifted()).isFalse();
    assertThat(bind(Sheet.class, "title: x\nlifted: false\n").lifted()).isFalse();
  }

  @Test
  void aVariantCanBeTheRoot() {
    Sample.Fitting fitting = bind(Sample.Fitting.class, "kind: control-arm\nposition: lower\n");
    assertThat(fitting).isEqualTo(new Arm("lower"));
  }

  @Test
  void nothingHalfReadComesOutOfAFile(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("b.yaml"), "title: x\nlifted: maybe\ncolor: y\n");
    assertThatThrownBy(() -> Binder.read(Sheet.class, Path.of("b.yaml"), file))
        .isInstanceOfSatisfying(
            UnreadableFile.class, refusal -> assertThat(refusal.problems()).hasSize(2))
        .hasMessageStartingWith("b.yaml:2:9: lifted: found \"maybe\"; expected yes or no\n");
    Files.writeString(file, "title: x\n");
    assertThat(Binder.read(Sheet.class, Path.of("b.yaml"), file).title()).isEqualTo("x");
  }

  @Test
  void manyProblemsAreCountedAndNotAllShown() {
    Problems problems = new Problems();
    for (int i = 0; i < 60; i++) {
      problems.add(new Place("a.yaml", 60 - i, 1), "wrong", "Mend it.");
      problems.add(new Place("a.yaml", 60 - i, 1), "wrong", "Mend it.");
    }
    assertThat(problems.sorted()).hasSize(60).isSorted();
    assertThat(problems.toString()).startsWith("a.yaml:1:1: wrong\n").endsWith("\n… and 10 more");
  }

  // Errors in the program, which no file can mend.

  record NotMeasured(Quantity gap) {}

  record NeitherNor(String name) {}

  record Both(@Required @Nullable String name) {}

  record MeasuredText(
      @Measured(value = Dimension.LENGTH, by = Instrument.TAPE, how = "measure") @Required
          String name) {}

  record Unreadable(@Required StringBuilder text) {}

  record OptionalInside(NeedsName inner) {}

  record NeedsName(@Required String name) {}

  record TwoOfOneKey(@Required String a, @Named("a") @Required String b) {}

  sealed interface Unnamed permits One {}

  record One() implements Unnamed {}

  record HasUnnamed(@Required Unnamed unnamed) {}

  @Test
  void recordsThatNoFileCanFillAreErrorsInTheProgram() {
    wrong(NotMeasured.class, "NotMeasured.gap is not @Measured");
    wrong(NeitherNor.class, "NeitherNor.name must be @Required or @Nullable");
    wrong(Both.class, "cannot be both required and nullable");
    wrong(MeasuredText.class, "is @Measured, but no quantity");
    wrong(Unreadable.class, "Unreadable.text");
    wrong(OptionalInside.class, "OptionalInside.inner must be @Required or @Nullable");
    wrong(TwoOfOneKey.class, "has the key of another component");
    assertThatIllegalStateException()
        .isThrownBy(() -> RecordShape.reachable(HasUnnamed.class))
        .withMessageContaining("@Discriminator");
  }

  private static void wrong(Class<?> type, String message) {
    assertThatIllegalStateException()
        .isThrownBy(() -> RecordShape.of(type))
        .withMessageContaining(message);
  }

  @Test
  void aShapeTellsWhatAFileMayHold() {
    RecordShape shape = RecordShape.of(Sample.Hub.class);
    assertThat(shape.keys()).containsExactly("pilot-length", "pilot", "pressure", "camber", "seat");
    RecordShape.Component pilot = shape.components().get(1);
    assertThat(pilot.words()).isEqualTo("pilot diameter");
    assertThat(pilot.measured()).isNotNull().extracting(Measured::max).isEqualTo(180.0);
    assertThat(shape.components().get(4).nullable()).isTrue();
    assertThat(RecordShape.reachable(Sheet.class))
        .extracting(reached -> reached.type().getSimpleName())
        .containsExactly("Sheet", "Hubs", "Hub", "Line", "Part", "Spacer", "Arm");
    assertThat(VariantShape.of(Sample.Fitting.class).variants())
        .containsExactly(
            Map.entry("wheel-spacer", Spacer.class), Map.entry("control-arm", Arm.class));
  }
}
