package trammel.derive;

import static trammel.quantity.Dimension.ANGLE;
import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.AxleProfile;
import trammel.catalog.BeamLocation.LeafProfile;
import trammel.catalog.BeamLocation.Links;
import trammel.catalog.PartKind;
import trammel.catalog.SurveyPoint;
import trammel.catalog.SuspensionPart.AxleLink;
import trammel.catalog.SuspensionPart.LeafBlock;
import trammel.catalog.SuspensionPart.Shackle;
import trammel.geometry.AxlePose;
import trammel.geometry.Facing;
import trammel.geometry.LeafSpring;
import trammel.geometry.LinkChange;
import trammel.geometry.RadiusArm;
import trammel.geometry.SideViewLinks;
import trammel.quantity.Constants;
import trammel.quantity.Formula;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;

/** How links or leaf springs turn a beam axle, and move it fore and aft, as it is raised. */
final class AxleTurns {
  private static final Formula TURN =
      new Formula(
          "turn of the axle, front up",
          "side view of its links at the proposed height",
          "SideViewLinks, RadiusArm: constant lengths");
  private static final Formula FORE =
      new Formula("fore shift of the axle", "side view of its links", "SideViewLinks, RadiusArm");
  private static final Formula LEAF =
      new Formula(
          "turn of the axle, front up",
          "wedges + shackle's drop over the span",
          "LeafSpring: own derivation; spring over the axle, shackle at the rear");

  private final Build build;

  AxleTurns(Build build) {
    this.build = build;
  }

  /**
   * A turn and a shift from the state surveyed.
   *
   * @param frontUp degrees, positive with the front of the housing up
   * @param fore mm, positive forward
   */
  record Turned(Quantity frontUp, Quantity fore) {
    static final Turned NOT =
        new Turned(
            Constants.degrees(0).called("turn of the axle"),
            Constants.mm(0).called("fore shift of the axle"));
  }

  /** The turn of an axle at a lift over it, with the links that are proposed or were there. */
  Turned at(Axle axle, Quantity lift, boolean proposed) {
    return at(axle, lift, lift, proposed);
  }

  /**
   * The same in another pose of the travel.
   *
   * @param setAt the lift at which an adjustable link is set to its length
   */
  Turned at(Axle axle, Quantity setAt, Quantity lift, boolean proposed) {
    AxleProfile profile = build.vehicle().axle(axle);
    if (!profile.layout().beam()) {
      return Turned.NOT;
    }
    Links links = profile.location().links();
    LeafProfile leaf = profile.location().leaf();
    if (links != null) {
      return links(axle, links, setAt, lift, proposed);
    }
    return profile.springs() == AxleProfile.Springs.LEAF
        ? leaf(axle, leaf, proposed)
        : unknown(axle);
  }

  private static Turned unknown(Axle axle) {
    String how = "tape: both ends of a lower and an upper link";
    return new Turned(
        Figures.missing(
            ANGLE,
            "links of the " + axle + " axle",
            "nobody has measured them",
            Instrument.TAPE,
            how),
        Figures.missing(
            LENGTH,
            "links of the " + axle + " axle",
            "nobody has measured them",
            Instrument.TAPE,
            how));
  }

  private @Nullable AxleLink link(Axle axle, AxleLink.Level level) {
    return build
        .after(Position.of(axle, Side.LEFT))
        .all(PartKind.AXLE_LINK, AxleLink.class)
        .stream()
        .filter(link -> link.level() == level)
        .findFirst()
        .orElse(null);
  }

  private Turned links(Axle axle, Links links, Quantity setAt, Quantity lift, boolean proposed) {
    Variables.Collector collector = new Variables.Collector();
    int[] lowerFrame = collector.add(links.lowerFrame(), "lower link, frame");
    int[] lowerAxle = collector.add(links.lowerAxle(), "lower link, axle");
    int[] wheel = collector.add(links.wheelCenter(), "wheel center");
    SurveyPoint upperFrameAt = links.upperFrame();
    SurveyPoint upperAxleAt = links.upperAxle();
    boolean arms = upperFrameAt == null || upperAxleAt == null;
    int[] upperFrame = arms ? lowerFrame : collector.add(upperFrameAt, "upper link, frame");
    int[] upperAxle = arms ? lowerAxle : collector.add(upperAxleAt, "upper link, axle");
    int raised = collector.add(lift);
    AxleLink lower = proposed ? link(axle, AxleLink.Level.LOWER) : null;
    AxleLink upper = proposed ? link(axle, AxleLink.Level.UPPER) : null;
    int lowerLength =
        lower == null ? -1 : collector.add(nearest(lower, links.lowerFrame(), links.lowerAxle()));
    int upperLength = upper == null ? -1 : collector.add(upper.lengthFrom());
    Variables variables = collector.all();
    Quantity missing = variables.missing();
    if (missing != null) {
      return new Turned(
          Quantity.absent(ANGLE, Variables.absence(missing)),
          Quantity.absent(LENGTH, Variables.absence(missing)));
    }
    FieldVector3D<Gradient> lowerFrom = variables.point(lowerFrame);
    FieldVector3D<Gradient> lowerTo = variables.point(lowerAxle);
    FieldVector3D<Gradient> upperFrom = variables.point(upperFrame);
    FieldVector3D<Gradient> upperTo = variables.point(upperAxle);
    FieldVector3D<Gradient> center = variables.point(wheel);
    LinkChange<Gradient> lowerChange = change(variables, lowerLength, lowerFrom, lowerTo);
    Gradient at = variables.variable(raised);
    if (arms) {
      return turned(variables, new RadiusArm<>(lowerFrom, lowerTo, center).at(at, lowerChange));
    }
    SideViewLinks<Gradient> side =
        new SideViewLinks<>(
            new SideViewLinks.Link<>(lowerFrom, lowerTo),
            new SideViewLinks.Link<>(upperFrom, upperTo),
            center);
    LinkChange<Gradient> upperChange = change(variables, upperLength, upperFrom, upperTo);
    if (upper != null && upper.lengthTo().isKnown()) {
      upperChange =
          level(
              variables,
              side,
              setAt == lift ? at : variables.constant(setAt.value()),
              lowerChange,
              upperFrom.distance(upperTo).getValue(),
              upper.lengthFrom().value(),
              upper.lengthTo().value());
    }
    return turned(variables, side.at(at, lowerChange, upperChange));
  }

