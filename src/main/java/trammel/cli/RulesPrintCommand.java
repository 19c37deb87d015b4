package trammel.cli;

import java.io.PrintWriter;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import trammel.book.Book;
import trammel.book.Books;
import trammel.judge.Judges;
import trammel.judge.Rule;
import trammel.report.RulesHtml;
import trammel.report.RulesMarkdown;

/** Prints every rule at hand. */
@Command(
    name = "print",
    header = "Print every rule of every book at hand as one page.",
    description = {"", "Example:  trammel rules print > rules.html", ""})
final class RulesPrintCommand implements Callable<Integer> {
  /** The forms it is given in. */
  enum Form {
    html,
    markdown
  }

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "html or markdown; html if not given.")
  private Form form = Form.html;

  @Mixin private BookOptions options = new BookOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    Books.Shelved read = options.read();
    BookOptions.tell(read.unread(), spec.commandLine().getErr());
    List<Book> books = read.books();
    try (Judges judges = Judges.of(books)) {
      Collection<Rule> rules = judges.rules();
      PrintWriter out = spec.commandLine().getOut();
      out.print(form == Form.html ? RulesHtml.of(rules, books) : RulesMarkdown.of(rules, books));
      out.flush();
      return ExitStatus.DONE;
    }
  }
}
