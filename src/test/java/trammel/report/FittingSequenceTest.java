package trammel.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.derive.Derivation;

/** The order of work: common practice of the trade, as the design names it. */
class FittingSequenceTest {
  private static final Path BUILDS = Path.of("catalog-demo/builds");

  /** Steps that open, press or let go something that carries load. */
  private static final Set<String> SPRINGS =
      Set.of("coils-let-down", "coils-compressed", "leaf-springs", "dampers", "upper-arms");

  /** Steps after which the vehicle stands at another height, or may. */
  private static final Set<String> HEIGHTS =
      Set.of(
          "turn-torsion-bars",
          "coils-let-down",
          "coils-compressed",
          "leaf-springs",
          "raise-body",
          "set-height",
          "settle",
          "tighten-rubber");

  private static Report report(Path sheet) {
    Build build = BuildFiles.read(sheet, Sheet.CATALOG);
    return Reporter.report(
        build,
        Sheet.JUDGE.judge(Derivation.facts(build, Sheet.ON)),
        Sheet.JUDGE,
        List.of(),
        Sheet.CATALOG,
        Sheet.ON);
  }

  private static Report demo(String name) {
    return report(BUILDS.resolve(name + ".build.yaml"));
  }

  private static Report sheet(Path folder, String vehicle, String changes) throws IOException {
    return report(
        Files.writeString(
            folder.resolve("sheet.build.yaml"),
            "build: b\ncatalog: "
                + Path.of("catalog-demo").toAbsolutePath()
                + "\nvehicle: "
                + vehicle
                + "\nchanges:\n"
                + changes));
  }

  private static List<String> names(Report report) {
    return report.fitting().steps().stream().map(Report.Step::step).toList();
  }

  private static Report.Step step(Report report, String name) {
    return report.fitting().steps().stream()
        .filter(step -> step.step().equals(name))
        .findFirst()
        .orElseThrow();
  }

