package trammel.derive;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.catalog.BodyOnFrame;
import trammel.catalog.BodyOnFrame.Crossing;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.BodyLiftKit;
import trammel.fact.BodyBlocks;
import trammel.fact.BodyCrossing;
import trammel.fact.Standing;
import trammel.quantity.Constants;
import trammel.quantity.Decision;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Position;
import trammel.subject.Subject;

/** What blocks under the body ask of everything between body and frame. */
final class BodyFacts {
  private static final Formula LEFT =
      new Formula("slack left", "slack + extension in the kit − lift of the body", "definition");

  private final Derivation derivation;
  private final Build build;

  BodyFacts(Derivation derivation) {
    this.derivation = derivation;
    this.build = derivation.build;
  }

  /** Nothing where no blocks are added. */
  void add() {
    Optional<BodyLiftKit> added =
        build.after(Position.FRONT_LEFT).one(PartKind.BODY_LIFT_KIT, BodyLiftKit.class);
    if (added.isEmpty() || !build.changes(Position.FRONT_LEFT, PartKind.BODY_LIFT_KIT)) {
      return;
    }
    BodyLiftKit kit = added.get();
    blocks(kit);
    for (Crossing crossing : Crossing.values()) {
      if (!build.vehicle().bodyOnFrame().none().contains(crossing)) {
        crossing(kit, crossing);
      }
    }
  }

  private void blocks(BodyLiftKit kit) {
    BodyOnFrame body = build.vehicle().bodyOnFrame();
    String beneath =
        build
            .before(Position.FRONT_LEFT)
            .one(PartKind.BODY_LIFT_KIT, BodyLiftKit.class)
            .map(BodyLiftKit::number)
            .orElse("");
    Integer blocks = kit.blocks();
    Integer mounts = body.mounts();
    derivation.facts.add(
        new BodyBlocks(
            new Subject("vehicle", "body-mounts"),
            Standing.WORSE_OR_NEW,
            List.of(kit.number()),
            kit.number(),
            kit.thickness(),
            words(blocks),
            words(mounts),
            blocks == null || mounts == null
                ? Decision.ABSENT
                : Decision.of(blocks.intValue() == mounts.intValue()),
            beneath,
            Decision.of(beneath.isEmpty())));
  }

  private static String words(@Nullable Integer count) {
    return count == null ? "an unknown number" : count.toString();
  }

  private void crossing(BodyLiftKit kit, Crossing crossing) {
    Quantity slack = build.vehicle().bodyOnFrame().slack(crossing);
    Quantity extension =
        kit.extensions().stream()
            .filter(brought -> brought.crossing() == crossing)
            .map(BodyLiftKit.Extension::by)
            .findFirst()
            .orElse(Constants.mm(0).called("no extension in the kit"));
    Quantity lift = kit.thickness();
    derivation.facts.add(
        new BodyCrossing(
            new Subject("vehicle", crossing.toString()),
            Standing.WORSE_OR_NEW,
            List.of(kit.number()),
            kit.number(),
            crossing.toString(),
            lift,
            slack,
            extension,
            LEFT.linear(1, slack, 1, extension, -1, lift)));
  }
}
