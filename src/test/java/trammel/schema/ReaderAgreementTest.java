package trammel.schema;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.read.Binder;
import trammel.read.Problems;
import trammel.read.YamlReader;

/**
 * A schema and the reader are of one mind about a file. Each text begins with the schema's name and
 * a bar; {@code ;} stands for a line's end.
 */
class ReaderAgreementTest {
  private static boolean isRead(String schema, String text) {
    Problems problems = new Problems();
    Class<?> type = Objects.requireNonNull(SchemaFiles.READ.get(schema));
    YamlReader.parse(schema, text.getBytes(UTF_8), problems)
        .ifPresent(tree -> Binder.bind(type, tree, problems));
    return problems.count() == 0;
  }

  private static String schema(String sample) {
    return sample.substring(0, sample.indexOf('|')).strip();
  }

  private static String text(String sample) {
    return sample.substring(sample.indexOf('|') + 1).strip().replace("; ", "\n").replace(";", "\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "catalog | catalog: 2026; currency: USD",
        "catalog | catalog: A counter; currency: USD; source: its owner",
        "order   | order: 1187; vehicle: cairnback; lines: [{ part: A-1, quantity: 4, at: all }]",
        "order   | order: 1187; vehicle: cairnback; lines: [{ part: A-1, quantity: '4' }]",
        "order   | order: 1187; vehicle: cairnback; catalog:; lines:",
        "build   | build: b; vehicle: v; as-found: { no-contact: all }",
        "build   | build: b; vehicle: v; as-found: { weighed: { front: { value: 900 kg, by: guessed, note: by eye } } }",
        "build   | build: b; vehicle: v; as-found: { weighed: { front: 900 kg, source: a scale } }",
        "build   | build: b; vehicle: v; aims: { use: snow, chains: s }",
        "build   | build: b; vehicle: v; measurements: { heights: [{ at: front-left, height: 500 mm, state: book }] }",
        "measured| measured: m; on: 2026-11-20; heights: [{ at: front-left, height: 540 mm }]; alignment: [{ at: rear-left, adjusted: yes, camber: 1° }]",
        "measured| measured: m; on: 2026-11-20; pressures: [{ at: front-left, pressure: 8 MPa }]; gaps: [{ at: front-left:arch, gap: 9 mm, steer: straight, height: rest }]",
        "overlay | overlay: o; vehicle: v; on: 2026-11-20; springs: [{ at: front, motion-ratio: 0.7 ± 0.1 }]; alignment: [{ at: front-left, height: 540 mm, caster: 2° }]",
        "overlay | overlay: o; vehicle: v; on: 2026-11-20; gaps: [{ at: front-left:arch, gap: 9 mm, steer: straight, height: rest, with: [w, t], lifted: 20 mm }]",
        "parts   | family: f; parts: [{ kind: fastener, part: p, name: n, form: nut, thread: 1/2-20, closed: Yes, lock: true }]",
        "parts   | family: f; parts: [{ kind: wheel, part: p, name: n, size: 16x7J, bolt-pattern: 5x127, price: 109 }]",
        "parts   | family: f; parts: [{ kind: stud, part: p, name: n, thread: M12x1.5, contains: { q: 2 } }]"
      })
  void whatIsReadIsValid(String sample) {
    assertThat(isRead(schema(sample), text(sample))).as("read").isTrue();
    assertThat(Schemas.complaints(schema(sample), text(sample))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "catalog | catalog: A counter",
        "catalog | catalog: A counter; currency:",
        "catalog | catalog: [A counter]; currency: USD",
        "catalog | catalog: A counter; currency: USD; colour: blue",
        "order   | order: 1187; vehicle: cairnback; lines: [{ part: A-1, quantity: four }]",
        "order   | order: 1187; vehicle: cairnback; lines: { part: A-1, quantity: 4 }",
        "order   | order: 1187; vehicle: cairnback; lines: [{ part: A-1, quantity: 4, at: everywhere }]",
        "build   | build: b; vehicle: v; as-found: { weighed: { front: 900 } }",
        "build   | build: b; vehicle: v; as-found: { weighed: { front: 900 mm } }",
        "build   | build: b; vehicle: v; as-found: { weighed: { front: { by: guessed } } }",
        "build   | build: b; vehicle: v; as-found: { weighed: { front: { value: 900 kg, by: caliper } } }",
        "build   | build: b; vehicle: v; as-found: { weighed: { front: { value: 900 kg, who: me } } }",
        "build   | build: b; vehicle: v; measurements: { heights: [{ at: front-left, height: 500 mm }] }",
        "build   | build: b; vehicle: v; waivers: [{ finding: f, reason: r, decided-by: d, last-day: 25.11.2026 }]",
        "measured| measured: m; heights: [{ at: front-left, height: 540 mm }]",
        "measured| measured: m; on: 2026-11-20; gaps: [{ at: front-left:arch, gap: 9 mm, steer: straight }]",
        "overlay | overlay: o; vehicle: v; on: 2026-11-20; springs: [{ at: front-left, motion-ratio: 0.7 }]",
        "overlay | overlay: o; vehicle: v; on: 2026-11-20; alignment: [{ at: front-left, caster: 2° }]",
        "parts   | family: f; parts: [{ part: p, name: n }]",
        "parts   | family: f; parts: [{ kind: hovercraft, part: p, name: n }]",
        "parts   | family: f; parts: [{ kind: fastener, part: p, name: n, form: nut, thread: 1/2-20, closed: maybe }]",
        "parts   | family: f; parts: [{ kind: stud, part: p, name: n, thread: M12x1.5, offset: 3 mm }]",
        "parts   | family: f; parts: [{ kind: stud, part: p, name: n, thread: M12x1.5, contains: { q: two } }]",
        "parts   | family: f; parts: [{ kind: stud, name: n, thread: M12x1.5 }]"
      })
  void whatTheReaderRefusesIsNotValid(String sample) {
    assertThat(isRead(schema(sample), text(sample))).as("read").isFalse();
    assertThat(Schemas.complaints(schema(sample), text(sample))).isNotEmpty();
  }
}
