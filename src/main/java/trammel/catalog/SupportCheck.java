package trammel.catalog;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import trammel.catalog.Support.Fluid;
import trammel.catalog.SuspensionPart.Spring;
import trammel.catalog.SuspensionPart.TestPoint;
import trammel.quantity.Quantity;
import trammel.quantity.Unit;
import trammel.read.Problems;
import trammel.subject.Axle;

/**
 * Checks that what carries an axle can be true: springs that work at book height, tables that rise,
 * pressures of one unit. What is not stated is no fault.
 */
final class SupportCheck {
  /** A pressure in psi that is taken for bar, or the other way around, is off by this. */
  private static final double PSI_IN_BAR = Unit.BAR.toKept(1) / Unit.PSI.toKept(1);

  /** How near to it tells a unit from a strange pressure. */
  private static final double NEAR = 1.3;

  private final SurveyFaults faults;

  SupportCheck(Problems problems) {
    this.faults = new SurveyFaults(problems);
  }

  void check(Collection<VehicleProfile> vehicles, Map<String, Part> parts) {
    for (Part part : parts.values()) {
      if (part instanceof Spring spring) {
        spring(spring);
      }
    }
    for (VehicleProfile vehicle : vehicles) {
      for (Axle axle : Axle.values()) {
        AxleProfile profile = vehicle.axle(axle);
        Fluid fluid = profile.support().fluid();
        if (fluid != null) {
          fluid(fluid);
        }
        Stream.concat(vehicle.book().stream(), profile.book().stream())
            .map(parts::get)
            .filter(Spring.class::isInstance)
            .map(Spring.class::cast)
            .filter(spring -> spring.listing().axle() == null || spring.listing().axle() == axle)
            .forEach(spring -> fits(profile.support(), spring));
      }
    }
  }

  private void spring(Spring spring) {
    Quantity free = spring.freeLength();
    Quantity solid = spring.solidLength();
    if (free.isKnown() && solid.isKnown() && solid.value() >= free.value()) {
      faults.at(
          solid,
          "solid is no shorter than the "
              + SurveyFaults.written(free)
              + " that it measures standing free",
          "Are solid-length and free-length swapped? Exchange the two.");
    }
    rising(spring.curve());
  }

  private void rising(List<TestPoint> curve) {
    for (int i = 0; i < curve.size(); i++) {
      TestPoint here = curve.get(i);
      if (i == 0 && here.deflection().value() == 0) {
        if (here.force().value() != 0) {
          faults.at(
              here.force(),
              "at no deflection; a spring gives no force at its free length",
              "Was it preloaded on the tester? Count deflection from the free length.");
        }
      } else if (here.force().value() <= (i == 0 ? 0 : curve.get(i - 1).force().value())
          || (i > 0 && here.deflection().value() <= curve.get(i - 1).deflection().value())) {
        faults.at(
            here.force(),
            "at "
                + SurveyFaults.written(here.deflection())
                + " does not go on rising from the point before",
            "Write the points in order, from little load to much; was one row mistyped?");
      }
    }
  }

  /** A book spring must be pressed at book height, and not solid. */
  private void fits(Support support, Spring spring) {
    Quantity room = support.springLength();
    if (!room.isKnown() || spring.leaf()) {
      return;
    }
    if (spring.freeLength().isKnown() && room.value() >= spring.freeLength().value()) {
      faults.at(
          room,
          "leaves the book's spring "
              + spring.number()
              + " loose: it measures "
              + SurveyFaults.written(spring.freeLength())
              + " standing free",
          "Was it measured with the wheels hanging? Measure from seat to seat at book height, or"
              + " correct the spring's free length.");
    } else if (spring.solidLength().isKnown() && room.value() <= spring.solidLength().value()) {
      faults.at(
          room,
          "presses the book's spring "
              + spring.number()
              + " solid: it measures "
              + SurveyFaults.written(spring.solidLength())
              + " then",
          "Was it measured on the bump stop? Measure from seat to seat at book height, or correct"
              + " the spring's solid length.");
    }
  }

  private void fluid(Fluid fluid) {
    int before = faults.count();
    for (Quantity pressure : List.of(fluid.bookPressure(), fluid.from(), fluid.to())) {
      unit(pressure, fluid.preferred());
    }
    if (faults.count() > before) {
      return;
    }
    order(fluid.from(), fluid.preferred(), "is greater than the preferred pressure");
    order(fluid.preferred(), fluid.to(), "is greater than the greatest pressure");
    Quantity gas = fluid.gasPressure();
    Quantity book = fluid.bookPressure();
    if (gas.isKnown() && book.isKnown() && gas.value() >= book.value()) {
      faults.at(
          gas,
          "is no less than the book pressure of "
              + SurveyFaults.written(book)
              + ": no gas would ever move",
          "Are gas-pressure and book-pressure swapped? The charge is read with no load.");
    }
  }

  private void unit(Quantity pressure, Quantity preferred) {
    if (!pressure.isKnown() || !preferred.isKnown()) {
      return;
    }
    double times = pressure.value() / preferred.value();
    boolean large = near(times, PSI_IN_BAR);
    if (large || near(times, 1 / PSI_IN_BAR)) {
      faults.at(
          pressure,
          "is "
              + (large ? "about 14.5 times" : "about a fourteenth of")
              + " the preferred pressure, "
              + SurveyFaults.written(preferred),
          large
              ? "Is it in psi, written as bar? Write the unit it was read in."
              : "Is it in bar, written as psi? Write the unit it was read in.");
    }
  }

  private static boolean near(double times, double expected) {
    return times > expected / NEAR && times < expected * NEAR;
  }

  private void order(Quantity less, Quantity more, String what) {
    if (less.isKnown() && more.isKnown() && less.value() > more.value()) {
      faults.at(
          less,
          what + ", " + SurveyFaults.written(more),
          "Are the two swapped? Expected from, preferred and to in rising order.");
    }
  }
}
