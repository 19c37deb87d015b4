package trammel.report;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trammel.catalog.AlignmentSpec.Window;
import trammel.derive.BarMap;
import trammel.derive.BeamMap;
import trammel.derive.BeamMap.Caster;
import trammel.derive.BeamMap.Steering;
import trammel.derive.BeamPoint;
import trammel.quantity.Absence;
import trammel.quantity.Quantity;
import trammel.subject.Axle;

/** A beam axle as found and as proposed, side by side. */
final class BeamPage {
  private static final String NOT_KNOWN = "not known";

  private final Page page;
  private final Map<String, Absence> missing = new LinkedHashMap<>();

  BeamPage(Page page) {
    this.page = page;
  }

  /** Adds an axle. */
  void beam(BeamMap beam) {
    page.heading(Sentences.upperFirst(beam.axle().toString()) + " beam axle");
    page.gap();
    row("", "as found", "as proposed");
    row("frame raised over it by", beam.raisedFound(), beam.raisedProposed());
    BarMap bar = beam.bar();
    if (bar != null) {
      bar(bar);
    }
    row("axle turned, nose up", beam.found().noseUp(), beam.proposed().noseUp());
    row("wheels moved forward", beam.found().forward(), beam.proposed().forward());
    Caster caster = beam.caster();
    if (caster != null) {
      row("caster", caster.found(), caster.proposed());
    }
    Steering steering = beam.steering();
    if (steering != null) {
      steering(steering);
    }
    notes(beam);
    if (caster != null) {
      caster(caster);
    }
    missing();
    if (bar != null) {
      new BracketTables(page).of(bar);
    }
    curve(beam);
  }

  private void bar(BarMap bar) {
    BarMap.State found = bar.found();
    BarMap.State proposed = bar.proposed();
    if (!found.isKnown() && !proposed.isKnown()) {
      row("panhard bar", found.slope(), proposed.slope());
      return;
    }
    row("panhard bar's slope", found.slope(), proposed.slope());
    row("  up at its", ends(found), ends(proposed));
    row("axle off the middle", found.shift(), proposed.shift());
    row("  toward the", side(found), side(proposed));
    row("moves left over travel", found.left(), proposed.left());
    row("moves right over travel", found.right(), proposed.right());
    row("roll center over ground", found.rollCenter(), proposed.rollCenter());
    for (BarMap.Room room : proposed.rooms()) {
      row(
          "bar to " + room.obstacle(),
          found.rooms().stream()
              .filter(other -> other.obstacle().equals(room.obstacle()))
              .findFirst()
              .map(other -> cell(other.gap()))
              .orElse(NOT_KNOWN),
          cell(room.gap()));
    }
  }

  private static String ends(BarMap.State state) {
    return state.higher().isEmpty() ? NOT_KNOWN : state.higher();
  }

  private static String side(BarMap.State state) {
    boolean none = state.shift().isKnown() && state.shift().value() == 0;
    return none ? "–" : state.toward().isEmpty() ? NOT_KNOWN : state.toward();
  }

  private void steering(Steering steering) {
    if (!steering.apartFound().isKnown() && !steering.apartProposed().isKnown()) {
      row("drag link and bar apart", steering.apartFound(), steering.apartProposed());
      return;
    }
    row("drag link's slope", steering.linkFound(), steering.linkProposed());
    row("  up at its", risesTo(steering.linkFound()), risesTo(steering.linkProposed()));
    row("drag link and bar apart", steering.apartFound(), steering.apartProposed());
    row("bump steer over 25 mm", steering.bumpSteerFound(), steering.bumpSteerProposed());
  }

  private static String risesTo(Quantity slope) {
    return !slope.isKnown() ? NOT_KNOWN : slope.value() < 0 ? "right end" : "left end";
  }

  private void notes(BeamMap beam) {
    page.gap();
    BarMap bar = beam.bar();
    if (bar != null && bar.proposed().isKnown()) {
      page.paragraph(
          "  ",
          "  ",
          "Off the middle: from where the axle stood as surveyed. Over travel: from where it "
              + "rests, between full droop and bump.");
    }
    if (beam.proposed().forward().isKnown()) {
      page.paragraph(
          "  ",
          "  ",
          "Nose is the pinion's. A minus means the other way. Forward "
              + (beam.axle() == Axle.FRONT ? "lengthens" : "shortens")
              + " the wheelbase.");
    }
  }

