package trammel.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** What every command that checks a sheet can be told. */
final class CheckOptions {
  @Option(
      names = "--on",
      paramLabel = "DATE",
      converter = Day.class,
      description = "The day to check for (2026-05-31); today if not given.")
  private @Nullable LocalDate on;

  @Option(
      names = "--catalog",
      paramLabel = "DIR",
      description = "The catalog's folder; else what the sheet names, else the nearest above it.")
  private @Nullable Path catalog;

  @Mixin private BookOptions books = new BookOptions();

  /** Begins. Books are read when the first sheet asks for them. */
  Checking start() {
    return new Checking(catalog, on(), books.shelf());
  }

  /** The day to check for. */
  LocalDate on() {
    return on == null ? LocalDate.now(ZoneId.systemDefault()) : on;
  }

  /** Reads a day as files write it. */
  static final class Day implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
      try {
        return LocalDate.parse(text);
      } catch (DateTimeParseException e) {
        throw new TypeConversionException(
            "'" + text + "' is no date; expected year-month-day, such as 2026-05-31");
      }
    }
  }
}
