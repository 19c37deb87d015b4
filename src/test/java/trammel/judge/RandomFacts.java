package trammel.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import trammel.catalog.PartKind;
import trammel.fact.Clearance;
import trammel.fact.Fact;
import trammel.fact.PartOnVehicle;
import trammel.fact.RideHeight;
import trammel.fact.Seating;
import trammel.fact.Standing;
import trammel.fact.TireOnRim;
import trammel.quantity.Absence;
import trammel.quantity.Constants;
import trammel.quantity.Decision;
import trammel.quantity.Dimension;
import trammel.quantity.Formula;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Station;
import trammel.subject.Subject;

/** Facts made at random, near the limits of rules made at random. */
public final class RandomFacts {
  private static final Formula HALF = new Formula("limit", "half and more", "made at random");
  private static final List<String> PLACES =
      List.of("front-left", "front-right", "rear-left", "front", "vehicle");

  private final Random random;

  private RandomFacts(Random random) {
    this.random = random;
  }

  /** The axle that a place belongs to; empty where it belongs to none. */
  public static String axle(Subject subject) {
    String first = subject.where().split("-", 2)[0];
    return first.equals("front") || first.equals("rear") ? first : "";
  }

  /** Half of a quantity and some millimeters. */
  public static Quantity half(Quantity quantity, int plus) {
    return HALF.linear(0.5, quantity, 1, Constants.mm(plus));
  }

  /** Some facts of every kind that random rules ask of. */
  static List<Fact> some(Random random) {
    RandomFacts made = new RandomFacts(random);
    List<Fact> facts = new ArrayList<>();
    for (int i = random.nextInt(4); i >= 0; i--) {
      facts.add(made.clearance());
      facts.add(made.tireOnRim());
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      facts.add(made.rideHeight());
      facts.add(made.seating());
      facts.add(made.part());
    }
    return facts;
  }

  private Subject subject() {
    return new Subject(PLACES.get(random.nextInt(PLACES.size())), "n" + random.nextInt(1000));
  }

  private Standing standing() {
    return List.of(Standing.values()).get(random.nextInt(3));
  }

  private Decision decision() {
    return List.of(Decision.values()).get(random.nextInt(4));
  }

  private String text() {
    return List.of("", "left", "right").get(random.nextInt(3));
  }

  private Quantity length() {
    if (random.nextInt(7) == 0) {
      return Quantity.absent(
          Dimension.LENGTH, new Absence("length", "nobody said", Instrument.TAPE, ""));
    }
    double expanded = List.of(0, 0, 3, 6).get(random.nextInt(4));
    Input input = new Input("facts", "length", 0, "made at random", Instrument.TAPE);
    return Quantity.read("length", Dimension.LENGTH, 5.0 * random.nextInt(6), expanded, input);
  }

  private Clearance clearance() {
    return new Clearance(
        subject(),
        standing(),
        List.of(),
        Station.ARCH,
        "",
        "",
        length(),
        length(),
        "",
        text(),
        Constants.number(1),
        Constants.number(1));
  }

  private TireOnRim tireOnRim() {
    return new TireOnRim(
        subject(),
        standing(),
        List.of(),
        text(),
        "",
        "",
        "",
        decision(),
        random.nextBoolean(),
        length(),
        length(),
        length(),
        Constants.number(1));
  }

  private RideHeight rideHeight() {
    return new RideHeight(
        subject(),
        standing(),
        List.of(),
        length(),
        length(),
        length(),
        length(),
        length(),
        length());
  }

  private Seating seating() {
    return new Seating(
        subject(),
        standing(),
        List.of(),
        "",
        text(),
        "",
        "",
        decision(),
        random.nextBoolean(),
        length(),
        length(),
        length(),
        true,
        false,
        length());
  }

  private PartOnVehicle part() {
    PartKind kind = random.nextBoolean() ? PartKind.BUMP_STOP : PartKind.WHEEL_SPACER;
    return new PartOnVehicle(subject(), standing(), List.of("P-1"), "P-1", kind);
  }
}
