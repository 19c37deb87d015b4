package trammel.derive;

import static trammel.quantity.Dimension.FORCE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.MASS;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.build.Build;
import trammel.build.BuildSheet.Payload;
import trammel.build.Equipment;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.Accessory;
import trammel.physics.AxleStatics;
import trammel.quantity.Formula;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;

/**
 * What axles and wheels carry (kg), and what their springs carry of it (N).
 *
 * <p>A weighed axle outranks the book's load and whatever is fitted: it was on the scale. Else what
 * is fitted beside the book's is added to the book's load. What is bolted on or off, and what will
 * be carried, goes to the axles by its lever about the other one.
 *
 * <p>Left and right share alike, but for what is known to lie to one side; its moment goes to the
 * axles as they share the weight, which is the usual assumption where roll rates are not known.
 * What states no place across may lie anywhere between the wheels.
 */
final class VehicleLoads {
  private static final Formula SHARE =
      new Formula(
          "its load on the axle",
          "mass · lever about the other axle / wheelbase",
          "own derivation: balance of moments, vehicle level");
  private static final Formula LOAD =
      new Formula("axle load", "what it carries now + what is bolted on or carried", "definition");
  private static final Formula TO_SIDE =
      new Formula(
          "its load toward the left wheel",
          "mass · place across / track · axle's share of the weight",
          "own derivation: balance of moments; the axles' shares are the usual assumption");
  private static final Formula ASIDE =
      new Formula(
          "load toward the left wheel", "what each that lies to one side adds", "definition");
  private static final Formula WHEEL =
      new Formula("wheel load", "axle load / 2 ± what lies to one side", "definition");
  private static final Formula SPRUNG =
      new Formula(
          "load of the body on the wheel",
          "(wheel load − unsprung mass / 2) · 9.80665",
          "definition; standard gravity");
  private static final Formula GROSS = new Formula("gross mass", "front + rear", "definition");

  private static final Quantity LEVEL = Quantity.exact(MASS, 0).called("nothing lies to one side");

  private final Build build;
  private final List<Carried> book;
  private final List<Carried> fitted;
  private final List<Carried> proposed;
  private final Memo<AxleAt, Quantity> axles = new Memo<>();
  private final Memo<WheelAt, Quantity> wheels = new Memo<>();
  private final Memo<AxleAt, Quantity> asides = new Memo<>();
  private final Memo<WheelAt, Quantity> sprung = new Memo<>();
  private final Memo<Stage, Quantity> gross = new Memo<>();

  private record AxleAt(Axle axle, Stage stage) {}

  private record WheelAt(Position position, Stage stage) {}

  /** A mass and where it is: before the front axle positive, toward the left positive (mm). */
  record Carried(String name, Quantity mass, Quantity fore, Quantity out) {}

  VehicleLoads(Build build) {
    this.build = build;
    Map<Accessory, Carried> known = new LinkedHashMap<>();
    this.book = accessories(build.book(), known);
    this.fitted = accessories(build.asFound(), known);
    this.proposed = new ArrayList<>(accessories(build.proposed(), known));
    for (Payload payload : build.aims().payload()) {
      this.proposed.add(
          new Carried(
              payload.carries(),
              payload.mass(),
              payload.fore(),
              across(payload.out(), payload.mass())));
    }
  }

  /** Every accessory once, as often as it is fitted at any one wheel. */
  private List<Carried> accessories(
      Map<Position, Equipment> equipment, Map<Accessory, Carried> known) {
    Map<Accessory, Integer> counts = new LinkedHashMap<>();
    for (Position position : Position.running()) {
      Map<Accessory, Integer> here = new LinkedHashMap<>();
      equipment
          .getOrDefault(position, Equipment.NONE)
          .all(PartKind.ACCESSORY, Accessory.class)
          .forEach(accessory -> here.merge(accessory, 1, Integer::sum));
      here.forEach((accessory, count) -> counts.merge(accessory, count, Math::max));
    }
    List<Carried> all = new ArrayList<>();
    counts.forEach(
        (accessory, count) -> {
          Carried carried =
              known.computeIfAbsent(
                  accessory,
                  one ->
                      new Carried(
                          one.number(), one.mass(), one.fore(), across(one.out(), one.mass())));
          for (int i = 0; i < count; i++) {
            all.add(carried);
          }
        });
    return all;
  }

