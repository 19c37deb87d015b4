package trammel.physics;

import java.util.Optional;

/**
 * Arm and drop link of a sway bar in side view: the arm's end on a circle about the bar, the link's
 * upper end on it, its lower end carried straight up and down by the wheel. Own derivation from two
 * circles.
 *
 * <p>Outward is away from the bar, toward the arm's end as found, forward or rearward. Book height
 * is travel 0. Travel is the rise of the link's lower end relative to the body (mm): a lift of d is
 * −d on a beam axle with the bar on the frame, and −d times link travel over wheel travel on an
 * arm.
 *
 * @param armLength from the bar's axis to the link's upper end (mm)
 * @param armAngle at book height (degrees from horizontal), positive with the arm's end up
 * @param bookLink length of the link with which the angles were measured (mm)
 * @param lean of that link at book height (degrees from vertical), positive with its lower end
 *     outward
 * @param link length of the link that is fitted (mm)
 */
public record SwayBarLinkage(
    double armLength, double armAngle, double bookLink, double lean, double link) {

  /** How arm and link lie in one line where they are about to turn over, or cannot reach. */
  public enum InLine {
    /** The lower end is as far from the bar as both lengths together, or farther. */
    STRETCHED,
    /** It is as near as the difference of both lengths, or nearer. */
    FOLDED
  }

  /** What the linkage does at a travel. */
  public sealed interface Swing {}

  /**
   * The linkage closes.
   *
   * @param armAngle (degrees from horizontal), positive with the arm's end up
   * @param linkAngle of the link from the perpendicular to the arm (degrees), positive with its
   *     lower end outward; at 90 either way both lie in one line
   * @param ofArmAngle changes of the arm's angle
   * @param ofLinkAngle changes of the link's angle
   */
  public record Closed(double armAngle, double linkAngle, Partials ofArmAngle, Partials ofLinkAngle)
      implements Swing {}

  /**
   * The link does not reach from the arm to its lower end.
   *
   * @param inLine how both would lie
   * @param missing length that is wanting, or too much (mm)
   */
  public record Unreachable(InLine inLine, double missing) implements Swing {}

  /**
   * Where arm and link come into one line. Beyond, the linkage does not close, and coming back it
   * may turn over.
   *
   * @param inLine how they lie
   * @param travel there (mm)
   */
  public record TurningPoint(InLine inLine, double travel) {}

  /**
   * Changes of an angle by each input (degrees per mm, degrees per degree). They grow without bound
   * as arm and link come into one line.
   *
   * @param perTravel by the travel
   * @param perArmLength by the arm's length
   * @param perArmAngle by the arm's angle at book height
   * @param perBookLink by the length of the link that was measured; for a link that was not
   *     replaced this and the last belong to one input
   * @param perLean by its lean
   * @param perLink by the length of the link that is fitted
   */
  public record Partials(
      double perTravel,
      double perArmLength,
      double perArmAngle,
      double perBookLink,
      double perLean,
      double perLink) {}

  /**
   * @throws IllegalArgumentException for a length not above 0, or an arm and link found in one
   *     line, which can turn over either way
   */
  public SwayBarLinkage {
    Require.positive("length of the sway bar's arm", armLength);
    Require.positive("length of the sway bar's link", bookLink);
    Require.positive("length of the sway bar's link", link);
    if (!(Math.abs(Math.cos(Math.toRadians(lean - armAngle))) > 1e-9)) {
      throw Require.refused(
          "lean of the sway bar's link", lean, "a link that is not in line with its arm");
    }
  }

  /** The linkage as measured, with the link it was measured with. */
  public static SwayBarLinkage found(double armLength, double armAngle, double link, double lean) {
    return new SwayBarLinkage(armLength, armAngle, link, lean, link);
  }

  /** The same linkage with a link of another length (mm). */
  public SwayBarLinkage withLink(double length) {
    return new SwayBarLinkage(armLength, armAngle, bookLink, lean, length);
  }

  /** Arm and link at a travel (mm). */
  public Swing at(double travel) {
    double up = bookUp() + travel;
    double apart = Math.hypot(out(), up);
    if (apart > farthest()) {
      return new Unreachable(InLine.STRETCHED, apart - farthest());
    }
    if (apart < nearest()) {
      return new Unreachable(InLine.FOLDED, nearest() - apart);
    }
    double along = armLength * armLength + apart * apart - link * link;
    double across = Math.sqrt(Math.max(0, square(2 * armLength * apart) - square(along)));
    double arm = Math.atan2(up, out()) + bookSide() * Math.atan2(across, along);
    double linkOut = out() - armLength * Math.cos(arm);
    double linkUp = up - armLength * Math.sin(arm);
    double leaning = Math.atan2(linkOut, -linkUp);
    return closed(arm, leaning);
  }

  /**
   * The first travel on the way from one to another at which arm and link come into one line; where
   * they do not even reach at the first, that.
   */
  public Optional<TurningPoint> turningPoint(double from, double to) {
    if (at(from) instanceof Unreachable unreachable) {
      return Optional.of(new TurningPoint(unreachable.inLine(), from));
    }
    Optional<TurningPoint> stretched = crossing(InLine.STRETCHED, farthest(), from, to);
    Optional<TurningPoint> folded = crossing(InLine.FOLDED, nearest(), from, to);
    if (stretched.isEmpty() || folded.isEmpty()) {
      return stretched.or(() -> folded);
    }
    boolean stretchedFirst =
        Math.abs(stretched.get().travel() - from) <= Math.abs(folded.get().travel() - from);
    return stretchedFirst ? stretched : folded;
  }

  private Optional<TurningPoint> crossing(InLine inLine, double radius, double from, double to) {
    double square = square(radius) - square(out());
    if (square < 0) {
      return Optional.empty();
    }
    double half = Math.sqrt(square);
    double first = (to >= from ? -half : half) - bookUp();
    double second = (to >= from ? half : -half) - bookUp();
    if (isBetween(first, from, to)) {
      return Optional.of(new TurningPoint(inLine, first));
    }
    return isBetween(second, from, to)
        ? Optional.of(new TurningPoint(inLine, second))
        : Optional.empty();
  }

  private static boolean isBetween(double travel, double from, double to) {
    return Math.min(from, to) <= travel && travel <= Math.max(from, to);
  }

  /**
   * Angles and their changes: for a movement q of the lower end less those of the lengths, the arm
   * turns by −q·v / (a cos β) and the link by q·e / (l cos β), e and v being along arm and link.
   */
  private Closed closed(double arm, double leaning) {
    double between = leaning - arm;
    double angle = Math.atan2(Math.sin(between), Math.cos(between));
    Turn turn = new Turn(arm, leaning, armLength * Math.cos(angle), link * Math.cos(angle));
    double book = Math.toRadians(armAngle);
    double bookLean = Math.toRadians(lean);
    double[][] moves = {
      {0, 1},
      {Math.cos(book) - Math.cos(arm), Math.sin(book) - Math.sin(arm)},
      {-Math.toRadians(armLength) * Math.sin(book), Math.toRadians(armLength) * Math.cos(book)},
      {Math.sin(bookLean), -Math.cos(bookLean)},
      {
        Math.toRadians(bookLink) * Math.cos(bookLean), Math.toRadians(bookLink) * Math.sin(bookLean)
      },
      {-Math.sin(leaning), Math.cos(leaning)}
    };
    double[] armTurns = new double[moves.length];
    double[] angleTurns = new double[moves.length];
    for (int i = 0; i < moves.length; i++) {
      armTurns[i] = turn.arm(moves[i]);
      angleTurns[i] = turn.link(moves[i]) - armTurns[i];
    }
    return new Closed(
        Math.toDegrees(Math.atan2(Math.sin(arm), Math.cos(arm))),
        Math.toDegrees(angle),
        partials(armTurns),
        partials(angleTurns));
  }

  private record Turn(double arm, double leaning, double armLever, double linkLever) {
    double arm(double[] move) {
      return -Math.toDegrees(move[0] * Math.sin(leaning) - move[1] * Math.cos(leaning)) / armLever;
    }

    double link(double[] move) {
      return Math.toDegrees(move[0] * Math.cos(arm) + move[1] * Math.sin(arm)) / linkLever;
    }
  }

  private static Partials partials(double[] turns) {
    return new Partials(turns[0], turns[1], turns[2], turns[3], turns[4], turns[5]);
  }

  private double out() {
    return armLength * Math.cos(Math.toRadians(armAngle))
        + bookLink * Math.sin(Math.toRadians(lean));
  }

  private double bookUp() {
    return armLength * Math.sin(Math.toRadians(armAngle))
        - bookLink * Math.cos(Math.toRadians(lean));
  }

  private double bookSide() {
    return Math.signum(Math.cos(Math.toRadians(lean - armAngle)));
  }

  private double farthest() {
    return armLength + link;
  }

  private double nearest() {
    return Math.abs(armLength - link);
  }

  private static double square(double value) {
    return value * value;
  }
}
