package trammel.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Every demo sheet keeps saying what it was written to show. */
class DemoTest {
  private static final Path DEMO = Path.of("catalog-demo");

  /**
   * Sheet and exit status; below them what must be said: the kind of a finding, or the part of the
   * report it stands in, and its identity; or the part that no rule judges.
   */
  private static final String SHEETS =
      """
      cairnback-bargain-wheels.build | 5
          conflict wheel.seat-match@rear-left:fastener
          conflict wheel.bolt-circle-near-miss@front-left:wheel
      cairnback-body-blocks.build | 3
          companion height.body-wires@vehicle:wires
      cairnback-helper-bags.build | 4
          caution height.spring-load-class@rear:TH-4102
          unproven steering.camber-window@front-left
      cairnback-larger-first-look.build | 4
          unproven clearance.rear-mount@front-left:rear-mount
          unproven clearance.liner@front-right:liner
          companion tire.meter-under-reads@vehicle
          caution tire.gear-loss@vehicle
          possibly clearance.arch-close@front-left:arch
          hold order.hold-order@order:HR-2857017
      cairnback-larger-measured.build | 3
          companion tire.pressure-for-load@rear
          companion tire.meter-under-reads@vehicle
          possibly clearance.frame-rail-close@front-left:frame-rail
      cairnback-loaded.build | 4
      cairnback-locks.build | 0
          waived order.lock-key@order:WL-1215-R
      cairnback-on-waivers.build | 5
          conflict wheel.wheel-load@front-left:wheel
          waived tire.age@front-left:tire
          caution tire.age@front-right:tire
      cairnback-same-size.build | 0
      cairnback-spacers.build | 5
          conflict wheel.engagement@front-left:fastener
          conflict wheel.stud-pocket@rear-right:spacer
          conflict wheel.wheel-load@rear-left:wheel
          caution wheel.track-change@rear
          possibly clearance.coverage@rear-left
      cairnback-spare-too-large.build | 4
          companion tire.spare-diameter@spare
          unproven clearance.rear-mount@front-right:rear-mount
          caution tire.directional@spare:tire
          caution tire.speed-symbol@front-left:tire
          hold order.hold-order@order:OX-2857017
      cairnback-spacers-with-brackets.build | 4
          unproven height.sway-link@rear-left
          companion driveline.line-slack@rear:breather
          companion driveline.hose-slack@rear-left:brake-fluid
      cairnback-thick-spacers.build | 4
          unproven height.spring-bore@rear-left:LS-CB-R50
          caution height.spacer-law@rear-left:LS-CB-R50
          unproven height.coil-bind@rear-left
          caution height.droop-share@rear-left
          caution height.ground-clearance@vehicle:front-bumper-edge
          caution height.ramp-angle@vehicle:approach-angle
      cairnback-thin-spacers.build | 5
          conflict wheel.pilot-hidden@rear-left:wheel
          caution wheel.spacer-fitted@rear-right:spacer
      cairnback-too-wide.build | 5
          conflict clearance.bumper-end@front-left:bumper-end
          caution clearance.coverage@front-left
      cairnback-towing.build | 5
          conflict height.spring-bore@rear-left:LS-CB-R30
          companion order.sides@order:upper-arm
          caution height.claim-at-other-load@rear:CM-CB-R40H
          caution height.stability@vehicle
          conflict height.damper-bottoms@front-left
          unproven height.damper-left-behind@rear-left
          caution height.droop-share@front-left
      cairnback-wheels-without-rings.build | 3
          companion wheel.bore-loose@front-left:wheel
      drayling-highway.build | 5
          conflict tire.axle-load@rear
          background clearance.rear-mount@front-left:rear-mount
      drayling-raised-rear.build | 4
          companion driveline.brake-valve@rear
          companion driveline.hose-slack@rear-left:brake-fluid
      drayling-larger-carrier.build | 4
          unproven clearance.rear-mount@front-left:rear-mount
          unproven clearance.liner@front-left:liner
          caution tire.meter-unknown@vehicle
          hold order.hold-order@order:CD-2357516
      gimmer-raised.build | 4
          unproven height.claim-without-load@front:CM-GM-F40U
          hold order.hold-order@order:CM-GM-F40U
      gimmer-steel-wheels.build | 5
          conflict wheel.closed-nut-bottoms@front-left:fastener
          conflict clearance.rear-mount@front-right:rear-mount
          unproven tire.spare-diameter@spare
          caution wheel.track-change@front
          possibly clearance.liner-close@front-left:liner
      linnhope-alike.build | 5
          conflict wheel.bolt-circle-near-miss@rear-right:wheel
          background tire.inner-side@front-left:inner-side
      linnhope-less-offset.build | 0
          precedent clearance.frame-rail@front-left:frame-rail
          precedent tire.inner-side@front-right:inner-side
      linnhope-taller.build | 4
          unproven clearance.frame-rail@front-left:frame-rail
          unproven tire.inner-side@front-left:inner-side
          caution tire.speed-symbol@front-left:tire
          possibly tire.spare-match@spare
          hold order.hold-order@order:HR-2656018
      millwren-all-terrain.build | 0
          caution tire.speed-symbol@front-left:tire
          possibly clearance.liner-close@front-left:liner
      millwren-slip-ons.build | 5
          conflict wheel.engagement@front-left:fastener
          caution wheel.pilot-short@rear-left:wheel
      millwren-slip-ons-longer-bolts.build | 0
          caution wheel.pilot-short@front-left:wheel
          caution wheel.spacer-fitted@front-left:spacer
      skerrow-cast-wheels.build | 5
          conflict wheel.seat-match@front-left:fastener
      skerrow-cast-wheels-right-nuts.build | 0
      skerrow-own-color.build | 4
          unproven clearance.rear-mount@front-left:rear-mount
          hold order.hold-order@order:SI-1885-CC
      skerrow-raised-mildly.build | 0
          caution height.pressure-firm@front-left
          caution steering.set-alignment@front-left
      skerrow-raised-in-maine.build | 0
          possibly maine.frame-end-4501-to-7500@vehicle
      skerrow-raised-in-new-jersey.build | 0
          law new-jersey.certificate@vehicle
      skerrow-raised-to-the-stop.build | 3
          companion height.pressure-high@front-left
          companion height.pressure-high@rear-right
          alignment steering.caster-window@front-left
          alignment steering.camber-window@front-right
          possibly driveline.bar-shift-note@rear
      skerrow-raised-with-arms.build | 0
          caution steering.set-alignment@front-right
      skerrow-raised-with-spacers.build | 0
          caution height.spacer-law@front-left:LS-SK-F20
      skerrow-rub-at-lock.build | 5
          conflict clearance.rear-mount@front-left:rear-mount
          conflict clearance.rear-mount@front-right:rear-mount
      skerrow-spacers-in-washington.build | 6
          law washington.coil-spacers@vehicle
      skerrow-worn-fronts.build | 5
          conflict tire.drive-match@vehicle
          conflict height.spacer-bore@rear-left:LS-SK-R40S
          companion tire.pressure-for-load@front
      skerrow-wrong-hole.build | 0
          caution driveline.bar-hole@rear
      stonecrop-raised.build | 5
          conflict height.spring-end@front-left:LS-SC-F40P
          possibly steering.caster-thin@front
          possibly clearance.rear-mount-close@front-left:rear-mount
      stonecrop-rear-spacers.build | 5
          conflict height.spacer-flange@rear-left:LS-SC-R50W
      stonecrop-steep-shaft.build | 5
          alignment driveline.joint-angle@rear:rear-shaft
          caution driveline.bar-shift-note@rear
      stonecrop-unmarked-wheels.build | 4
          unproven wheel.bore-too-small@front-left:wheel
          unproven wheel.wheel-load@rear-left:wheel
      cairnback-five-tires.order | 3
          companion order.piece-count@order:HR-2656517
          companion order.lock-key@order:WL-1215-R
      cairnback-locks-and-nuts.order | 5
          conflict wheel.thread-match@front-left:fastener
          companion order.lock-key@order:WL-1215-R
      cairnback-nuts.order | 5
          conflict wheel.thread-match@front-left:fastener
          companion order.piece-count@order:WN-1212-C
      cairnback-one-arm.order | 4
          companion order.sides@order:upper-arm
          unproven steering.caster-window@front-left
      millwren-second-set.order | 0
          caution tire.asymmetric@front-left:tire
      """;

