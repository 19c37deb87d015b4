package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;
import static trammel.quantity.Dimension.RATIO;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.PartKind;
import trammel.catalog.Support.SwayBar;
import trammel.catalog.SuspensionPart;
import trammel.fact.Standing;
import trammel.fact.SwayLink;
import trammel.physics.SwayBarLinkage;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Position;
import trammel.subject.Subject;

/** Sway-bar links over the wheel's travel, with the link that is fitted. */
final class SwayBarFacts {
  private static final Formula FOLLOWS =
      new Formula("travel of the link", "motion ratio · wheel travel", "definition");
  private static final Formula ANGLE_OF_LINK =
      new Formula("link angle from the perpendicular", "two circles", "SwayBarLinkage");
  private static final Formula ANGLE_OF_ARM =
      new Formula("angle of the bar's arm", "two circles", "SwayBarLinkage");
  private static final Formula CHANGE =
      new Formula("change of the arm angle", "arm as proposed − arm at book height", "definition");
  private static final Formula SHARE =
      new Formula(
          "change of the arm angle",
          "change at rest / the arm's swing from book height to the book's droop",
          "own derivation: how much of its way down the bar has used up standing still");
  private static final Formula RIGHT =
      new Formula(
          "link that keeps the arm's angle",
          "√((l sin lean)² + (l cos lean + motion ratio · lift)²)",
          "shared/reference/geometry.md, section 6: extend by lift times link travel over wheel"
              + " travel");

  private final Derivation derivation;
  private final Build build;

  SwayBarFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  void add(Position position, Standings standings) {
    @Nullable SwayBar bar = standings.after().axle().support().swayBar();
    if (bar != null) {
      new Link(position, standings, bar).add();
    } else if (build.changes(position, PartKind.SWAY_BAR_LINK)) {
      Quantity angle =
          Figures.missing(
              ANGLE,
              "angles of the sway bar",
              "nobody has measured the bar",
              Instrument.STATED,
              "angle finder on the bar's arm and on its link");
      Quantity length = length(standings.after().equipment());
      Quantity share = Quantity.absent(RATIO, Objects.requireNonNull(angle.absence()));
      Quantity right = Quantity.absent(LENGTH, Objects.requireNonNull(angle.absence()));
      derivation.facts.add(
          new SwayLink(
              Subject.of(position),
              Standing.WORSE_OR_NEW,
              standings.after().numbers(PartKind.SWAY_BAR_LINK),
              number(standings.after().equipment()),
              length,
              angle,
              angle,
              "at rest",
              share,
              right));
    }
  }

  private static Optional<SuspensionPart.SwayBarLink> link(Equipment equipment) {
    return equipment.one(PartKind.SWAY_BAR_LINK, SuspensionPart.SwayBarLink.class);
  }

  private static String number(Equipment equipment) {
    return link(equipment).map(SuspensionPart.SwayBarLink::number).orElse("");
  }

  private static Quantity length(Equipment equipment) {
    return link(equipment)
        .map(SuspensionPart.SwayBarLink::length)
        .orElseGet(
            () ->
                Figures.missing(
                    LENGTH,
                    "length of the sway-bar link",
                    "nobody says which is fitted",
                    Instrument.TAPE,
                    "measure the link eye to eye"));
  }

  /** One link. */
  private final class Link {
    private final Position position;
    private final Standings standings;
    private final SwayBar bar;
    private final Quantity book;

    Link(Position position, Standings standings, SwayBar bar) {
      this.position = position;
      this.standings = standings;
      this.bar = bar;
      this.book = length(build.bookAt(position));
    }

    void add() {
      CornerTravel after = standings.after();
      Quantity fitted = length(after.equipment());
      Quantity rest = CornerTravel.rise(standings.liftAfter());
      Quantity droop = CornerTravel.rise(after.droop().hang());
      Quantity bump = after.flatRise();
      Quantity atRest = eitherWay(linkAngle(rest, fitted));
      Quantity hanging = eitherWay(linkAngle(droop, fitted));
      Quantity bumped = eitherWay(linkAngle(bump, fitted));
      boolean known = hanging.isKnown() && bumped.isKnown();
      boolean bumpWorse = known ? bumped.value() > hanging.value() : hanging.isKnown();
      CornerTravel before = standings.before();
      boolean touched =
          build.changes(position, PartKind.SWAY_BAR_LINK)
              || !TravelFacts.stays(moved(after.droop().hang(), before.droop().hang()))
              || !TravelFacts.stays(moved(after.flatRise(), before.flatRise()));
      derivation.facts.add(
          new SwayLink(
              Subject.of(position),
              Standing.ofChange(touched),
              after.numbers(PartKind.SWAY_BAR_LINK),
              number(after.equipment()),
              fitted,
              atRest,
              bumpWorse ? bumped : hanging,
              bumpWorse ? "at full bump" : "hanging",
              armChange(rest, fitted),
              rightLength()));
    }

