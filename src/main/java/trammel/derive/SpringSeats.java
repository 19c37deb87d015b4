package trammel.derive;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.build.Equipment;
import trammel.catalog.AxleProfile.SpringSeat;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.Spring;
import trammel.catalog.SuspensionPart.SpringSpacer;
import trammel.fact.SpringSeating;
import trammel.fact.Standing;
import trammel.quantity.Decision;
import trammel.quantity.Formula;
import trammel.subject.Position;
import trammel.subject.Subject;

/** What springs and their spacers sit on. */
final class SpringSeats {
  private static final Formula ROOM = new Formula("room", "outer − inner", "definition");

  private final Derivation derivation;
  private final Build build;

  SpringSeats(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  void add() {
    for (Position position : Position.running()) {
      seats(position, build.vehicle().axle(position.axle().orElseThrow()).springSeat());
    }
  }

  private void seats(Position position, SpringSeat seat) {
    Equipment after = build.after(position);
    List<SpringSpacer> spacers = after.all(PartKind.SPRING_SPACER, SpringSpacer.class);
    Optional<Spring> spring = after.one(PartKind.SPRING, Spring.class);
    boolean stacked = spacers.size() > 1 && !spacers.stream().allMatch(SpringSpacer::stacks);
    Standing standing =
        Standing.ofChange(build.changes(position, PartKind.SPRING_SPACER, PartKind.SPRING));
    for (SpringSpacer spacer : spacers) {
      if (spring.isEmpty()) {
        continue;
      }
      Spring coil = spring.get();
      Decision end =
          spacer.end() == null || coil.lowerEnd() == null
              ? Decision.ABSENT
              : Decision.of(spacer.end() == coil.lowerEnd());
      derivation.facts.add(
          new SpringSeating(
              Subject.of(position, spacer.number()),
              standing,
              List.of(spacer.number(), coil.number()),
              spacer.number(),
              coil.number(),
              ROOM.linear(1, spacer.insideDiameter(), -1, seat.pinDiameter()),
              ROOM.linear(1, seat.cupDiameter(), -1, spacer.outsideDiameter()),
              ROOM.linear(1, coil.insideDiameter(), -1, spacer.collarDiameter()),
              ROOM.linear(1, spacer.outsideDiameter(), -1, coil.outsideDiameter()),
              end,
              words(spacer.end()),
              words(coil.lowerEnd()),
              stacked));
    }
  }

  private static String words(@Nullable Object end) {
    return end == null ? "unknown" : end.toString().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
