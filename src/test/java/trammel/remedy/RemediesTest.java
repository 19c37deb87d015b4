package trammel.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.build.Equipment;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.derive.Derivation;
import trammel.judge.Finding;
import trammel.judge.Judge;
import trammel.judge.Judgement;
import trammel.subject.Position;

/**
 * A part that is named as a remedy settles what it is named for, and never adds what it was to
 * settle.
 */
class RemediesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path DEMO = Path.of("catalog-demo");

  private static Judge judge;
  private static Catalog catalog;

  @BeforeAll
  static void load() {
    judge = Judge.ofBaseBook();
    catalog = CatalogFiles.read(DEMO);
  }

  @AfterAll
  static void close() {
    judge.close();
  }

  static Stream<Path> sheets() throws IOException {
    try (Stream<Path> files = Files.list(DEMO.resolve("builds"))) {
      return files.sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void aNamedPartSettlesItsFindingOnTheWholeSheet(Path sheet) {
    Build build = BuildFiles.read(sheet, catalog);
    Judgement judgement = judge.judge(Derivation.facts(build, DAY));
    Remedies remedies = new Remedies(build, judgement, judge, catalog, DAY);
    Set<String> before = deciding(judgement);
    for (Finding finding : judgement.findings()) {
      for (Remedy remedy : remedies.of(finding)) {
        for (String number : remedy.parts()) {
          Set<String> after =
              new HashSet<>(
                  deciding(judge.judge(Derivation.facts(fitted(build, finding, number), DAY))));
          assertThat(after).as("%s with %s", sheet, number).doesNotContain(finding.identity());
          after.removeAll(before);
          assertThat(after)
              .as("new on %s with %s for %s", sheet, number, finding.identity())
              .isEmpty();
        }
      }
    }
  }

  @Test
  void ringsAreNamedForAWheelOfLargerBore() {
    Build build =
        BuildFiles.read(DEMO.resolve("builds/cairnback-wheels-without-rings.build.yaml"), catalog);
    Judgement judgement = judge.judge(Derivation.facts(build, DAY));
    Remedies remedies = new Remedies(build, judgement, judge, catalog, DAY);
    List<Finding> asking =
        judgement.findings().stream().filter(f -> f.rule().equals("wheel.bore-loose")).toList();
    assertThat(asking).hasSize(4);
    assertThat(asking)
        .allSatisfy(
            finding ->
                assertThat(remedies.of(finding))
                    .flatExtracting(Remedy::parts)
                    .contains("PR-110-106"));
  }

  /**
   * The same wheels that the report's reader would fit it to: those of the order line it stands
   * for, or the axle's.
   */
  private static Build fitted(Build build, Finding finding, String number) {
    Part part = catalog.part(number).orElseThrow();
    Set<Position> at = new HashSet<>();
    for (Position position : Position.running()) {
      boolean here =
          finding.fact().subject().where().equals(position.toString())
              || position
                  .axle()
                  .map(a -> finding.fact().subject().where().equals(a.toString()))
                  .orElse(false);
      if (here) {
        at.addAll(Position.of(position.axle().orElseThrow()));
      }
    }
    build.lines().stream()
        .filter(
            line ->
                finding.about(line.part().number()) && line.at().stream().anyMatch(at::contains))
        .forEach(line -> line.at().stream().filter(p -> p != Position.SPARE).forEach(at::add));
    Map<Position, Equipment> proposed = new EnumMap<>(build.proposed());
    at.forEach(position -> proposed.put(position, instead(build.after(position), part)));
    return build.proposing(proposed);
  }

  /** A spring spacer takes the place of another: no remedy stacks them. */
  private static Equipment instead(Equipment now, Part part) {
    return (part.kind() == PartKind.SPRING_SPACER ? now.without(part.kind()) : now).with(part);
  }

  private static Set<String> deciding(Judgement judgement) {
    return judgement.findings().stream()
        .filter(Finding::decides)
        .map(Finding::identity)
        .collect(Collectors.toSet());
  }
}
