package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.AxleProfile;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.LiftClaim;
import trammel.catalog.SuspensionPart.Spring;
import trammel.catalog.SuspensionPart.SpringSpacer;
import trammel.catalog.SuspensionPart.StrutTopSpacer;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Position;

/** Where the ends of one corner's travel lie today and as proposed, and where it stands in them. */
final class Standings {
  private static final Formula BY_SPACER =
      new Formula(
          "lift of a spacer",
          "thickness / motion ratio",
          "own derivation: load and deflection of the spring stay as they were");
  private static final Formula FOUND =
      new Formula("lift as found", "sum of what parts other than the book's add", "definition");
  private static final Formula MEASURED =
      new Formula("lift as found", "height as found − book height", "definition");
  private static final Formula PROPOSED =
      new Formula("lift over the book state", "lift as found + suspension lift", "definition");

  private static final Quantity NONE = Constants.mm(0).called("lift as found");

  private final CornerTravel before;
  private final CornerTravel after;
  private final Quantity liftBefore;
  private final Quantity lift;
  private final Quantity liftAfter;

  Standings(Derivation derivation, Position position) {
    Build build = derivation.build;
    before = new CornerTravel(build, position, build.before(position));
    after = new CornerTravel(build, position, build.after(position));
    RideChange ride = RideChange.of(derivation, new HeightFacts(derivation), position);
    // A measured height outranks what the parts add.
    boolean measured = ride.found() != ride.surveyed();
    liftBefore = measured ? MEASURED.linear(-1, ride.found()) : asFound(build, position);
    lift = new HeightFacts(derivation).lift(position);
    liftAfter = liftBefore == NONE ? lift : PROPOSED.linear(1, liftBefore, 1, lift);
  }

  CornerTravel before() {
    return before;
  }

  CornerTravel after() {
    return after;
  }

  /** What parts that are fitted already raise the corner over the book's height. */
  Quantity liftBefore() {
    return liftBefore;
  }

  /** What the changes raise it by. */
  Quantity lift() {
    return lift;
  }

  /** How far it stands over the book's height as proposed. */
  Quantity liftAfter() {
    return liftAfter;
  }

  private static Quantity asFound(Build build, Position position) {
    AxleProfile axle = build.vehicle().axle(position.axle().orElseThrow());
    Equipment book = build.bookAt(position);
    Equipment found = build.before(position);
    if (axle.heightControlled()) {
      return NONE;
    }
    List<Quantity> terms = new ArrayList<>();
    List<Double> signs = new ArrayList<>();
    for (int sign : new int[] {1, -1}) {
      Equipment equipment = sign > 0 ? found : book;
      List<Quantity> thicknesses = new ArrayList<>();
      equipment
          .all(PartKind.SPRING_SPACER, SpringSpacer.class)
          .forEach(spacer -> thicknesses.add(spacer.thickness()));
      equipment
          .all(PartKind.STRUT_TOP_SPACER, StrutTopSpacer.class)
          .forEach(spacer -> thicknesses.add(spacer.thickness()));
      for (Quantity thickness : thicknesses) {
        terms.add(BY_SPACER.quotient(LENGTH, 1, thickness, axle.springMotionRatio()));
        signs.add((double) sign);
      }
    }
    Optional<Spring> spring = found.one(PartKind.SPRING, Spring.class);
    if (spring.isPresent() && !found.sameAs(book, PartKind.SPRING)) {
      LiftClaim claim = spring.get().claims();
      terms.add(
          claim != null
              ? claim.lift()
              : Figures.missing(
                  LENGTH,
                  "lift of " + spring.get().number(),
                  "it is fitted already, and no lift is claimed for it",
                  Instrument.FENDER,
                  "measure hub to fender and compare with the book"));
      signs.add(1.0);
    }
    return terms.isEmpty()
        ? NONE
        : FOUND.linear(
            signs.stream().mapToDouble(Double::doubleValue).toArray(),
            terms.toArray(Quantity[]::new));
  }
}
