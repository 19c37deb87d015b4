package trammel.report;

import java.util.List;
import java.util.Locale;
import trammel.compare.Deviation;

/**
 * One ruled axis for the values of one kind: how far each reading lies from its prediction, which
 * stands in the middle with its ± in brackets.
 */
final class RuledScale {
  /** Columns to either side of the middle. */
  private static final int HALF = 20;

  private static final int TICKS = 2;
  private final double end;

  private RuledScale(double end) {
    this.end = end;
  }

  /** The axis on which all of these have room: its end is 1, 2 or 5 times a power of ten. */
  static RuledScale of(List<Deviation> deviations) {
    double most = 0;
    for (Deviation deviation : deviations) {
      most =
          Math.max(
              most,
              Math.max(Math.abs(deviation.difference()), deviation.pair().predicted().expanded()));
    }
    double power = Math.pow(10, Math.floor(Math.log10(Math.max(most, 1e-3))));
    double end = power;
    for (double step : new double[] {1, 2, 5, 10}) {
      end = step * power;
      if (end >= most) {
        break;
      }
    }
    return new RuledScale(end);
  }

  /** The numbers over the axis, as wide as the axis. */
  String numbers() {
    StringBuilder numbers = new StringBuilder(" ".repeat(2 * HALF + 5));
    for (int tick = -TICKS; tick <= TICKS; tick++) {
      double value = end * tick / TICKS;
      String text = String.format(Locale.ROOT, tick > 0 ? "+%s" : "%s", plain(value));
      int at = HALF + tick * HALF / TICKS - text.length() / 2 + 2;
      numbers.replace(Math.max(0, at), Math.max(0, at) + text.length(), text);
    }
    return numbers.toString();
  }

  private static String plain(double value) {
    return value == 0
        ? "0"
        : java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** A value's line: {@code |....:...(.+..o.)...|}. */
  String line(Deviation deviation) {
    StringBuilder line = new StringBuilder("|" + ".".repeat(2 * HALF + 1) + "|");
    for (int tick = -TICKS + 1; tick < TICKS; tick++) {
      line.setCharAt(1 + HALF + tick * HALF / TICKS, ':');
    }
    double band = deviation.pair().predicted().expanded();
    line.setCharAt(column(-band), '(');
    line.setCharAt(column(band), ')');
    line.setCharAt(column(0), '+');
    line.setCharAt(column(deviation.difference()), 'o');
    return line.toString();
  }

  private int column(double difference) {
    return 1 + HALF + (int) Math.round(difference / end * HALF);
  }
}
