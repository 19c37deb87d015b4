package trammel.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A rule made at random, written twice: as a sheet and as a text for the engine's own compiler. The
 * two are written side by side and share nothing but names; the second decides by the plain methods
 * of quantities and decisions.
 */
final class RandomRule {
  private static final List<String> KINDS =
      List.of("conflict", "alignment", "companion", "caution");

  /** A fact that conditions ask of, with the components that they ask of. */
  private record Asked(
      String type,
      List<String> lengths,
      List<String> decisions,
      List<String> yesNo,
      List<String> texts) {

    String fact() {
      return FactMaker.kebab(type);
    }
  }

  private static final Asked CLEARANCE =
      new Asked("Clearance", List.of("gap", "change"), List.of(), List.of(), List.of("trim"));
  private static final List<Asked> FACTS =
      List.of(
          CLEARANCE,
          new Asked(
              "TireOnRim",
              List.of("rimWidth", "overNarrowest", "underWidest"),
              List.of("rimCodeAgrees"),
              List.of("listed"),
              List.of("tire")),
          new Asked("RideHeight", List.of("lift", "tireLift"), List.of(), List.of(), List.of()),
          new Asked(
              "Seating",
              List.of("boreRoom", "pilotLeft"),
              List.of("patternAgrees"),
              List.of("nearMiss"),
              List.of("on")));

  private final Random random;
  private final String id;
  private final Asked about;
  private final List<String> collected = new ArrayList<>();
  private final StringBuilder folds = new StringBuilder();
  private final String kind;
  private final String sheet;
  private final String drl;

  /** What a condition is in both languages. */
  private record Both(String sheet, String java) {}

  private RandomRule(int number, Random random) {
    this.random = random;
    this.id = "random.r" + number;
    this.about = one(FACTS);
    this.kind = one(KINDS);
    Both demand = demand();
    Both where = random.nextInt(3) == 0 ? null : condition(2);
    String java = where == null ? demand.java : demand.java + ".or(" + where.java + ".not())";
    this.sheet = sheet(demand.sheet, where == null ? "" : "where: " + where.sheet + "\n");
    this.drl = drl(number, java);
  }

  /** Some rules, the same for the same seed. */
  static List<RandomRule> some(int count, long seed) {
    Random random = new Random(seed);
    return IntStream.range(0, count).mapToObj(i -> new RandomRule(i, random)).toList();
  }

  String id() {
    return id;
  }

  String kind() {
    return kind;
  }

  String sheet() {
    return sheet;
  }

  String drl() {
    return drl;
  }

