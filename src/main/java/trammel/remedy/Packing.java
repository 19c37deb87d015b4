package trammel.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.catalog.Catalog;
import trammel.catalog.Part;
import trammel.catalog.PartKind;
import trammel.catalog.SuspensionPart.SpringSpacer;
import trammel.catalog.SuspensionPart.StrutTopSpacer;
import trammel.derive.Derivations;
import trammel.fact.FluidLoad;
import trammel.quantity.Quantity;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Side;

/**
 * A part of the catalog that takes load from an axle's rams, and the pressure that it would leave.
 *
 * @param thickness of a spacer; null for a spring
 * @param pressure with it fitted in the place of its like, all else as proposed
 * @param fromPreferred how far that lies over the preferred pressure (kPa); negative under it
 * @param nearest whether no other part here comes nearer to the preferred pressure
 */
public record Packing(
    Axle axle,
    Part part,
    @Nullable Quantity thickness,
    Quantity pressure,
    double fromPreferred,
    boolean nearest) {
  private static final List<PartKind> KINDS =
      List.of(PartKind.SPRING_SPACER, PartKind.STRUT_TOP_SPACER, PartKind.SPRING);

  /** Every such part for the axles of a build, by the pressure it leaves, highest first. */
  public static List<Packing> of(Build build, Catalog catalog, Derivations derivations) {
    List<Packing> all = new ArrayList<>();
    for (Axle axle : Axle.values()) {
      if (build.vehicle().axle(axle).support().fluid() != null) {
        all.addAll(of(build, catalog, derivations, axle));
      }
    }
    return List.copyOf(all);
  }

  private static List<Packing> of(
      Build build, Catalog catalog, Derivations derivations, Axle axle) {
    Fitting fitting = new Fitting(build);
    List<Position> at = Position.of(axle);
    List<Packing> found = new ArrayList<>();
    for (Part part : catalog.parts().values()) {
      if (KINDS.contains(part.kind()) && fitting.suits(part, at)) {
        load(fitting.fitted(List.of(part), at), derivations, Position.of(axle, Side.LEFT))
            .map(load -> packing(axle, part, load))
            .ifPresent(found::add);
      }
    }
    double least =
        found.stream().mapToDouble(each -> Math.abs(each.fromPreferred())).min().orElse(0);
    return found.stream()
        .sorted(Comparator.comparingDouble(Packing::fromPreferred).reversed())
        .map(each -> Math.abs(each.fromPreferred()) == least ? each.asNearest() : each)
        .toList();
  }

  private Packing asNearest() {
    return new Packing(axle, part, thickness, pressure, fromPreferred, true);
  }

  private static Packing packing(Axle axle, Part part, FluidLoad load) {
    Quantity thickness =
        part instanceof SpringSpacer spacer
            ? spacer.thickness()
            : part instanceof StrutTopSpacer spacer ? spacer.thickness() : null;
    return new Packing(
        axle,
        part,
        thickness,
        load.pressureAfter(),
        load.pressureAfter().value() - load.preferred().value(),
        false);
  }

  private static Optional<FluidLoad> load(Build build, Derivations derivations, Position position) {
    return derivations
        .ledgers(build)
        .fluidLoad(position)
        .filter(load -> load.pressureAfter().isKnown() && load.preferred().isKnown());
  }
}