  static Stream<Path> sheets() throws IOException {
    try (Stream<Path> files = Files.list(BUILDS)) {
      return files.sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void everyDemoSheetIsDoneInAnOrderThatHurtsNobody(Path sheet) {
    Report report = report(sheet);
    List<String> names = names(report);
    assertThat(names).isNotEmpty().doesNotHaveDuplicates();
    assertThat(report.fitting().steps())
        .extracting(Report.Step::number)
        .isEqualTo(Stream.iterate(1, n -> n + 1).limit(names.size()).toList());
    for (String name : names) {
      if (step(report, name).state().startsWith("on stands") && !name.equals("raise-vehicle")) {
        before(names, "raise-vehicle", name);
      }
      if (SPRINGS.contains(name)) {
        before(names, "raise-vehicle", name);
        assertThat(step(report, name).caution()).as(name).isNotBlank();
        assertThat(step(report, name).state()).as(name).startsWith("on stands under the frame, ");
        if (names.contains("release-pressure")) {
          before(names, "release-pressure", name);
        }
      }
      if (HEIGHTS.contains(name)) {
        before(names, name, "alignment");
      }
      if (name.equals("height-control-off")) {
        before(names, name, "raise-vehicle");
        before(names, "fit-wheels", "height-control-on");
      }
    }
    if (names.contains("raise-vehicle")) {
      assertThat(names).endsWith("tighten-again");
      before(names, "torque", "tighten-again");
    }
    if (names.contains("alignment")) {
      before(names, "pressures", "alignment");
      before(names, "alignment", "steering-zero");
    }
  }

  private static void before(List<String> names, String first, String then) {
    assertThat(names).as("%s before %s", first, then).contains(first, then);
    assertThat(names.indexOf(first)).as(first + " before " + then).isLessThan(names.indexOf(then));
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void everyPartOfASheetHasItsStep(Path sheet) {
    Build build = BuildFiles.read(sheet, Sheet.CATALOG);
    Set<String> fitted =
        report(sheet).fitting().steps().stream()
            .flatMap(step -> step.fit().stream())
            .collect(Collectors.toSet());
    Set<String> bought =
        build.lines().stream().map(line -> line.part().number()).collect(Collectors.toSet());
    assertThat(fitted).containsExactlyInAnyOrderElementsOf(bought);
  }

  @Test
  void everyPartOfTheCatalogIsFittedInSomeStep() {
    assertThat(Sheet.CATALOG.parts().values())
        .allSatisfy(
            part ->
                assertThat(WorkStep.values()).as(part.number()).anyMatch(step -> step.fits(part)));
  }

  @Test
  void wheelsAloneHaveTheShortList() {
    Report report = demo("cairnback-same-size");
    assertThat(names(report))
        .containsExactly(
            "raise-vehicle",
            "mount-tires",
            "fit-wheels",
            "look-hanging",
            "torque",
            "pressures",
            "tighten-again");
    assertThat(step(report, "mount-tires").where()).isEqualTo("All four wheels and spare");
    assertThat(step(report, "tighten-again").state()).isEqualTo("after 50 to 100 km");
  }

  @Test
  void aSettingOfTheHeightControlTakesNothingApart() {
    Report report = demo("skerrow-raised-mildly");
    assertThat(names(report))
        .contains("set-height", "tighten-rubber", "alignment", "lamps", "driver-assistance")
        .endsWith("tighten-again")
        .doesNotContain("raise-vehicle", "release-pressure", "look-hanging", "speedometer");
    assertThat(step(report, "set-height").notes())
        .hasSize(4)
        .first()
        .asString()
        .startsWith("Front left: 30 mm");
    assertThat(step(report, "alignment").notes().get(0))
        .startsWith("Front: camber -0.75° to 0.75°, best 0°; caster 2.5° to 4°, best 3.25°;");
    assertThat(step(report, "alignment").notes()).anyMatch(note -> note.contains("toe"));
    assertThat(step(report, "alignment").what()).contains("toe last", "steering wheel");
  }

  @Test
  void ramsAreEmptiedBeforeArmsComeOff() {
    Report report = demo("skerrow-raised-with-arms");
    assertThat(names(report))
        .containsSubsequence(
            "height-control-off",
            "raise-vehicle",
            "release-pressure",
            "undo-what-follows",
            "upper-arms",
            "panhard",
            "connect-what-follows",
            "fit-wheels",
            "height-control-on",
            "set-height",
            "settle",
            "center-axle",
            "tighten-rubber",
            "torque",
            "alignment",
            "steering-zero",
            "tighten-again");
    assertThat(step(report, "release-pressure").notes().get(0)).contains("5700 kPa");
    assertThat(step(report, "upper-arms").fit()).containsExactly("LB-UA-SK-S");
    assertThat(step(report, "upper-arms").notes())
        .anySatisfy(
            note ->
                assertThat(note).contains("LB-UA-SK-S, each: 1 × locking nut", "supplied; tight"));
    assertThat(step(report, "panhard").where()).isEqualTo("Both rear wheels");
    assertThat(step(report, "panhard").notes()).contains("LB-PK-SK: hole upper.");
  }

  @Test
  void brakesAreALicensedShopsWorkAndAreTriedBeforeTheRoad(@TempDir Path folder)
      throws IOException {
    Report report =
        sheet(
            folder,
            "drayling",
            """
              - { add: CM-DR-R40, at: rear }
              - { add: VN-DR-R, at: rear }
              - { raise: 30 mm, at: front }
            """);
    assertThat(names(report))
        .containsSubsequence(
            "turn-torsion-bars",
            "leaf-springs",
            "brake-lines",
            "brake-valve",
            "brake-test",
            "alignment");
    for (String name : List.of("brake-lines", "brake-valve", "brake-test")) {
      assertThat(step(report, name).by()).as(name).isEqualTo("a licensed shop only");
      assertThat(step(report, name).caution()).as(name).isNotBlank();
    }
    assertThat(step(report, "leaf-springs").fit()).containsExactly("CM-DR-R40");
    assertThat(step(report, "leaf-springs").takeOff()).hasSize(1);
    assertThat(step(report, "brake-lines").caution()).contains("Brake fluid");
  }

  @Test
  void coilsOfAStrutAreHeldAndThoseOfABeamLetDown(@TempDir Path folder) throws IOException {
    Report report =
        sheet(
            folder,
            "cairnback",
            """
              - { add: LT-CB-F20, at: front }
              - { add: LS-CB-R20, at: rear }
            """);
    assertThat(step(report, "coils-compressed").state()).endsWith("spring held in a compressor");
    assertThat(step(report, "coils-compressed").where()).isEqualTo("Both front wheels");
    assertThat(step(report, "coils-compressed").fit()).containsExactly("LT-CB-F20");
    assertThat(step(report, "coils-let-down").fit()).containsExactly("LS-CB-R20");
    assertThat(step(report, "coils-let-down").where()).isEqualTo("Both rear wheels");
    assertThat(step(report, "coils-let-down").caution()).contains("flies out");
    assertThat(step(report, "coils-compressed").notes())
        .containsExactly(
            "LT-CB-F20, each: 3 × strut-top stud M10x1.25x50 (instead of M10x1.25x30), supplied");
  }

  @Test
  void fastenersThatDoNotComeAreAsked(@TempDir Path folder) throws IOException {
    Report longer = sheet(folder, "cairnback", "  - { add: LT-CB-F30, at: front }\n");
    assertThat(longer.findings())
        .filteredOn(item -> item.id().equals("order.fasteners@order:LT-CB-F30"))
        .singleElement()
        .satisfies(
            item -> {
              assertThat(item.kind()).isEqualTo("companion");
              assertThat(item.sentence()).contains("6 × strut-top stud M10x1.25x60");
            });
    assertThat(longer.additions())
        .extracting(Report.Addition::what)
        .contains("6 × strut-top stud M10x1.25x60 (instead of M10x1.25x30)");

    Report nobody = sheet(folder, "linnhope", "  - { add: LT-LH-F15, at: front }\n");
    assertThat(nobody.findings())
        .filteredOn(item -> item.id().equals("order.fasteners@order:LT-LH-F15"))
        .singleElement()
        .satisfies(
            item -> {
              assertThat(item.kind()).isEqualTo("unproven");
              assertThat(item.decides()).isTrue();
              assertThat(item.sentence()).startsWith("Nobody says what fastens LT-LH-F15");
            });

    Report once = demo("cairnback-towing");
    assertThat(once.findings())
        .extracting(Report.Item::id)
        .contains("order.single-use@order:LB-UA-CB-L", "order.after-fit@vehicle");
  }

  @Test
  void noTorqueIsEverGiven() throws IOException {
    for (Path sheet : sheets().toList()) {
      Report report = report(sheet);
      assertThat(TextReport.of(report)).doesNotContainPattern("\\d\\s*(N·?m|Nm|lb-?ft|ft-?lb)\\b");
      report.fitting().steps().stream()
          .filter(step -> step.step().equals("torque"))
          .forEach(step -> assertThat(step.notes().toString()).contains("no figure is given"));
    }
  }

  @Test
  void textAndDataSayTheSame() {
    Report report = demo("skerrow-raised-with-arms");
    String text = TextReport.of(report).replaceAll("\\s+", " ");
    JsonNode steps =
        new ObjectMapper().readTree(JsonReport.of(report)).path("fitting").path("steps");
    assertThat(steps.size()).isEqualTo(report.fitting().steps().size());
    for (JsonNode step : steps) {
      assertThat(text)
          .contains(
              step.path("number").asInt()
                  + ". "
                  + step.path("where").asString()
                  + ": "
                  + step.path("what").asString())
          .contains("State: " + step.path("state").asString())
          .contains(step.path("caution").asString());
    }
    assertThat(text).contains("Fitting sequence. Read it to its end");
  }

  @Test
  void aSheetThatDoesNotFitIsNotToBeBegun() {
    assertThat(demo("skerrow-rub-at-lock").fitting().begin()).startsWith("Not to be begun");
  }
}
