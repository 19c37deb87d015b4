package trammel.report;

import static org.assertj.core.api.Assertions.assertThat;
import static trammel.subject.Position.FRONT_LEFT;

import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import trammel.fact.Standing;

/** Reports as data. */
class JsonReportTest {
  private static final Report CONFLICT =
      new Sheet().report(Sheet.gap(FRONT_LEFT, Standing.WORSE_OR_NEW, -6.2, 3.4));

  @Test
  void theVerdictIsTheFirstFieldAndDatesAndNamesAreAsFilesHaveThem() {
    JsonNode json = new ObjectMapper().readTree(JsonReport.of(CONFLICT));
    assertThat(json.propertyNames()).startsWith("verdict", "decided-by", "law", "build");
    assertThat(json.path("verdict").asString()).isEqualTo("does not fit");
    assertThat(json.path("date").asString()).isEqualTo("2026-05-31");
    JsonNode finding = json.path("findings").path(0);
    assertThat(finding.path("safety-critical").asBoolean()).isFalse();
    assertThat(finding.path("margin").asDouble()).isEqualTo(-6.2);
  }

  @Test
  void ofSeveralTheWorstVerdictStandsAtTheTop() {
    Batch batch = Batch.of(List.of(new Sheet().report(), CONFLICT), List.of());
    JsonNode json = new ObjectMapper().readTree(JsonReport.of(batch));
    assertThat(json.propertyNames()).containsExactly("verdict", "reports", "unreadable");
    assertThat(json.path("verdict").asString()).isEqualTo("does not fit");
    assertThat(json.path("reports").size()).isEqualTo(2);
  }

  @Test
  void whereOneCannotBeReadThereIsNoVerdictOnTheWhole() {
    Batch batch =
        Batch.of(
            List.of(new Sheet().report()),
            List.of(new Batch.Refused("b.build.yaml", List.of("b.build.yaml:1:1: empty"))));
    JsonNode json = new ObjectMapper().readTree(JsonReport.of(batch));
    assertThat(json.path("verdict").asString()).isEqualTo("unreadable");
    assertThat(json.path("unreadable").path(0).path("file").asString()).isEqualTo("b.build.yaml");
  }
}
