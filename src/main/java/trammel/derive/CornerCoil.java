package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.catalog.AxleProfile.Springs;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.Spring;
import trammel.catalog.SuspensionPart.SpringSpacer;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;

/**
 * The coil of one corner between its seats. A spacer raises a seat: it takes room from the coil and
 * leaves the seats where they are. A plate above a strut lets the upper seat down with it.
 */
final class CornerCoil {
  private static final Formula SEATS =
      new Formula("travel of the spring", "motion ratio · wheel travel", "definition");
  private static final Formula ROOM =
      new Formula(
          "room for the coil",
          "seat to seat at book height − motion ratio · rise − spacers − plate",
          "own derivation");
  private static final Formula GAP =
      new Formula("gap over the slack coil", "room in droop − free length", "definition");
  private static final Formula BIND =
      new Formula(
          "room over the solid coil", "room at the crushed stop − solid length", "definition");
  private static final Formula AT_LENGTH =
      new Formula(
          "rise at which the coil has a length",
          "(room at book height − that length) / motion ratio",
          "own derivation");

  private static final Formula SPACERS =
      new Formula("spacers", "sum of their thicknesses", "definition");

  private static final Quantity NO_SPACER = Constants.mm(0).called("no spacer");

  private final CornerTravel travel;
  private final Spring coil;
  private final Quantity spacers;
  private final Once<Quantity> looseRise = new Once<>(() -> riseAt(coil().freeLength()));
  private final Once<Quantity> solidRise = new Once<>(() -> riseAt(coil().solidLength()));

  private CornerCoil(CornerTravel travel, Spring coil, Quantity spacers) {
    this.travel = travel;
    this.coil = coil;
    this.spacers = spacers;
  }

  /**
   * The coil of a corner; none where leaves, torsion bars or air carry it, or none is named.
   *
   * @param thicker how much thicker its spacers, if it has any, are tried (mm)
   */
  static Optional<CornerCoil> of(CornerTravel travel, double thicker) {
    if (travel.axle().springs() != Springs.COIL) {
      return Optional.empty();
    }
    List<Quantity> thicknesses = new ArrayList<>();
    travel
        .equipment()
        .all(PartKind.SPRING_SPACER, SpringSpacer.class)
        .forEach(spacer -> thicknesses.add(spacer.thickness()));
    if (!thicknesses.isEmpty() && thicker != 0) {
      thicknesses.add(Constants.mm(thicker));
    }
    Quantity spacers = NO_SPACER;
    if (!thicknesses.isEmpty()) {
      spacers = SPACERS.sum(thicknesses);
    }
    Quantity all = spacers;
    return travel
        .equipment()
        .one(PartKind.SPRING, Spring.class)
        .filter(spring -> !spring.leaf())
        .map(spring -> new CornerCoil(travel, spring, all));
  }

  Spring coil() {
    return coil;
  }

  /** Room for the coil with the wheel somewhere in its travel; negative rise where it hangs. */
  private Quantity room(Quantity rise) {
    Quantity move = SEATS.product(LENGTH, 1, travel.axle().springMotionRatio(), rise);
    return ROOM.linear(
        new double[] {1, -1, -1, -1},
        travel.axle().support().springLength(),
        move,
        spacers,
        travel.platesAdded());
  }

  /** Gap over the coil with the wheel hanging: negative where it still carries. */
  Quantity gap() {
    return GAP.linear(1, room(CornerTravel.rise(travel.droop().hang())), -1, coil.freeLength());
  }

  /** Room left over the solid coil with the stop crushed: negative where it binds first. */
  Quantity bindRoom() {
    return BIND.linear(1, room(travel.flatRise()), -1, coil.solidLength());
  }

  /** Rise at which the coil has its free length: below it the coil is loose. */
  Quantity looseRise() {
    return looseRise.get();
  }

  /** Rise at which the coil is solid. */
  Quantity solidRise() {
    return solidRise.get();
  }

  private Quantity riseAt(Quantity length) {
    Quantity over =
        ROOM.linear(
            new double[] {1, -1, -1, -1},
            travel.axle().support().springLength(),
            length,
            spacers,
            travel.platesAdded());
    return AT_LENGTH.quotient(LENGTH, 1, over, travel.axle().springMotionRatio());
  }
}