    private static Quantity moved(Quantity after, Quantity before) {
      return CHANGE.linear(1, after, -1, before);
    }

    /** The linkage at a rise of the wheel; an empty result where it does not close. */
    private Optional<SwayBarLinkage.Closed> at(Quantity travel, Quantity link) {
      boolean known =
          travel.isKnown()
              && link.isKnown()
              && book.isKnown()
              && bar.arm().isKnown()
              && bar.armAngle().isKnown()
              && bar.linkLean().isKnown();
      if (!known) {
        return Optional.empty();
      }
      SwayBarLinkage linkage =
          new SwayBarLinkage(
              bar.arm().value(),
              bar.armAngle().value(),
              book.value(),
              bar.linkLean().value(),
              link.value());
      return linkage.at(travel.value()) instanceof SwayBarLinkage.Closed closed
          ? Optional.of(closed)
          : Optional.empty();
    }

    private Quantity of(
        Formula formula,
        double value,
        SwayBarLinkage.Partials partials,
        Quantity travel,
        Quantity link) {
      return formula.of(
          ANGLE,
          value,
          new double[] {
            partials.perTravel(),
            partials.perArmLength(),
            partials.perArmAngle(),
            partials.perBookLink(),
            partials.perLean(),
            partials.perLink()
          },
          travel,
          bar.arm(),
          bar.armAngle(),
          book,
          bar.linkLean(),
          link);
    }

    private static final SwayBarLinkage.Partials CONSTANT =
        new SwayBarLinkage.Partials(0, 0, 0, 0, 0, 0);

    /** Where arm and link cannot close they would lie in one line: 90 degrees. */
    private Quantity linkAngle(Quantity rise, Quantity link) {
      Quantity travel = FOLLOWS.product(LENGTH, 1, bar.motionRatio(), rise);
      return at(travel, link)
          .map(c -> of(ANGLE_OF_LINK, c.linkAngle(), c.ofLinkAngle(), travel, link))
          .orElseGet(() -> of(ANGLE_OF_LINK, 90, CONSTANT, travel, link));
    }

    private Quantity armAngle(Quantity rise, Quantity link) {
      Quantity travel = FOLLOWS.product(LENGTH, 1, bar.motionRatio(), rise);
      return at(travel, link)
          .map(c -> of(ANGLE_OF_ARM, c.armAngle(), c.ofArmAngle(), travel, link))
          .orElseGet(() -> of(ANGLE_OF_ARM, 90, CONSTANT, travel, link));
    }

    private static Quantity eitherWay(Quantity angle) {
      return angle.isKnown() && angle.value() < 0 ? CHANGE.linear(-1, angle) : angle;
    }

    private Quantity armChange(Quantity rest, Quantity fitted) {
      Quantity hang = CornerTravel.rise(standings.after().axle().droopTravel());
      Quantity now = eitherWay(CHANGE.linear(1, armAngle(rest, fitted), -1, bar.armAngle()));
      Quantity swing = eitherWay(CHANGE.linear(1, armAngle(hang, book), -1, bar.armAngle()));
      return SHARE.quotient(RATIO, 1, now, swing);
    }

    private Quantity rightLength() {
      Quantity more = FOLLOWS.product(LENGTH, 1, bar.motionRatio(), standings.liftAfter());
      boolean known = more.isKnown() && book.isKnown() && bar.linkLean().isKnown();
      double length = known ? book.value() : Double.NaN;
      double lean = known ? Math.toRadians(bar.linkLean().value()) : Double.NaN;
      double down = length * Math.cos(lean) + (known ? more.value() : Double.NaN);
      double right = Math.hypot(length * Math.sin(lean), down);
      double perLength = (length * square(Math.sin(lean)) + down * Math.cos(lean)) / right;
      double perLean =
          Math.toRadians(1)
              * (length * length * Math.sin(lean) * Math.cos(lean) - down * length * Math.sin(lean))
              / right;
      return RIGHT.of(
          LENGTH,
          right,
          new double[] {perLength, perLean, down / right},
          book,
          bar.linkLean(),
          more);
    }

    private static double square(double value) {
      return value * value;
    }
  }
}