  /** One line of the table. */
  record Expected(String sheet, int status, List<String> findings) {
    static List<Expected> all() {
      List<Expected> all = new ArrayList<>();
      for (String line : SHEETS.lines().toList()) {
        if (line.startsWith(" ")) {
          all.get(all.size() - 1).findings.add(line.strip());
        } else {
          String[] cells = line.split(" \\| ", 2);
          all.add(new Expected(cells[0], Integer.parseInt(cells[1]), new ArrayList<>()));
        }
      }
      return all;
    }

    Path file() {
      return DEMO.resolve((sheet.endsWith(".order") ? "orders/" : "builds/") + sheet + ".yaml");
    }
  }

  static Stream<Arguments> sheets() {
    return Expected.all().stream()
        .map(expected -> Arguments.argumentSet(expected.sheet(), expected));
  }

  private static String run(int status, String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int ended = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
    assertThat(ended).as(err.toString()).isEqualTo(status);
    return out.toString();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void aDemoSheetHasItsVerdictAndItsFindings(Expected expected) {
    String file = expected.file().toString();
    String json = run(expected.status(), "check", "--on", "2026-11-25", "--format", "json", file);
    Set<String> found = found(new ObjectMapper().readTree(json));
    assertThat(found).containsAll(expected.findings());
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void itsReportKeepsToEightyColumns(Expected expected) {
    String file = expected.file().toString();
    String text = run(expected.status(), "check", "--on", "2026-11-25", file);
    assertThat(text.lines())
        .isNotEmpty()
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
  }

  @Test
  void noDemoSheetIsForgotten() throws IOException {
    Set<String> there = new TreeSet<>();
    for (String folder : List.of("builds", "orders")) {
      try (Stream<Path> files = Files.list(DEMO.resolve(folder))) {
        files.map(file -> file.getFileName().toString()).forEach(there::add);
      }
    }
    Set<String> listed =
        Expected.all().stream()
            .map(expected -> expected.sheet() + ".yaml")
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(there).isEqualTo(listed);
  }

  @Test
  void waiversThatDoNotCountAreNamedWithTheReason() {
    String text =
        run(
            5,
            "check",
            "--on",
            "2026-11-25",
            "catalog-demo/builds/cairnback-on-waivers.build.yaml");
    String flowing = text.replaceAll("\\s+", " ");
    assertThat(flowing)
        .containsPattern("waiver of wheel.wheel-load@front-left:wheel .*safety-critical")
        .containsPattern("waiver of tire.age@front-right:tire .*last day was 2026-06-30");
  }

  private static Set<String> found(JsonNode report) {
    Set<String> found = new TreeSet<>();
    for (JsonNode item : report.path("findings")) {
      String kind = item.path("waived").isNull() ? item.path("kind").asString() : "waived";
      found.add(kind + " " + item.path("id").asString());
    }
    report.path("possible").forEach(item -> found.add("possibly " + item.path("id").asString()));
    report.path("background").forEach(i -> found.add("background " + i.path("id").asString()));
    report.path("holds").forEach(item -> found.add("hold " + item.path("id").asString()));
    for (JsonNode met : report.path("precedents")) {
      found.add("precedent " + met.path("rule").asString() + "@" + met.path("subject").asString());
    }
    for (JsonNode sentence : report.path("not-checked")) {
      found.add("unjudged " + sentence.asString().replaceAll(".*: |[.]$", ""));
    }
    return found;
  }
}
