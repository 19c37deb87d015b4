package trammel.schema;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;
import trammel.read.Words;

/**
 * What the source files say of records and their components, so that a schema says the same.
 * Identifiers appear as files write them.
 */
final class SourceComments {
  private static final Path SOURCES = Path.of("src/main/java");

  private final Map<String, String> sentences = new HashMap<>();
  private final Map<String, String> components = new HashMap<>();

  /** Reads every source file of the program. */
  SourceComments() {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null);
        Stream<Path> found = Files.walk(SOURCES)) {
      List<Path> sources = found.filter(file -> file.toString().endsWith(".java")).toList();
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, files, null, null, null, files.getJavaFileObjectsFromPaths(sources));
      DocTrees trees = DocTrees.instance(task);
      for (CompilationUnitTree unit : task.parse()) {
        if (unit.getPackage() != null) {
          new Collector(trees, unit.getPackageName().toString()).scan(unit, null);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private final class Collector extends TreePathScanner<@Nullable Void, @Nullable Void> {
    private final DocTrees trees;
    private String type;

    Collector(DocTrees trees, String packageName) {
      this.trees = trees;
      this.type = packageName;
    }

    @Override
    public @Nullable Void visitClass(ClassTree tree, @Nullable Void nothing) {
      String outer = type;
      boolean nested = getCurrentPath().getParentPath().getLeaf() instanceof ClassTree;
      type = outer + (nested ? "$" : ".") + tree.getSimpleName();
      note(type);
      super.visitClass(tree, null);
      type = outer;
      return null;
    }

    @Override
    public @Nullable Void visitMethod(MethodTree tree, @Nullable Void nothing) {
      if (tree.getName().contentEquals("parse")) {
        note(type + "#parse");
      }
      return null;
    }

    private void note(String name) {
      DocCommentTree comment = trees.getDocCommentTree(getCurrentPath());
      if (comment == null) {
        return;
      }
      sentences.put(name, text(comment.getFirstSentence()));
      for (DocTree tag : comment.getBlockTags()) {
        if (tag instanceof ParamTree param) {
          components.put(name + "#" + param.getName(), text(param.getDescription()));
        }
      }
    }
  }

  private static String text(List<? extends DocTree> trees) {
    return trees.stream()
        .map(SourceComments::text)
        .collect(Collectors.joining())
        .replaceAll("\\s+", " ")
        .strip();
  }

  private static String text(DocTree tree) {
    if (tree instanceof TextTree text) {
      return text.getBody();
    } else if (tree instanceof LiteralTree literal) {
      return asWritten(literal.getBody().getBody());
    } else if (tree instanceof LinkTree link) {
      String target = link.getReference().getSignature();
      return asWritten(target.substring(target.indexOf('#') + 1).replaceAll("\\(.*", ""));
    }
    return " ";
  }

  private static String asWritten(String code) {
    boolean identifier = code.matches("[a-z]+([A-Z][a-z]+)+|[A-Z]{2,}(_[A-Z]+)*");
    return identifier ? Words.kebab(code) : code;
  }

  /** The first sentence on a type; empty where there is none. */
  String of(Class<?> type) {
    return sentences.getOrDefault(type.getName(), "");
  }

  /** The first sentence on how a token is read; empty where there is none. */
  String ofParsing(Class<?> token) {
    return sentences.getOrDefault(token.getName() + "#parse", "");
  }

  /** What is said of a record's component; empty where nothing is. */
  String of(Class<?> type, String component) {
    return components.getOrDefault(type.getName() + "#" + component, "");
  }
}
