package trammel.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import trammel.build.Build;
import trammel.catalog.AlignmentSpec;
import trammel.catalog.Listing.FastenerNeed;
import trammel.catalog.Support.Fluid;
import trammel.quantity.Quantity;
import trammel.read.QuantityWriter;
import trammel.subject.Position;
import trammel.subject.Subject;

/** The settings, figures and fasteners that belong to a step of the work. */
final class StepNotes {
  private final Build build;
  private final List<Report.Item> findings;

  StepNotes(Build build, List<Report.Item> findings) {
    this.build = build;
    this.findings = findings;
  }

  /** What belongs to a step on the axles that call for it. */
  List<String> of(WorkStep step, List<AxleWork> called) {
    List<String> notes = new ArrayList<>(fasteners(step));
    switch (step) {
      case RELEASE_PRESSURE -> called.forEach(work -> pressure(work, notes));
      case TURN_TORSION_BARS, SET_HEIGHT -> called.forEach(work -> raised(work, notes));
      case PANHARD -> holes(notes);
      case TORQUE, TIGHTEN_AGAIN ->
          notes.add("Torque: the vehicle's or part's maker states it; no figure is given here.");
      case PRESSURES -> {
        called.forEach(work -> label(work, notes));
        said("tire.pressure-for-load", notes);
      }
      case ALIGNMENT -> {
        called.forEach(work -> windows(work, notes));
        said("steering.set-alignment", notes);
      }
      case SPEEDOMETER -> said("tire.meter-under-reads", notes);
      default -> {
        // Its text says all there is.
      }
    }
    return List.copyOf(notes);
  }

  /** What fastens the parts that the step fits, and whether it comes with them. */
  private List<String> fasteners(WorkStep step) {
    Set<String> notes = new LinkedHashSet<>();
    for (Build.Line line : build.lines()) {
      for (FastenerNeed need : line.part().listing().fasteners()) {
        if (step.fits(line.part())) {
          notes.add(
              line.part().number()
                  + ", each: "
                  + need.words(1)
                  + (need.supplied() ? ", supplied" : ", NOT supplied")
                  + (need.singleUse() ? "; tightened once only, never used again" : ""));
        }
      }
    }
    return List.copyOf(notes);
  }

  private static String axle(AxleWork work) {
    return Sentences.upperFirst(work.axle().toString());
  }

  private static void pressure(AxleWork work, List<String> notes) {
    Fluid fluid = work.profile().support().fluid();
    if (fluid != null && fluid.bookPressure().isKnown()) {
      notes.add(
          axle(work)
              + ": the book has "
              + QuantityWriter.both(fluid.bookPressure())
              + " in the rams with the vehicle standing.");
    }
  }

  private void raised(AxleWork work, List<String> notes) {
    for (Position position : Position.of(work.axle())) {
      Quantity more = build.raised().get(position);
      if (more != null) {
        notes.add(
            Subject.of(position).words()
                + ": "
                + QuantityWriter.both(more)
                + " over the height as found.");
      }
    }
  }

  private void holes(List<String> notes) {
    for (Build.Line line : build.lines()) {
      if (line.hole() != null) {
        notes.add(line.part().number() + ": hole " + line.hole() + ".");
      }
    }
  }

  private static void label(AxleWork work, List<String> notes) {
    Quantity placard = work.profile().placard();
    notes.add(
        axle(work)
            + ": the label at the door has "
            + (placard.isKnown() ? QuantityWriter.both(placard) : "a figure that is not known here")
            + " for the book's tires.");
  }

  private static void windows(AxleWork work, List<String> notes) {
    AlignmentSpec spec = work.profile().alignment();
    if (!spec.stated()) {
      notes.add(axle(work) + ": the maker's figures; they are not in this vehicle's profile.");
      return;
    }
    notes.add(
        axle(work)
            + ": camber "
            + window(spec.camber())
            + "; caster "
            + window(spec.caster())
            + "; toe of each wheel "
            + window(spec.toe())
            + ".");
  }

  private static String window(AlignmentSpec.Window window) {
    if (!window.from().isKnown() || !window.to().isKnown()) {
      return "as its maker states";
    }
    return Figures.text(window.from())
        + " to "
        + Figures.text(window.to())
        + (window.preferred().isKnown() ? ", best " + Figures.text(window.preferred()) : "");
  }

  /** What a rule has found about it, once for all places of which it says the same. */
  private void said(String rule, List<String> notes) {
    Set<String> said = new LinkedHashSet<>();
    findings.stream()
        .filter(item -> item.rule().equals(rule))
        .forEach(item -> said.add(item.where() + ": " + item.sentence()));
    notes.addAll(said);
  }
}
