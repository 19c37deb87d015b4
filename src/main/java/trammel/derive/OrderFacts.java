package trammel.derive;

import static trammel.quantity.Dimension.RATIO;
import static trammel.quantity.Dimension.TIME;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.build.Build;
import trammel.catalog.Hub;
import trammel.catalog.Listing;
import trammel.catalog.PartKind;
import trammel.catalog.WheelPart.Fastener;
import trammel.fact.ListedFor;
import trammel.fact.OrderLine;
import trammel.fact.PieceCount;
import trammel.fact.SideCount;
import trammel.fact.Standing;
import trammel.quantity.Constants;
import trammel.quantity.Decision;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;
import trammel.subject.Subject;

/** Whether an order is whole: counts, sides, keys, and what does not come back. */
final class OrderFacts {
  private static final Formula SPARE =
      new Formula("pieces left over", "on the order − needed", "definition");

  private final Derivation derivation;
  private final Build build;

  OrderFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  void add() {
    Map<String, Integer> pieces = new LinkedHashMap<>();
    Map<String, Build.Line> lines = new LinkedHashMap<>();
    Map<String, Set<Position>> places = new LinkedHashMap<>();
    for (Build.Line line : build.lines()) {
      String number = line.part().number();
      lines.putIfAbsent(number, line);
      places.computeIfAbsent(number, n -> new LinkedHashSet<>()).addAll(line.at());
      pieces.merge(number, line.pieces(needed(line)), Integer::sum);
    }
    lines.forEach(
        (number, line) -> {
          int needed = needed(line.part() instanceof Fastener, line, places.get(number));
          count(line, needed, pieces.get(number));
          sold(line);
          listed(line);
        });
    sides();
  }

  private int needed(Build.Line line) {
    return needed(line.part() instanceof Fastener, line, new LinkedHashSet<>(line.at()));
  }

  /**
   * Pieces that the job asks for: one a place, or as many nuts as the wheels there have holes, less
   * what the locks take.
   */
  private int needed(boolean fastener, Build.Line line, Set<Position> at) {
    if (fastener || line.part().kind() == PartKind.STUD) {
      int each = 0;
      for (Position position : at) {
        Hub hub = build.vehicle().axle(position.axle().orElse(Axle.FRONT)).hub();
        boolean lock = line.part() instanceof Fastener one && one.lock();
        each += lock ? 1 : hub.boltPattern().count() - locks(position, line);
      }
      return each;
    }
    boolean oneForAll =
        line.part().kind() == PartKind.BODY_LIFT_KIT || line.part().kind() == PartKind.ACCESSORY;
    boolean oneAnAxle =
        line.part().kind() == PartKind.PANHARD_BAR
            || line.part().kind() == PartKind.PANHARD_BRACKET;
    if (oneForAll) {
      return 1;
    }
    return oneAnAxle
        ? (int) at.stream().flatMap(p -> p.axle().stream()).distinct().count()
        : at.size();
  }

  private int locks(Position position, Build.Line but) {
    return (int)
        build.lines().stream()
            .filter(line -> !line.equals(but) && line.at().contains(position))
            .filter(line -> line.part() instanceof Fastener fastener && fastener.lock())
            .count();
  }

  private void count(Build.Line line, int needed, int supplied) {
    Quantity asked = Constants.number(needed).called("pieces needed");
    Quantity brought = Constants.number(supplied).called("pieces on the order");
    boolean key = line.part() instanceof Fastener fastener && fastener.needsKey();
    String number = line.part().number();
    derivation.facts.add(
        new PieceCount(
            Subject.line(number),
            Standing.WORSE_OR_NEW,
            List.of(number),
            number,
            line.part().kind().words(),
            asked,
            brought,
            SPARE.linear(1, brought, -1, asked),
            Constants.number(line.part().listing().pieces()).called("pieces in a unit"),
            key));
  }

  private void listed(Build.Line line) {
    List<String> vehicles = line.part().listing().vehicles();
    String here = build.vehicle().vehicle();
    String number = line.part().number();
    derivation.facts.add(
        new ListedFor(
            Subject.line(number),
            Standing.WORSE_OR_NEW,
            List.of(number),
            number,
            String.join(", ", vehicles),
            here,
            Decision.of(vehicles.isEmpty() || vehicles.contains(here))));
  }

  private void sold(Build.Line line) {
    Listing listing = line.part().listing();
    boolean onShelf = listing.stock() != null && listing.stock() > 0;
    Quantity wait = onShelf ? Quantity.exact(TIME, 0) : listing.leadTime();
    Listing.ReturnableUntil until = listing.returnableUntil();
    String words =
        until == null
            ? "the catalog does not say whether it goes back"
            : switch (until) {
              case ORDERED -> "it never goes back";
              case OPENED -> "it goes back only unopened";
              case MOUNTED -> "it goes back only unmounted";
              case DRIVEN -> "it goes back until it has been driven";
            };
    derivation.facts.add(
        new OrderLine(
            Subject.line(line.part().number()),
            Standing.WORSE_OR_NEW,
            List.of(line.part().number()),
            line.part().number(),
            line.part().kind().toString(),
            words,
            trial(line.part().kind()),
            listing.returnsOnlyUnfitted(),
            wait));
  }

  private static String trial(PartKind kind) {
    boolean onTheWheel =
        kind == PartKind.TIRE || kind == PartKind.WHEEL || kind == PartKind.WHEEL_SPACER;
    return onTheWheel
        ? "try one bare wheel on the tightest corner, then one mounted tire from lock to lock"
        : "measure or ask for what the list below wants";
  }

  private void sides() {
    Map<PartKind, int[]> counts = new LinkedHashMap<>();
    for (Build.Line line : build.lines()) {
      Side hand = line.part().listing().hand();
      if (hand != null) {
        int[] both = counts.computeIfAbsent(line.part().kind(), kind -> new int[2]);
        both[hand == Side.LEFT ? 0 : 1] += line.pieces(needed(line));
      }
    }
    counts.forEach(
        (kind, both) ->
            derivation.facts.add(
                new SideCount(
                    Subject.line(kind.toString()),
                    Standing.WORSE_OR_NEW,
                    build.lines().stream()
                        .filter(l -> l.part().kind() == kind)
                        .map(l -> l.part().number())
                        .distinct()
                        .toList(),
                    kind.words(),
                    Constants.number(both[0]),
                    Constants.number(both[1]),
                    Quantity.exact(RATIO, Math.abs(both[0] - both[1])))));
  }
}
