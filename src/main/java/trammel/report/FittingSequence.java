package trammel.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import trammel.build.Build;
import trammel.catalog.Part;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Subject;

/** The work that a sheet calls for, in the order in which it is done. */
final class FittingSequence {
  /** Steps that are done once for the vehicle, whichever axle calls for them. */
  private static final Set<WorkStep> OF_WHOLE_VEHICLE =
      EnumSet.of(
          WorkStep.RECORD,
          WorkStep.HEIGHT_CONTROL_OFF,
          WorkStep.RAISE_BODY,
          WorkStep.LOOK_HANGING,
          WorkStep.HEIGHT_CONTROL_ON,
          WorkStep.SETTLE,
          WorkStep.TORQUE,
          WorkStep.BRAKE_TEST,
          WorkStep.ALIGNMENT,
          WorkStep.STEERING_ZERO,
          WorkStep.LAMPS,
          WorkStep.DRIVER_ASSISTANCE,
          WorkStep.SPEEDOMETER,
          WorkStep.BREATHERS_AND_CABLES,
          WorkStep.TIGHTEN_AGAIN);

  private final Build build;
  private final StepNotes notes;
  private final List<AxleWork> axles;

  private FittingSequence(Build build, List<Report.Item> findings) {
    this.build = build;
    this.notes = new StepNotes(build, findings);
    this.axles = Arrays.stream(Axle.values()).map(axle -> new AxleWork(build, axle)).toList();
  }

  /**
   * The work of a sheet.
   *
   * @param verdict what the sheet amounts to, which decides whether the work may be begun
   * @param findings what was found, for the settings that it names
   */
  static Report.Fitting of(Build build, Verdict verdict, List<Report.Item> findings) {
    String begin =
        switch (verdict) {
          case DOES_NOT_FIT -> "Not to be begun as proposed: what does not fit is settled first.";
          case NOT_PROVEN -> "Not to be begun before what is open has been settled.";
          case FITS_WITH_ADDITIONS -> "To be begun once what is to be added is there.";
          case FITS -> "Read it to its end before the first nut is loosened.";
        };
    return new Report.Fitting(begin, new FittingSequence(build, findings).steps());
  }

  private List<Report.Step> steps() {
    List<Report.Step> steps = new ArrayList<>();
    for (WorkStep step : WorkStep.values()) {
      List<AxleWork> called = axles.stream().filter(step::calledFor).toList();
      Set<String> off = new TreeSet<>();
      Set<String> on = new TreeSet<>();
      Set<Position> places = new LinkedHashSet<>();
      for (Position position : Position.values()) {
        boolean elsewhere =
            position.axle().isPresent()
                && called.stream().noneMatch(work -> work.axle() == position.axle().get());
        if (elsewhere) {
          continue;
        }
        List<Part> less = moved(position, step, true);
        List<Part> more = moved(position, step, false);
        less.forEach(part -> off.add(part.number()));
        more.forEach(part -> on.add(part.number()));
        if (!less.isEmpty() || !more.isEmpty()) {
          places.add(position);
        }
      }
      if (!called.isEmpty() || !on.isEmpty()) {
        steps.add(
            new Report.Step(
                steps.size() + 1,
                step.toString(),
                step.what(),
                where(step, called, places),
                List.copyOf(off),
                List.copyOf(on),
                step.state().toString(),
                step.by().toString(),
                step.caution(),
                notes.of(step, called)));
      }
    }
    return List.copyOf(steps);
  }

  private List<Part> moved(Position position, WorkStep step, boolean off) {
    List<Part> moved =
        off
            ? AxleWork.less(build.before(position), build.after(position))
            : AxleWork.less(build.after(position), build.before(position));
    return moved.stream().filter(step::fits).toList();
  }

  /** Where the parts go; where a step fits none, the axles it is done on. */
  private static String where(WorkStep step, List<AxleWork> called, Set<Position> places) {
    if (OF_WHOLE_VEHICLE.contains(step)) {
      return Subject.VEHICLE.words();
    }
    Set<Position> wheels = new TreeSet<>(places);
    called.forEach(work -> wheels.addAll(Position.of(work.axle())));
    return Places.words(wheels.stream().map(Subject::of).toList());
  }
}
