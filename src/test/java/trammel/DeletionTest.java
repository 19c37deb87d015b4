package trammel;

import static org.assertj.core.api.Assertions.assertThat;
import static trammel.quantity.Constants.mm;
import static trammel.quantity.Constants.number;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trammel.build.Build;
import trammel.build.BuildFiles;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.catalog.Part;
import trammel.catalog.VehicleProfile;
import trammel.derive.Derivation;
import trammel.fact.Fact;
import trammel.judge.Finding;
import trammel.judge.Judge;
import trammel.judge.Judgement;
import trammel.judge.Rule;
import trammel.quantity.Quantity;
import trammel.read.Binder;
import trammel.read.ListNode;
import trammel.read.MapNode;
import trammel.read.Node;
import trammel.read.Problems;
import trammel.read.TextNode;
import trammel.read.UnreadableFile;
import trammel.read.YamlReader;

/**
 * Nothing passes for want of data. Every physical value of a demo sheet's vehicle, and of every
 * part that its wheels carry, is deleted in turn. If a rule that can decide reads the value, the
 * rule must then speak: as a finding, as an open question in the background, or as met by
 * precedent; a listed fallback alone may take the value's place.
 */
class DeletionTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Path DEMO = Path.of("catalog-demo");
  private static final Pattern PHYSICAL =
      Pattern.compile(
          "-?[0-9.]+( [0-9]/[0-9])? ?(mm|in|kg|lb|kPa|bar|psi|MPa|°|N/mm|km/h|%)?( ?±.*)?");
  private static final Pattern READ =
      Pattern.compile("\\b([a-zA-Z]+)\\s*\\.(?:atLeast|atMost|above|below)\\(([a-zA-Z]*)\\)?");

  /**
   * Fallbacks, each documented where it stands: a usual chamfer of 4 mm; the usual 1 % of a drive;
   * the designation's own dimensions and reference pressure for those that a maker publishes; the
   * ratio rule where no rims are listed.
   */
  private static final Set<String> FALLBACKS =
      Set.of(
          "pilot-chamfer",
          "drive-match",
          "diameter",
          "section-width",
          "on-rim",
          "load-pressure",
          "rim-from",
          "rim-to",
          "lip-diameter");

  private static Judge judge;
  private static Catalog catalog;
  private static final Map<String, MapNode> VEHICLES = new HashMap<>();
  private static final Map<String, MapNode> PARTS = new HashMap<>();
  private static final Map<String, Set<String>> READ_BY_DECIDING_RULES = new HashMap<>();

  @BeforeAll
  static void load() throws IOException {
    judge = Judge.ofBaseBook();
    catalog = CatalogFiles.read(DEMO);
    each("vehicles", map -> VEHICLES.put(text(map, "vehicle"), map));
    each(
        "parts",
        map -> {
          for (Node item : ((ListNode) map.get("parts").orElseThrow()).items()) {
            PARTS.put(text((MapNode) item, "part"), (MapNode) item);
          }
        });
    for (String group :
        List.of("wheel", "tire", "clearance", "height", "steering", "driveline", "order")) {
      components(Files.readString(Path.of("rules/base/" + group + ".drl")));
    }
  }

  @AfterAll
  static void close() {
    judge.close();
  }

  private static void each(String folder, Consumer<MapNode> use) throws IOException {
    try (Stream<Path> files = Files.list(DEMO.resolve(folder))) {
      for (Path file : files.sorted().toList()) {
        Problems problems = new Problems();
        use.accept((MapNode) YamlReader.read(file, file, problems).orElseThrow());
      }
    }
  }

  private static String text(MapNode map, String key) {
    return ((TextNode) map.get(key).orElseThrow()).text();
  }

  /** Which components of which fact the rules that can decide hold against a limit. */
  private static void components(String rules) {
    for (String rule : Pattern.compile("(?m)^rule ").splitAsStream(rules).toList()) {
      if (rule.contains("@kind(\"caution\")") || !rule.contains("when")) {
        continue;
      }
      Matcher fact = Pattern.compile(": ([A-Z][A-Za-z]+)\\(").matcher(rule);
      if (fact.find()) {
        Set<String> names =
            READ_BY_DECIDING_RULES.computeIfAbsent(fact.group(1), f -> new LinkedHashSet<>());
        Matcher read = READ.matcher(rule.substring(rule.indexOf("when")));
        while (read.find()) {
          names.add(read.group(1));
          names.add(read.group(2));
        }
      }
    }
  }

  static Stream<Path> sheets() throws IOException {
    List<Path> found = new ArrayList<>();
    for (String folder : List.of("builds", "orders")) {
      if (Files.isDirectory(DEMO.resolve(folder))) {
        try (Stream<Path> files = Files.list(DEMO.resolve(folder))) {
          files.sorted().forEach(found::add);
        }
      }
    }
    return found.stream();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void aDeletedValueIsNeverAPass(Path sheet) {
    Build build = BuildFiles.read(sheet, catalog);
    Map<String, Fact> before = facts(build);
    String vehicle = build.vehicle().vehicle();
    int tried = 0;
    for (Deletion deletion : deletions(VEHICLES.get(vehicle))) {
      Optional<VehicleProfile> less = bind(VehicleProfile.class, deletion.rest);
      if (less.isPresent()) {
        Map<String, VehicleProfile> vehicles = new LinkedHashMap<>(catalog.vehicles());
        vehicles.put(vehicle, less.get());
        check(
            sheet,
            deletion,
            before,
            new Catalog(catalog.name(), catalog.currency(), vehicles, catalog.parts()));
        tried++;
      }
    }
    Set<String> numbers = new LinkedHashSet<>();
    build
        .proposed()
        .values()
        .forEach(e -> e.everything().forEach(part -> numbers.add(part.number())));
    for (String number : numbers) {
      for (Deletion deletion : deletions(PARTS.get(number))) {
        Optional<Part> less = bind(Part.class, deletion.rest);
        if (less.isPresent()) {
          Map<String, Part> parts = new LinkedHashMap<>(catalog.parts());
          parts.put(number, less.get());
          check(
              sheet,
              deletion,
              before,
              new Catalog(catalog.name(), catalog.currency(), catalog.vehicles(), parts));
          tried++;
        }
      }
    }
    Problems none = new Problems();
    MapNode own = (MapNode) YamlReader.read(sheet, sheet, none).orElseThrow();
    for (Deletion deletion : deletions(own)) {
      tried += checkSheet(deletion, before) ? 1 : 0;
    }
    assertThat(tried).as("values deleted from %s", sheet).isGreaterThan(60);
  }

  /** A value of the sheet itself; what may not be left out is refused, which is no pass either. */
  private static boolean checkSheet(Deletion deletion, Map<String, Fact> before) {
    try {
      judged(deletion.path, deletion.path, before, BuildFiles.resolve(deletion.rest, catalog));
      return true;
    } catch (UnreadableFile refused) {
      return false;
    }
  }

  private static <T> Optional<T> bind(Class<T> type, MapNode node) {
    return Binder.bind(type, node, new Problems());
  }

  private void check(Path sheet, Deletion deletion, Map<String, Fact> before, Catalog less) {
    String key = deletion.path.substring(deletion.path.lastIndexOf('.') + 1);
    if (FALLBACKS.contains(key)) {
      return;
    }
    judged(sheet.toString(), deletion.path, before, BuildFiles.read(sheet, less));
  }

  private static void judged(String sheet, String path, Map<String, Fact> before, Build build) {
    Map<String, Fact> after = facts(build);
    Judgement judgement = judge.judge(after.values());
    Set<String> spokenOf = new LinkedHashSet<>();
    judgement.findings().forEach(finding -> spokenOf.add(name(finding.fact())));
    judgement.precedents().forEach(precedent -> spokenOf.add(name(precedent.fact())));
    before.forEach(
        (name, fact) -> {
          Set<String> lost = lost(fact, after.get(name));
          assertThat(lost.isEmpty() || spokenOf.contains(name))
              .as("%s without %s: %s of %s are gone and no rule speaks", sheet, path, lost, name)
              .isTrue();
        });
    assertThat(judgement.findings().stream().map(Finding::rule).map(judge::rule))
        .allMatch(Optional<Rule>::isPresent);
  }

  /** Quantities that rules hold against limits and that were known before and are not after. */
  private static Set<String> lost(Fact before, Fact after) {
    Set<String> lost = new LinkedHashSet<>();
    if (after == null) {
      lost.add("the fact itself");
      return lost;
    }
    for (var component : before.getClass().getRecordComponents()) {
      boolean read =
          READ_BY_DECIDING_RULES
              .getOrDefault(before.getClass().getSimpleName(), Set.of())
              .contains(component.getName());
      if (read && component.getType() == Quantity.class && guarded(before, component.getName())) {
        try {
          Quantity was = (Quantity) component.getAccessor().invoke(before);
          Quantity is = (Quantity) component.getAccessor().invoke(after);
          if (was.isKnown() && !is.isKnown()) {
            lost.add(component.getName());
          }
        } catch (ReflectiveOperationException e) {
          throw new LinkageError(e.getMessage(), e);
        }
      }
    }
    return lost;
  }

  /** Whether the rules' own guards let the component be read on this fact. */
  private static boolean guarded(Fact fact, String component) {
    if (fact instanceof trammel.fact.Seating seating) {
      return !component.equals("pilotLeft") || (seating.slippedOn() && seating.hubCentered());
    }
    if (fact instanceof trammel.fact.Fastening fastening) {
      return !component.equals("closedRoom") || fastening.closed();
    }
    if (fact instanceof trammel.fact.TireCapacity capacity) {
      return !component.equals("placardCapacity") || capacity.tireChanged();
    }
    if (fact instanceof trammel.fact.SpareRoom spare) {
      return !component.equals("massRoom") || spare.hung();
    }
    if (fact instanceof trammel.fact.DriveMatch drive) {
      return drive.fullTime();
    }
    if (fact instanceof trammel.fact.TireOnRim rim) {
      return component.equals("widthRatio") != rim.listed();
    }
    if (fact instanceof trammel.fact.MeterReading meter) {
      // Tires that roll no farther cannot make a meter show less than it did.
      return meter.growth().atMost(number(1)).isPossiblyViolated();
    }
    if (fact instanceof trammel.fact.JointSwing joint) {
      // A joint of unknown limit is asked about only where the axle may rise more than 50 mm.
      boolean raised = joint.lift().atMost(mm(50)).isPossiblyViolated();
      boolean limited = joint.limit().isKnown();
      return switch (component) {
        case "limit" -> raised;
        case "lift" -> !limited;
        default -> limited || raised;
      };
    }
    if (fact instanceof trammel.fact.TravelBudget travel) {
      return !component.equals("droopAfter") || travel.onTheDamper();
    }
    if (fact instanceof trammel.fact.DamperReach damper) {
      return !component.equals("openRoom") || !damper.hung();
    }
    if (fact instanceof trammel.fact.CoilRoom coil) {
      return !component.equals("gap") || !coil.held();
    }
    if (fact instanceof trammel.fact.LiftStack stack) {
      return !component.equals("droopAdded") || stack.jointsJudged().isPossiblyViolated();
    }
    if (fact instanceof trammel.fact.LineReach line) {
      // A line of unknown length is asked about only where the wheel may stand 40 mm lower.
      boolean raised = line.lift().atMost(mm(40)).isPossiblyViolated();
      return component.equals("slack") ? raised : !line.slack().isKnown();
    }
    if (fact instanceof trammel.fact.BrakeValveRod rod) {
      return rod.follows().isPossiblyViolated();
    }
    if (fact instanceof trammel.fact.AxleShift bar) {
      return !component.equals("lost") || !bar.hole().isEmpty();
    }
    return true;
  }

  private static Map<String, Fact> facts(Build build) {
    Map<String, Fact> facts = new LinkedHashMap<>();
    Derivation.facts(build, DAY).forEach(fact -> facts.put(name(fact), fact));
    return facts;
  }

  private static String name(Fact fact) {
    return fact.getClass().getSimpleName() + "@" + fact.subject();
  }

  private record Deletion(String path, MapNode rest) {}

  private static List<Deletion> deletions(MapNode root) {
    List<Deletion> all = new ArrayList<>();
    for (MapNode.Entry entry : root.entries()) {
      if (physical(entry.value())) {
        all.add(new Deletion(entry.key(), without(root, entry, null)));
      } else if (entry.value() instanceof MapNode inner) {
        for (Deletion below : deletions(inner)) {
          all.add(new Deletion(entry.key() + "." + below.path, without(root, entry, below.rest)));
        }
      } else if (entry.value() instanceof ListNode list) {
        for (int i = 0; i < list.items().size(); i++) {
          if (list.items().get(i) instanceof MapNode inner) {
            for (Deletion below : deletions(inner)) {
              List<Node> items = new ArrayList<>(list.items());
              items.set(i, below.rest);
              all.add(
                  new Deletion(
                      entry.key() + "." + below.path,
                      without(root, entry, new ListNode(list.place(), list.trail(), items))));
            }
          }
        }
      }
    }
    return all;
  }

  private static boolean physical(Node node) {
    if (node instanceof TextNode text) {
      return PHYSICAL.matcher(text.text()).matches();
    }
    return node instanceof MapNode map && map.get("value").isPresent();
  }

  private static MapNode without(MapNode root, MapNode.Entry entry, Node instead) {
    List<MapNode.Entry> entries = new ArrayList<>();
    for (MapNode.Entry other : root.entries()) {
      if (!other.equals(entry)) {
        entries.add(other);
      } else if (instead != null) {
        entries.add(new MapNode.Entry(entry.key(), entry.place(), instead));
      }
    }
    return new MapNode(root.place(), root.trail(), entries);
  }
}