  private <T> T one(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  private Both demand() {
    if (random.nextInt(6) != 0 || collected.size() > 2) {
      Both condition = condition(3);
      return new Both("demands: " + condition.sheet, condition.java);
    }
    String part = one(List.of("bump-stop", "wheel-spacer"));
    String java =
        joined(
            "PartOnVehicle",
            "same-wheel",
            "Decision.of(o.kind() == PartKind."
                + part.toUpperCase(Locale.ROOT).replace('-', '_')
                + ")");
    return random.nextBoolean()
        ? new Both("needs: { kind: " + part + " }", java)
        : new Both("excludes: { kind: " + part + " }", java + ".not()");
  }

  private Both condition(int depth) {
    int choice = random.nextInt(depth > 0 ? 6 : 3);
    if (choice > 2) {
      List<Both> parts =
          IntStream.rangeClosed(0, random.nextInt(3)).mapToObj(i -> condition(depth - 1)).toList();
      String group = List.of("all", "any", "none").get(choice - 3);
      String sheets = parts.stream().map(Both::sheet).collect(Collectors.joining(", "));
      String fold = group.equals("all") ? ".and(" : ".or(";
      String begin = group.equals("all") ? "Decision.MET" : "Decision.NOT_MET";
      String java =
          begin + parts.stream().map(part -> fold + part.java + ")").collect(Collectors.joining());
      return new Both(
          "{ " + group + ": [" + sheets + "] }",
          group.equals("none") ? "(" + java + ").not()" : "(" + java + ")");
    }
    if (choice == 2 && collected.size() < 3) {
      Asked other = one(FACTS);
      String of = one(List.of("same-wheel", "same-axle", "any"));
      Both leaf = leaf(other, "o", ", of: " + of);
      return new Both(leaf.sheet, joined(other.type, of, leaf.java));
    }
    return leaf(about, "$f", "");
  }

  /** A condition on some other fact, folded over all that stand so. */
  private String joined(String type, String of, String java) {
    int number = collected.size();
    String stands =
        switch (of) {
          case "same-wheel" -> "subject.where == $f.subject.where";
          case "same-axle" ->
              "RandomFacts.axle(subject) != \"\","
                  + " RandomFacts.axle(subject) == RandomFacts.axle($f.subject)";
          default -> "";
        };
    collected.add(
        "  $o" + number + " : java.util.List() from collect( " + type + "( " + stands + " ) )\n");
    folds.append(
        String.format(
            "  Decision j%d = Decision.NOT_MET;%n  for (Object each : $o%d) { %s o = (%s) each; j%d"
                + " = j%d.or(%s); }%n",
            number, number, type, type, number, number, java));
    return "j" + number;
  }

  private Both leaf(Asked fact, String object, String of) {
    List<String> fields = new ArrayList<>(fact.lengths);
    fields.addAll(fact.lengths);
    fields.addAll(fact.decisions);
    fields.addAll(fact.yesNo);
    fields.addAll(fact.texts);
    fields.add("subject");
    String field = one(fields);
    String value = "{ value: " + fact.fact() + "." + FactMaker.kebab(field) + of + ", ";
    String read = object + "." + field + "()";
    boolean not = random.nextInt(4) == 0;
    if (fact.lengths.contains(field)) {
      return compare(fact, object, value, read);
    } else if (fact.decisions.contains(field)) {
      return is(value, not, "yes", read);
    } else if (fact.yesNo.contains(field)) {
      return is(value, not, "no", "Decision.of(!" + read + ")");
    } else if (fact.texts.contains(field)) {
      return is(
          value,
          not,
          "left",
          "("
              + read
              + ".isBlank() ? Decision.ABSENT : Decision.of("
              + read
              + ".equals(\"left\")))");
    }
    String axle = one(List.of("front", "rear"));
    return is(
        value, not, axle, "Decision.of(RandomFacts.axle(" + read + ").equals(\"" + axle + "\"))");
  }

  private static Both is(String value, boolean not, String name, String java) {
    return new Both(
        value + (not ? "is-not: " : "is: ") + name + " }", not ? "(" + java + ").not()" : java);
  }

  private Both compare(Asked fact, String object, String value, String read) {
    String sense = one(List.of("at-least", "at-most", "above", "below"));
    String method =
        sense.equals("at-least") ? "atLeast" : sense.equals("at-most") ? "atMost" : sense;
    if (random.nextInt(3) == 0) {
      String other = one(fact.lengths);
      int plus = 5 * random.nextInt(3);
      return new Both(
          String.format(
              "%s%s: { value: %s.%s, times: 0.5, plus: %d mm } }",
              value, sense, fact.fact(), FactMaker.kebab(other), plus),
          String.format(
              "%s.%s(RandomFacts.half(%s.%s(), %d)).decision()",
              read, method, object, other, plus));
    }
    int limit = 5 * random.nextInt(5);
    return new Both(
        value + sense + ": " + limit + " mm }",
        read + "." + method + "(Constants.mm(" + limit + ")).decision()");
  }

  private String sheet(String demand, String where) {
    String station = about.equals(CLEARANCE) ? "station: arch" : "";
    String cases =
        IntStream.rangeClosed(1, 4)
            .mapToObj(
                i ->
                    "  - { case: number "
                        + i
                        + ", "
                        + about.fact()
                        + ": { "
                        + station
                        + " }, expects: nothing }\n")
            .collect(Collectors.joining());
    String rule =
        "rule: "
            + id
            + "\ntitle: Made at random\nkind: "
            + kind
            + "\nsays: Found.\nreason: None.\nsource: made at random\nsince: 1.0\nabout: "
            + about.fact()
            + "\n"
            + where
            + demand
            + "\ncases:\n"
            + cases;
    return "rules:\n  - " + rule.strip().replace("\n", "\n    ") + "\n";
  }

  private String drl(int number, String java) {
    return "package random.p"
        + number
        + "\n"
        + "import trammel.fact.*\nimport trammel.catalog.PartKind\nimport trammel.quantity.*\n"
        + "import trammel.judge.RandomFacts\n"
        + "import function trammel.judge.Conclude.conclude\n"
        + "rule \""
        + id
        + "\"\n  @kind("
        + kind
        + ")\nwhen\n  $f : "
        + about.type
        + "()\n"
        + String.join("", collected)
        + "then\n"
        + folds
        + "  Decision whole = "
        + java
        + ";\n  conclude(kcontext, $f, whole);\nend\n";
  }
}
