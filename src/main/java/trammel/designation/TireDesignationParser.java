package trammel.designation;

import static java.util.Objects.requireNonNull;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import trammel.designation.TireDesignation.Prefix;
import trammel.designation.TireDesignation.Suffix;

/** Reads one tire designation from left to right. */
final class TireDesignationParser {
  private static final Pattern PREFIX = Pattern.compile("(?<prefix>HL|LT|ST|P|T|S)(?= ?\\d)");
  private static final Pattern FLOTATION =
      Pattern.compile("(?<diameter>\\d{2}(?:\\.\\d{1,2})?) ?X ?(?<width>\\d{1,2}(?:\\.\\d{1,2})?)");
  private static final Pattern METRIC =
      Pattern.compile("(?<width>\\d{3})(?: ?/ ?(?<aspect>\\d{2,3}))?(?![\\d.])");
  private static final Pattern NUMERIC =
      Pattern.compile("(?<width>\\d{1,2}(?:\\.\\d{1,2})?)(?![\\d.])");
  private static final Pattern RIM = Pattern.compile("(?<rim>\\d{2}(?:\\.\\d)?)(?![\\d.])");

  private static final Pattern LT = Pattern.compile("LT(?![A-Z])");
  private static final Pattern LONE_C = Pattern.compile("C(?![A-Z0-9])");
  private static final Pattern SLASHED_RANGE = Pattern.compile("/ ?(?<range>[A-Z])(?![A-Z0-9])");
  private static final Pattern RANGE =
      Pattern.compile("(?:LOAD RANGE|LR)? ?(?<range>[A-HJLMN])(?![A-Z0-9+&./])");
  private static final Pattern PLY = Pattern.compile("(?<range>\\d{1,2} ?(?:PR|PLY))(?![A-Z])");
  private static final Pattern LOAD_CLASS =
      Pattern.compile(
          "(?<class>XL|EXTRA LOAD|RF|REINFORCED|SL|STANDARD LOAD|LL|LIGHT LOAD)(?![A-Z])");
  private static final Pattern MARK =
      Pattern.compile("(?<mark>3PMSF|TL|TUBELESS|TT|TUBE TYPE|M ?[+&./]? ?S|POR)(?![A-Z0-9])");
  private static final String INDICES = "(?<single>\\d{1,3})(?: ?/ ?(?<dual>\\d{1,3}))?(?!\\d)";
  private static final Pattern BRACKETED =
      Pattern.compile("\\( ?" + INDICES + "(?: ?(?<speed>[A-Z]))? ?\\)");
  private static final Pattern SERVICE =
      Pattern.compile(INDICES + "(?: ?(?<speed>[A-Z])(?![A-Z0-9+&./]))?");

  /** What a letter after the load index may be when it is no speed symbol. */
  private static final Set<String> RANGES_BELOW_SYMBOLS = Set.of("A", "B", "C", "D", "E");

  private final Cursor cursor;
  private Prefix prefix = Prefix.NONE;
  private Suffix suffix = Suffix.NONE;
  private @Nullable LoadClass loadClass;
  private @Nullable LoadRange loadRange;
  private @Nullable ServiceDescription service;
  private final Set<Mark> marks = EnumSet.noneOf(Mark.class);

  private TireDesignationParser(String plain) {
    this.cursor = new Cursor(plain);
  }

  static TireDesignation parse(String text) {
    try {
      return new TireDesignationParser(Lettering.plain(text)).read();
    } catch (IllegalArgumentException refused) {
      throw new IllegalArgumentException(
          "tire " + Unreadable.quoted(text.strip()) + ": " + refused.getMessage(), refused);
    }
  }

  private TireDesignation read() {
    if (cursor.take(PREFIX)) {
      prefix = Prefix.valueOf(taken("prefix"));
    }
    TireSize size = size();
    if (!cursor.take(Construction.PATTERN)) {
      throw Unreadable.found(
          cursor.found() + " behind the size " + size,
          "a construction letter and a rim code (R17, D15, -16)",
          "Write the size as stamped, for example 265/70R17, 33x12.50R15LT or 7.50R16");
    }
    String speedLetter = cursor.part("speed");
    boolean z = "Z".equals(speedLetter);
    Construction construction = Construction.parse((z ? "Z" : "") + taken("construction"));
    Optional<SpeedSymbol> speedInSize =
        z ? Optional.empty() : Optional.ofNullable(speedLetter).map(SpeedSymbol::parse);
    if (!cursor.take(RIM)) {
      throw Unreadable.found(
          cursor.found() + " behind the construction letter",
          "a rim code such as 17 or 17.5",
          "Write the rim diameter in inches as stamped");
    }
    RimCode rim = RimCode.parse(taken("rim"));
    if (prefix == Prefix.LT && !(size instanceof TireSize.Metric)) {
      // Inch sizes carry LT behind; written before, it says the same.
      prefix = Prefix.NONE;
      suffix = Suffix.LT;
    }
    directlyBehindRim(size);
    while (!cursor.atEnd()) {
      item();
    }
    return new TireDesignation(
        prefix,
        size,
        construction,
        speedInSize,
        rim,
        suffix,
        Optional.ofNullable(loadClass),
        Optional.ofNullable(loadRange),
        Optional.ofNullable(service),
        marks);
  }

