package trammel.build;

import java.util.stream.Collectors;
import trammel.quantity.Input;
import trammel.quantity.Quantity;
import trammel.read.QuantityWriter;

/**
 * An overlay as its file has it; what reads it gets every value back with its ±, and whose it is.
 */
final class OverlayText {
  private final StringBuilder text = new StringBuilder();

  private OverlayText() {}

  static String of(OverlayFile overlay) {
    OverlayText written = new OverlayText();
    written.write(overlay);
    return written.text.toString();
  }

  private void write(OverlayFile overlay) {
    line("overlay: " + quoted(overlay.overlay()));
    line("vehicle: " + quoted(overlay.vehicle()));
    if (overlay.sheet() != null) {
      line("sheet: " + quoted(overlay.sheet()));
    }
    if (overlay.measured() != null) {
      line("measured: " + quoted(overlay.measured()));
    }
    line("on: " + overlay.on());
    String from = overlay.measured() == null ? "" : " (" + overlay.measured() + ")";
    line("source: " + quoted(overlay.overlay() + ", " + overlay.on() + from));
    if (!overlay.springs().isEmpty()) {
      line("springs:");
      for (OverlayFile.SpringRatio spring : overlay.springs()) {
        line("  - at: " + spring.at());
        value("motion-ratio", spring.motionRatio());
      }
    }
    if (!overlay.alignment().isEmpty()) {
      line("alignment:");
      for (OverlayFile.Printout printout : overlay.alignment()) {
        line("  - at: " + printout.at());
        value("height", printout.height());
        value("camber", printout.angles().camber());
        value("caster", printout.angles().caster());
        value("toe", printout.angles().toe());
      }
    }
    if (!overlay.gaps().isEmpty()) {
      line("gaps:");
      for (OverlayFile.Gap gap : overlay.gaps()) {
        line("  - at: " + gap.at());
        line("    steer: " + key(gap.steer()));
        line("    height: " + key(gap.height()));
        line(
            gap.with().stream()
                .map(OverlayText::quoted)
                .collect(Collectors.joining(", ", "    with: [", "]")));
        value("gap", gap.gap());
        value("lifted", gap.lifted());
      }
    }
  }

  private void line(String line) {
    text.append(line).append('\n');
  }

  private void value(String key, Quantity quantity) {
    if (!quantity.isKnown()) {
      return;
    }
    Input input = quantity.input();
    line(
        "    "
            + key
            + ": { value: "
            + QuantityWriter.exact(quantity)
            + (input == null ? "" : ", by: " + input.instrument().fileName())
            + " }");
  }

  private static String key(Enum<?> choice) {
    return choice.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  /** A text in double quotes, as YAML and JSON have it. */
  private static String quoted(String words) {
    return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
