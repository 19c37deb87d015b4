package trammel.catalog;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import trammel.catalog.Support.DroopLimit;
import trammel.catalog.Support.LineRun;
import trammel.catalog.SuspensionPart.BumpStop;
import trammel.catalog.SuspensionPart.Damper;
import trammel.catalog.SuspensionPart.FlexibleLine;
import trammel.catalog.SuspensionPart.Spring;
import trammel.catalog.SuspensionPart.SpringSpacer;
import trammel.quantity.Quantity;
import trammel.subject.Axle;

/**
 * Checks that what carries the load can be true: dampers, coils, lines and stops against the travel
 * they are stated with. A value is at fault only by more than what is known of it.
 */
final class StrokeCheck {
  private final SurveyFaults faults;
  private final Map<String, Part> parts = new TreeMap<>();

  StrokeCheck(SurveyFaults faults, Collection<Part> parts) {
    this.faults = faults;
    parts.forEach(part -> this.parts.put(part.number(), part));
  }

  void check(Collection<VehicleProfile> vehicles) {
    for (Part part : parts.values()) {
      if (part instanceof Damper damper) {
        lengths(damper);
      } else if (part instanceof BumpStop stop) {
        lengths(stop);
      }
    }
    for (VehicleProfile vehicle : vehicles) {
      for (Axle axle : Axle.values()) {
        axle(vehicle, axle, vehicle.axle(axle));
      }
    }
  }

  private void lengths(Damper damper) {
    if (surelyAbove(damper.closedLength(), damper.openLength())) {
      faults.at(
          damper.openLength(),
          "is less than the closed length, which is "
              + SurveyFaults.written(damper.closedLength())
              + "; expected the damper to be longer pulled out",
          "Are open and closed swapped? Exchange the two, or correct one of them.");
    }
  }

  private void lengths(BumpStop stop) {
    if (surelyAbove(stop.flatHeight(), stop.height())) {
      faults.at(
          stop.flatHeight(),
          "is more than the height, which is "
              + SurveyFaults.written(stop.height())
              + "; expected the stop to be lower under a blow",
          "Are height and flat height swapped? Exchange the two, or correct one of them.");
    }
  }

  private void axle(VehicleProfile vehicle, Axle where, AxleProfile axle) {
    for (Damper damper : book(axle, Damper.class)) {
      damper(axle, damper);
    }
    for (Spring coil : book(axle, Spring.class)) {
      listed(vehicle, where, SpringSpacer.class).forEach(spacer -> spacer(spacer, coil));
    }
    for (BumpStop stop : book(axle, BumpStop.class)) {
      listed(vehicle, where, BumpStop.class).forEach(other -> stop(axle, stop, other));
    }
    for (LineRun run : axle.support().lines()) {
      for (FlexibleLine line : book(axle, FlexibleLine.class)) {
        if (line.carries() == run.carries()) {
          line(run, line);
        }
      }
    }
  }

  private <T extends Part> List<T> book(AxleProfile axle, Class<T> type) {
    List<T> found = new ArrayList<>();
    for (String number : axle.book()) {
      Part part = parts.get(number);
      if (type.isInstance(part)) {
        found.add(type.cast(part));
      }
    }
    return found;
  }

  private <T extends Part> List<T> listed(VehicleProfile vehicle, Axle axle, Class<T> type) {
    return parts.values().stream()
        .filter(type::isInstance)
        .filter(part -> part.listing().vehicles().contains(vehicle.vehicle()))
        .filter(part -> part.listing().axle() == null || part.listing().axle() == axle)
        .map(type::cast)
        .toList();
  }

  private void damper(AxleProfile axle, Damper damper) {
    Quantity length = axle.support().damper().length();
    if (surelyAbove(damper.closedLength(), damper.openLength())) {
      return;
    }
    if (surelyAbove(length, damper.openLength()) || surelyAbove(damper.closedLength(), length)) {
      faults.at(
          length,
          "is no length that the damper "
              + damper.number()
              + " can have; expected "
              + SurveyFaults.written(damper.closedLength())
              + " to "
              + SurveyFaults.written(damper.openLength()),
          "Measure eye to eye, standing at book height; or is it another damper?");
      return;
    }
    Quantity ratio = axle.support().damper().motionRatio();
    Quantity droop = axle.droopTravel();
    boolean known =
        length.isKnown()
            && ratio.isKnown()
            && droop.isKnown()
            && damper.openLength().isKnown()
            && axle.support().droopLimit() == DroopLimit.DAMPER;
    if (!known) {
      return;
    }
    double hang = (damper.openLength().value() - length.value()) / ratio.value();
    double unsure =
        Math.hypot(
            Math.hypot(damper.openLength().expanded(), length.expanded()) / ratio.value(),
            Math.hypot(droop.expanded(), hang * ratio.expanded() / ratio.value()));
    if (Math.abs(hang - droop.value()) > unsure) {
      faults.at(
          droop,
          "is not where the damper "
              + damper.number()
              + " is pulled out, which is to end the wheel's way down; expected about "
              + SurveyFaults.length(hang),
          "Measure the droop again; or does a stop end it? Then write droop-limit: stop.");
    }
  }

  private void spacer(SpringSpacer spacer, Spring coil) {
    Quantity free = coil.freeLength();
    Quantity solid = coil.solidLength();
    if (coil.leaf() || !free.isKnown() || !solid.isKnown() || !spacer.thickness().isKnown()) {
      return;
    }
    double travel = free.value() - solid.value();
    if (spacer.thickness().value() > travel) {
      faults.at(
          spacer.thickness(),
          "is more than the coil "
              + coil.number()
              + " can be pressed together, which is "
              + SurveyFaults.length(travel)
              + "; expected a spacer that leaves it travel",
          "Was the unit mistaken, or the spacer measured with its coil? Measure the ring alone.");
    }
  }

  private void stop(AxleProfile axle, BumpStop book, BumpStop other) {
    Quantity bump = axle.bumpTravel();
    if (!bump.isKnown() || !book.height().isKnown() || !other.height().isKnown()) {
      return;
    }
    double most = book.height().value() + bump.value() * ratio(axle);
    if (other.height().value() >= most) {
      faults.at(
          other.height(),
          "leaves no bump travel where "
              + book.number()
              + " of "
              + SurveyFaults.written(book.height())
              + " leaves "
              + SurveyFaults.written(bump)
              + "; expected less than "
              + SurveyFaults.length(most),
          "Was it measured with its bracket? Measure from its seat to its tip.");
    }
  }

  /** As far out as the travel is worked out for: on the axle, or where the spring is. */
  private static double ratio(AxleProfile axle) {
    return axle.layout().beam() || !axle.springMotionRatio().isKnown()
        ? 1
        : axle.springMotionRatio().value();
  }

  private void line(LineRun run, FlexibleLine line) {
    if (surelyAbove(run.span(), line.length())) {
      faults.at(
          run.span(),
          "is longer than the "
              + run.carries().toString().toLowerCase(Locale.ROOT).replace('_', ' ')
              + " line "
              + line.number()
              + ", which is "
              + SurveyFaults.written(line.length())
              + "; expected a span that it reaches",
          "Was the span measured along the line? Measure straight between its fixed ends; or are"
              + " span and length swapped?");
    }
  }

  private static boolean surelyAbove(Quantity one, Quantity other) {
    return one.isKnown() && other.isKnown() && one.above(other).isMet();
  }
}