  private TireSize size() {
    if (cursor.take(FLOTATION)) {
      return new TireSize.Flotation(number("diameter"), number("width"));
    }
    if (cursor.take(METRIC)) {
      String aspect = cursor.part("aspect");
      return new TireSize.Metric(
          (int) number("width"),
          aspect == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(aspect)));
    }
    if (cursor.take(NUMERIC)) {
      return new TireSize.Numeric(number("width"));
    }
    throw Unreadable.found(
        cursor.found(),
        "a size: width/aspect in mm (265/70), diameter x width in inches (33x12.50) or a width in"
            + " inches (7.50)",
        "Write the size as stamped, for example 265/70R17, 33x12.50R15LT or 7.50R16");
  }

  /** Here, and only here, C may be the mark of a commercial tire. */
  private void directlyBehindRim(TireSize size) {
    if (cursor.take(LT)) {
      if (suffix == Suffix.LT) {
        throw twice("LT");
      }
      suffix = Suffix.LT;
    }
    boolean rangeC =
        suffix == Suffix.LT
            || prefix == Prefix.LT
            || prefix == Prefix.ST
            || size instanceof TireSize.Flotation;
    if (!rangeC && cursor.take(LONE_C)) {
      suffix = Suffix.C;
    } else if (cursor.take(SLASHED_RANGE)) {
      range(taken("range"));
    }
  }

  private void item() {
    if (cursor.take(MARK)) {
      if (!marks.add(Mark.parse(taken("mark")))) {
        throw twice("the mark " + taken("mark"));
      }
    } else if (cursor.take(PLY)) {
      range(taken("range"));
    } else if (cursor.take(BRACKETED)) {
      service(true);
    } else if (cursor.take(LOAD_CLASS)) {
      loadClass(LoadClass.parse(taken("class")));
    } else if (cursor.take(RANGE)) {
      range(taken("range"));
    } else if (cursor.take(SERVICE)) {
      service(false);
    } else {
      throw Unreadable.found(
          cursor.found(),
          "a load index with speed symbol (121/118S), a load class (XL), a load range (LR E, 10PR)"
              + " or a mark (TL, TT, M+S, 3PMSF, POR)",
          "Leave out what is not part of the designation");
    }
  }

  private void range(String text) {
    LoadRange read = LoadRange.parse(text);
    if (loadRange != null && loadRange != read) {
      throw Unreadable.found(
          "load ranges " + loadRange + " and " + read, "one", "Read the sidewall again");
    }
    loadRange = read;
  }

  private void loadClass(LoadClass read) {
    if (loadClass != null && loadClass != read) {
      throw Unreadable.found(
          "load classes " + loadClass + " and " + read, "one", "Read the sidewall again");
    }
    loadClass = read;
  }

  private void service(boolean bracketed) {
    if (service != null) {
      throw twice("a service description");
    }
    String dual = cursor.part("dual");
    String letter = cursor.part("speed");
    LoadIndex single = LoadIndex.parse(taken("single"));
    Optional<SpeedSymbol> speed = Optional.empty();
    if (letter != null && RANGES_BELOW_SYMBOLS.contains(letter)) {
      range(letter);
    } else if (letter != null) {
      speed = Optional.of(SpeedSymbol.parse(letter));
    }
    service =
        new ServiceDescription(
            single, Optional.ofNullable(dual).map(LoadIndex::parse), speed, bracketed);
  }

  private static IllegalArgumentException twice(String what) {
    return Unreadable.found(what + " twice", "it once", "Write one designation at a time");
  }

  private double number(String part) {
    return Double.parseDouble(taken(part));
  }

  private String taken(String part) {
    return requireNonNull(cursor.part(part));
  }
}
