package trammel.judge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.drools.model.Model;

/** The base book, as the build's rule compiler made it. */
final class BaseBook {
  static final String NAME = "base";

  /** Where the build's rule compiler writes the names of the model classes it made. */
  private static final String MODELS = "/META-INF/kie/trammel/trammel/drools-model";

  private BaseBook() {}

  /** Its models, made anew: the engine may change what it builds from. */
  static List<Model> models() {
    try (InputStream names = BaseBook.class.getResourceAsStream(MODELS)) {
      if (names == null) {
        throw new IllegalStateException("the program holds no compiled base book at " + MODELS);
      }
      List<Model> models = new ArrayList<>();
      List<String> lines =
          new String(names.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
      for (String line : lines.subList(1, lines.size())) {
        models.add(
            Class.forName(line.strip()).asSubclass(Model.class).getConstructor().newInstance());
      }
      return Collections.unmodifiableList(models);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("the compiled base book cannot be loaded", e);
    }
  }

  /** The rules of models, as they say of themselves. */
  static List<Rule> rules(List<? extends Model> models) {
    return models.stream()
        .flatMap(model -> model.getRules().stream())
        .map(compiled -> Rule.of(compiled, NAME))
        .toList();
  }
}