  private void caster(Caster caster) {
    page.paragraph(
        "  Window: ",
        "    ",
        "caster " + window(caster.window()) + "; nothing can be set on a beam.");
    boolean shortOf = Stream.of(caster.reserve(), caster.camberReserve()).anyMatch(BeamPage::below);
    page.paragraph(
        "  Reach into the windows: ",
        "    ",
        "camber "
            + cell(caster.camberReserve())
            + ", as it was; caster "
            + cell(caster.reserve())
            + (shortOf ? " (negative: outside)." : "."));
  }

  private static boolean below(Quantity quantity) {
    return quantity.isKnown() && quantity.value() < 0;
  }

  private static String window(Window window) {
    return edge(window.from())
        + " to "
        + edge(window.to())
        + (window.preferred().isKnown() ? ", preferred " + edge(window.preferred()) : "");
  }

  private static String edge(Quantity edge) {
    return edge.isKnown() ? String.format(Locale.ROOT, "%.2f°", edge.value()) : NOT_KNOWN;
  }

  private void missing() {
    for (Absence absence : missing.values()) {
      page.paragraph(
          "  Not known: ",
          "    ",
          absence.what()
              + " ("
              + absence.reason()
              + "). "
              + Sentences.upperFirst(absence.how())
              + ".");
    }
  }

  private void row(String label, Quantity found, Quantity proposed) {
    Set<Absence> behind = new LinkedHashSet<>(Absences.behind(found));
    behind.addAll(Absences.behind(proposed));
    behind.forEach(absence -> missing.putIfAbsent(absence.what() + absence.how(), absence));
    row(label, cell(found), cell(proposed));
  }

  private void row(String label, String found, String proposed) {
    String name = label;
    if (label.length() > 24) {
      page.line("  " + label);
      name = "";
    }
    page.line(String.format(Locale.ROOT, "  %-24s  %-25s  %s", name, found, proposed));
  }

  private static String cell(Quantity quantity) {
    return quantity.isKnown() ? Figures.text(quantity) : NOT_KNOWN;
  }

  private void curve(BeamMap beam) {
    if (beam.curve().isEmpty()) {
      return;
    }
    page.heading(
        "The "
            + beam.axle()
            + " axle over travel from the proposed height, as set there"
            + (beam.steering() == null ? "" : ", straight ahead"));
    page.gap();
    boolean caster = has(beam, BeamPoint::caster);
    boolean steer = has(beam, BeamPoint::steer);
    page.line(
        "  travel  off middle    bar's    roll    nose  wheels"
            + (caster ? "  caster" : "")
            + (steer ? "   steer" : ""));
    page.line(
        "      up   + to left    slope  center      up  forward"
            + (caster ? "        " : "")
            + (steer ? "  + left" : ""));
    page.line(
        "      mm          mm        °      mm       °      mm"
            + (caster ? "       °" : "")
            + (steer ? "       °" : ""));
    for (BeamPoint point : beam.curve()) {
      page.line(
          String.format(Locale.ROOT, "  %6.0f", zero(point.travel()))
              + number("%12.1f", point.shift())
              + number("%9.2f", point.barSlope())
              + number("%8.0f", point.rollCenter())
              + number("%8.2f", point.noseUp())
              + number("%8.1f", point.forward())
              + (caster ? number("%8.2f", point.caster()) : "")
              + (steer ? number("%8.2f", point.steer()) : ""));
    }
  }

  private static boolean has(BeamMap beam, Function<BeamPoint, @Nullable Double> value) {
    return beam.curve().stream().map(value).anyMatch(Objects::nonNull);
  }

  private static String number(String format, @Nullable Double value) {
    String text = String.format(Locale.ROOT, format, value == null ? 0 : zero(value));
    return value == null ? " ".repeat(text.length() - 1) + "–" : text;
  }

  private static double zero(double value) {
    return Math.abs(value) < 0.005 ? 0 : value;
  }
}