  /** Where across something lies; anywhere between the wheels where nobody says. */
  private Quantity across(Quantity out, Quantity mass) {
    Input beside = mass.input();
    Quantity track = build.vehicle().front().track();
    if (out.isKnown() || beside == null || !track.isKnown()) {
      return out;
    }
    return Quantity.read(
        "place across, which nobody says",
        LENGTH,
        0,
        track.value() / 2,
        new Input(
            beside.file(),
            beside.path() + " (place across)",
            beside.line(),
            "anywhere between the wheels",
            Instrument.GUESSED));
  }

  /** Whether the changes, or what will be carried, alter any load. */
  boolean changed() {
    return !fitted.equals(proposed);
  }

  /** Whether what an axle carries is another in one state than in the other. */
  boolean changed(Axle axle, Stage from, Stage to) {
    boolean found = from == Stage.BOOK && (weighed(axle).isKnown() || !book.equals(fitted));
    return found || (to == Stage.PROPOSED && changed());
  }

  /** What the axle carries (kg). */
  Quantity axle(Axle axle, Stage stage) {
    return axles.get(new AxleAt(axle, stage), key -> workedOut(axle, stage));
  }

  private Quantity workedOut(Axle axle, Stage stage) {
    Quantity bookLoad = build.vehicle().axle(axle).bookLoad();
    if (stage == Stage.BOOK) {
      return bookLoad;
    }
    Quantity weighed = weighed(axle);
    List<Quantity> terms = new ArrayList<>();
    List<Double> signs = new ArrayList<>();
    terms.add(weighed.isKnown() ? weighed : bookLoad);
    signs.add(1.0);
    if (!weighed.isKnown()) {
      difference(book, fitted, what -> share(axle, what), terms, signs);
    }
    if (stage == Stage.PROPOSED) {
      difference(fitted, proposed, what -> share(axle, what), terms, signs);
    }
    return terms.size() == 1 ? terms.get(0) : sum(LOAD, terms, signs);
  }

  /** What the vehicle weighs (kg). */
  Quantity gross(Stage stage) {
    return gross.get(stage, at -> GROSS.linear(1, axle(Axle.FRONT, at), 1, axle(Axle.REAR, at)));
  }

  /** What a wheel carries (kg). */
  Quantity wheel(Position position, Stage stage) {
    return wheels.get(new WheelAt(position, stage), key -> workedOut(position, stage));
  }

  private Quantity workedOut(Position position, Stage stage) {
    Axle axle = position.axle().orElseThrow();
    Quantity toLeft = asideOf(axle, stage);
    boolean left = position.side().orElseThrow() == Side.LEFT;
    if (toLeft == LEVEL) {
      return left ? WHEEL.linear(0.5, axle(axle, stage)) : wheel(position.left(), stage);
    }
    return WHEEL.linear(0.5, axle(axle, stage), left ? 1 : -1, toLeft);
  }

  /** Whether both wheels of an axle carry the same in every state. */
  boolean level(Axle axle) {
    for (Stage stage : Stage.values()) {
      if (asideOf(axle, stage) != LEVEL) {
        return false;
      }
    }
    return true;
  }

  private Quantity asideOf(Axle axle, Stage stage) {
    return asides.get(new AxleAt(axle, stage), key -> toLeft(axle, stage));
  }

  /** What all that lies to one side adds to the left wheel of an axle. */
  private Quantity toLeft(Axle axle, Stage stage) {
    List<Quantity> terms = new ArrayList<>();
    List<Double> signs = new ArrayList<>();
    if (stage != Stage.BOOK && !weighed(axle).isKnown()) {
      difference(book, fitted, what -> aside(axle, what, stage), terms, signs);
    }
    if (stage == Stage.PROPOSED) {
      difference(fitted, proposed, what -> aside(axle, what, stage), terms, signs);
    }
    return terms.isEmpty() ? LEVEL : sum(ASIDE, terms, signs);
  }

