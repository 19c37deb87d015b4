package trammel.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trammel.build.Build;
import trammel.derive.BeamMap;
import trammel.derive.WheelMap;
import trammel.derive.WheelMap.CurvePoint;
import trammel.derive.WheelMap.Drawing;
import trammel.derive.WheelMap.Lifts;
import trammel.derive.WheelMap.LockPoint;
import trammel.geometry.AngleWindow;
import trammel.quantity.Absence;
import trammel.quantity.Quantity;

/** The alignment map of a build as text, for the alignment shop. */
public final class AlignmentPage {
  private final Page page = new Page();

  private AlignmentPage() {}

  /** The map as text that ends with a line break. */
  public static String text(Build build, List<WheelMap> maps, List<BeamMap> beams, LocalDate on) {
    AlignmentPage page = new AlignmentPage();
    page.page.paragraph(
        "",
        "",
        build.title() + ": alignment of the " + build.vehicle().words() + " as proposed, " + on);
    if (maps.isEmpty() && beams.isEmpty()) {
      page.page.gap().paragraph("", "", "No wheel of it has a camber or caster to set.");
    }
    for (int i = 0; i < maps.size(); i++) {
      WheelMap map = maps.get(i);
      boolean alike = i + 1 < maps.size() && alike(map, maps.get(i + 1));
      page.wheel(map, alike ? maps.get(++i) : null);
    }
    beams.forEach(beam -> new BeamPage(page.page).beam(beam));
    Assumed.write(Assumed.of(build), page.page);
    page.page.gap().paragraph("", "", "A rack and a licensed mechanic have the last word.");
    return page.page.toString();
  }

  private static boolean alike(WheelMap one, WheelMap other) {
    return one.drawing() != null
        && other.drawing() != null
        && one.setting().equals(other.setting())
        && one.drawing().best().equals(other.drawing().best());
  }

  private void wheel(WheelMap map, @Nullable WheelMap other) {
    String name = Sentences.upperFirst(map.position().toString().replace('-', ' '));
    page.heading(
        (other == null
                ? name
                : name + " and " + other.position().toString().replace('-', ' ') + " alike")
            + ", known at "
            + map.depth()
            + " depth");
    page.gap();
    if (!map.camber().isKnown() && !map.caster().isKnown()) {
      page.paragraph(
          "  ",
          "    ",
          "Camber and caster cannot be foretold: "
              + missing(map.camber())
              + (map.known().isEmpty()
                  ? ". Two printouts at two heights would do, or surveyed hard points."
                  : "; " + map.known() + "."));
      return;
    }
    page.paragraph("  Best setting: ", "    ", map.setting() + ".");
    page.paragraph(
        "  There: ",
        "    ",
        "camber " + text(map.camber()) + ", caster " + text(map.caster()) + ".");
    boolean shortOf = negative(map.camberReserve()) || negative(map.casterReserve());
    page.paragraph(
        "  Reach into the windows: ",
        "    ",
        "camber "
            + text(map.camberReserve())
            + ", caster "
            + text(map.casterReserve())
            + (shortOf ? " (negative: short of them)." : "."));
    Drawing drawing = map.drawing();
    if (drawing == null) {
      page.paragraph(
          "  ",
          "  ",
          "No map: "
              + (map.known().isEmpty()
                  ? "it takes surveyed hard points and what the rack showed with them"
                  : map.known())
              + ".");
      return;
    }
    page.paragraph(
        "  Window: ",
        "    ",
        window("camber", drawing.camberWindow())
            + "; "
            + window("caster", drawing.casterWindow())
            + "; toe is set again.");
    page.paragraph("  ", "  ", lift(drawing.lifts()));
    page.gap();
    AlignmentChart.of(drawing).forEach(page::line);
    curve(drawing);
    lock(drawing);
  }

  private static String text(Quantity quantity) {
    return quantity.isKnown() ? Figures.text(quantity) : "not known";
  }

  private static boolean negative(Quantity quantity) {
    return quantity.isKnown() && quantity.value() < 0;
  }

  private static String missing(Quantity quantity) {
    Absence absence = quantity.absence();
    return absence == null ? "a value is missing" : absence.what() + ": " + absence.reason();
  }

  private static String window(String angle, AngleWindow window) {
    return String.format(
        Locale.ROOT,
        "%s %.2f° to %.2f°, preferred %.2f°",
        angle,
        window.from(),
        window.to(),
        window.preferred());
  }

  private static String lift(@Nullable Lifts lifts) {
    return lifts == null
        ? "With these parts no lift at all comes into both windows."
        : String.format(
            Locale.ROOT,
            "With these parts both windows are met at lifts from %.0f to %.0f mm over the surveyed "
                + "height, both axles raised alike.",
            Math.ceil(lifts.from()),
            Math.floor(lifts.to()));
  }

  private void curve(Drawing drawing) {
    if (drawing.curve().isEmpty()) {
      return;
    }
    page.heading("Over travel from the proposed height, straight ahead, at the best setting");
    page.gap();
    page.line("  travel camber caster inclin.  toe  scrub  trail   half  roll  motion ratios");
    page.line("      mm      °      °      °     °     mm     mm  track   mm   spr  dmp  sns");
    for (CurvePoint point : drawing.curve()) {
      page.line(
          String.format(
              Locale.ROOT,
              "  %6.0f %6.2f %6.2f %6.2f %5.2f %6.1f %6.1f %6.1f %5.0f  %s %s %s",
              zero(point.travel()),
              point.camber(),
              point.caster(),
              point.kingpinInclination(),
              zero(point.toe()),
              point.scrub(),
              point.trail(),
              zero(point.halfTrack()),
              point.rollCenter(),
              ratio(point.spring()),
              ratio(point.damper()),
              ratio(point.sensor())));
    }
  }

  private void lock(Drawing drawing) {
    if (drawing.lock().isEmpty()) {
      return;
    }
    page.heading("From lock to lock at the proposed height (left wheel; the right one mirrors it)");
    page.gap();
    page.line("  tie rod's inner   wheel turned   camber   trail");
    page.line("   end, + to left  + to the left        °      mm");
    for (LockPoint point : drawing.lock()) {
      page.line(
          String.format(
              Locale.ROOT,
              "  %15.1f  %12.1f°  %7.2f  %6.1f",
              zero(point.input()),
              zero(point.steer()),
              point.camber(),
              point.trail()));
    }
  }

  private static double zero(double value) {
    return Math.abs(value) < 0.005 ? 0 : value;
  }

  private static String ratio(@Nullable Double ratio) {
    return ratio == null ? "   –" : String.format(Locale.ROOT, "%.2f", ratio);
  }
}