  /** The length of a link that keeps nearest to the old one. */
  private static Quantity nearest(AxleLink link, SurveyPoint frame, SurveyPoint axle) {
    if (!link.lengthTo().isKnown()
        || !link.lengthFrom().isKnown()
        || !SurveyedShape.known(frame)
        || !SurveyedShape.known(axle)) {
      return link.lengthFrom();
    }
    double old = SurveyedShape.vector(frame).distance(SurveyedShape.vector(axle));
    if (old <= link.lengthFrom().value()) {
      return link.lengthFrom();
    }
    return old >= link.lengthTo().value()
        ? link.lengthTo()
        : Constants.mm(old).called("lower link, set as long as the old one");
  }

  /** An adjustable upper link, set as near as it goes to where the axle does not turn. */
  private static LinkChange<Gradient> level(
      Variables variables,
      SideViewLinks<Gradient> side,
      Gradient at,
      LinkChange<Gradient> lower,
      double old,
      double shortest,
      double longest) {
    double from = shortest - old;
    double to = longest - old;
    for (int step = 0; step < 40 && to - from > 1e-4; step++) {
      double third = (to - from) / 3;
      boolean left =
          turn(variables, side, at, lower, from + third)
              <= turn(variables, side, at, lower, to - third);
      from = left ? from : from + third;
      to = left ? to - third : to;
    }
    return LinkChange.longerBy(variables.constant((from + to) / 2));
  }

  private static double turn(
      Variables variables,
      SideViewLinks<Gradient> side,
      Gradient at,
      LinkChange<Gradient> lower,
      double longer) {
    return side.at(at, lower, LinkChange.longerBy(variables.constant(longer)))
        .map(pose -> Math.abs(pose.frontUp().getValue()))
        .orElse(Double.MAX_VALUE);
  }

  private static LinkChange<Gradient> change(
      Variables variables, int length, FieldVector3D<Gradient> from, FieldVector3D<Gradient> to) {
    return length < 0
        ? LinkChange.longerBy(variables.constant(0))
        : LinkChange.longerBy(variables.variable(length).subtract(from.distance(to)));
  }

  private static Turned turned(Variables variables, Optional<AxlePose<Gradient>> pose) {
    if (pose.isEmpty()) {
      return new Turned(
          Figures.missing(
              ANGLE,
              "turn of the axle",
              "its links do not reach the proposed height",
              Instrument.READ,
              "raise it less"),
          Figures.missing(
              LENGTH,
              "fore shift of the axle",
              "its links do not reach the proposed height",
              Instrument.READ,
              "raise it less"));
    }
    return new Turned(
        variables.quantity(TURN, ANGLE, pose.get().frontUp()),
        variables.quantity(FORE, LENGTH, pose.get().foreShift()));
  }

  private Turned leaf(Axle axle, @Nullable LeafProfile leaf, boolean proposed) {
    Position position = Position.of(axle, Side.LEFT);
    Equipment equipment = proposed ? build.after(position) : build.before(position);
    Quantity turn = Turned.NOT.frontUp();
    for (LeafBlock block : equipment.all(PartKind.LEAF_BLOCK, LeafBlock.class)) {
      Quantity wedge = block.wedge().isKnown() ? block.wedge() : Constants.degrees(0);
      turn = LEAF.linear(1, turn, 1, wedge);
    }
    Optional<Shackle> shackle = equipment.one(PartKind.SHACKLE, Shackle.class);
    if (shackle.isPresent()) {
      turn = LEAF.linear(1, turn, 1, shackle(shackle.get(), leaf));
    }
    return new Turned(turn, Turned.NOT.fore());
  }

  private static Quantity shackle(Shackle shackle, @Nullable LeafProfile leaf) {
    if (leaf == null) {
      return Figures.missing(
          ANGLE,
          "leaf spring",
          "nobody has measured its span and shackle",
          Instrument.TAPE,
          "tape: eye to eye of spring and shackle");
    }
    Variables.Collector collector = new Variables.Collector();
    int span = collector.add(leaf.span());
    int before = collector.add(leaf.shackle());
    int after = collector.add(shackle.length());
    Variables variables = collector.all();
    Quantity missing = variables.missing();
    if (missing != null) {
      return Quantity.absent(ANGLE, Variables.absence(missing));
    }
    Gradient half = variables.variable(span).multiply(0.5);
    LeafSpring<Gradient> spring = new LeafSpring<>(half, half, Facing.REARWARD, true);
    Gradient drop =
        LeafSpring.eyeDrop(
            variables.variable(before), variables.variable(after), variables.constant(0));
    return variables.quantity(LEAF, ANGLE, spring.turnOfShackle(drop));
  }

  /** Parts of an axle that turn it. */
  List<String> numbers(Axle axle) {
    Equipment after = build.after(Position.of(axle, Side.LEFT));
    return List.of(PartKind.AXLE_LINK, PartKind.LEAF_BLOCK, PartKind.SHACKLE).stream()
        .filter(kind -> build.changes(axle, kind))
        .flatMap(kind -> after.all(kind).stream())
        .map(part -> part.number())
        .toList();
  }
}