  /** The body's load on a wheel (N): what its spring, its ram or both carry. */
  Quantity sprung(Position position, Stage stage) {
    return sprung.get(
        new WheelAt(position, stage),
        key -> {
          Position left = position.left();
          Quantity wheel = wheel(position, stage);
          return position != left && wheel == wheel(left, stage)
              ? sprung(left, stage)
              : sprung(position.axle().orElseThrow(), wheel);
        });
  }

  /** The same under a whole axle load (kg), shared alike by both wheels. */
  Quantity sprung(Position position, Quantity axleLoad) {
    return sprung(position.axle().orElseThrow(), WHEEL.linear(0.5, axleLoad));
  }

  private Quantity sprung(Axle axle, Quantity wheel) {
    Quantity unsprung = build.vehicle().axle(axle).support().unsprung();
    double g = AxleStatics.GRAVITY;
    return SPRUNG.of(
        FORCE,
        g * (number(wheel) - number(unsprung) / 2),
        new double[] {g, -g / 2},
        wheel,
        unsprung);
  }

  private Quantity weighed(Axle axle) {
    return axle == Axle.FRONT ? build.found().weighed().front() : build.found().weighed().rear();
  }

  private Quantity share(Axle axle, Carried what) {
    Quantity wheelbase = build.vehicle().wheelbase();
    double length = wheelbase.isKnown() ? wheelbase.value() : 1;
    double m = number(what.mass);
    double behind = -number(what.fore);
    double part =
        (axle == Axle.FRONT
                ? AxleStatics.frontPerMass(behind, length)
                : AxleStatics.rearPerMass(behind, length))
            / AxleStatics.GRAVITY;
    double rearward = AxleStatics.rearPerBehind(m, length) / AxleStatics.GRAVITY;
    double perFore = axle == Axle.FRONT ? rearward : -rearward;
    double perLength = (axle == Axle.FRONT ? 1 : -1) * m * behind / (length * length);
    return SHARE
        .of(
            MASS,
            m * part,
            new double[] {part, perFore, perLength},
            what.mass,
            what.fore,
            wheelbase)
        .called("load of " + what.name + " on the " + axle + " axle");
  }

  private Quantity aside(Axle axle, Carried what, Stage stage) {
    Quantity track = build.vehicle().axle(axle).track();
    Quantity here = axle(axle, stage);
    Quantity all = gross(stage);
    double part = here.isKnown() && all.isKnown() ? here.value() / all.value() : Double.NaN;
    double width = number(track);
    double m = number(what.mass);
    double out = number(what.out);
    double value = m * out / width * part;
    return TO_SIDE.of(
        MASS,
        value,
        new double[] {out / width * part, m / width * part, -value / width},
        what.mass,
        what.out,
        track);
  }

  private interface Term {
    Quantity of(Carried what);
  }

  /** What is there and was not, less what was there and is not. */
  private static void difference(
      List<Carried> before,
      List<Carried> after,
      Term term,
      List<Quantity> terms,
      List<Double> signs) {
    List<Carried> gone = new ArrayList<>(before);
    for (Carried what : after) {
      if (!gone.remove(what)) {
        terms.add(term.of(what));
        signs.add(1.0);
      }
    }
    for (Carried what : gone) {
      terms.add(term.of(what));
      signs.add(-1.0);
    }
  }

  private static Quantity sum(Formula formula, List<Quantity> terms, List<Double> signs) {
    double[] coefficients = new double[signs.size()];
    for (int i = 0; i < coefficients.length; i++) {
      coefficients[i] = signs.get(i);
    }
    return formula.linear(coefficients, terms.toArray(Quantity[]::new));
  }

  private static double number(Quantity quantity) {
    return quantity.isKnown() ? quantity.value() : Double.NaN;
  }
}
