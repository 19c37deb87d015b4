package trammel.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trammel.book.StartingBook;
import trammel.read.Words;

/** Begins a book. */
@Command(
    name = "new",
    header = "Begin a book of your own: a manifest and a commented sheet.",
    description = {
      "Prints both, or writes them into a new folder; nothing is ever overwritten.",
      "",
      "Example:  trammel rules new skerrow --into skerrow-seen",
      ""
    })
final class RulesNewCommand implements Callable<Integer> {
  @Parameters(
      index = "0",
      paramLabel = "VEHICLE",
      description = "The vehicle it is for, as the catalog calls it.")
  private String vehicle = "";

  @Option(
      names = "--into",
      paramLabel = "FOLDER",
      description = "The folder to make; it must not be there yet.")
  private @Nullable Path folder;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    if (!vehicle.matches("[a-z][a-z0-9]*(-[a-z0-9]+)*")) {
      throw new Mistake(
          Words.quoted(vehicle) + " is no name of a vehicle; expected letters, digits, hyphens",
          "trammel catalog list vehicles shows them.");
    }
    PrintWriter out = spec.commandLine().getOut();
    Map<String, String> files = StartingBook.files(vehicle);
    if (folder == null) {
      files.forEach((name, text) -> out.print("# " + name + "\n" + text + "\n"));
    } else {
      write(files, folder);
      out.println("Wrote " + String.join(" and ", files.keySet()) + " into " + folder + ".");
      out.println("  trammel rules try " + folder + " tries its cases.");
    }
    out.flush();
    return ExitStatus.DONE;
  }

  private static void write(Map<String, String> files, Path folder) {
    try {
      Files.createDirectory(folder);
      for (Map.Entry<String, String> file : files.entrySet()) {
        Files.writeString(
            folder.resolve(file.getKey()), file.getValue(), StandardOpenOption.CREATE_NEW);
      }
    } catch (FileAlreadyExistsException e) {
      throw new Mistake(
          folder + " is there already; expected the name of a new folder",
          "Nothing was written. Take another name.");
    } catch (IOException e) {
      throw new UncheckedIOException(
          new IOException(folder + " cannot be written\n  Check that its parent folder is there."));
    }
  }
}
