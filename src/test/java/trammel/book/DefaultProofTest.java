package trammel.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.catalog.VehicleProfile;
import trammel.quantity.Absence;
import trammel.quantity.Dimension;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.Nested;
import trammel.read.Problem;

/** What proofreading says of defaults; what the demo's profiles give was read in them. */
class DefaultProofTest {
  private static final Catalog DEMO = CatalogFiles.read(Path.of("catalog-demo"));
  private static final LocalDate ON = LocalDate.of(2026, 11, 25);

  private static TestBook book(String name, String vehicles, String key, String value) {
    TestBook book =
        TestBook.shop(
            name,
            "defaults:\n  - value: "
                + key
                + "\n    is: "
                + value
                + "\n    because: seen so\n    source: our own\n");
    return vehicles.isEmpty()
        ? book
        : book.manifest("vocabulary", "vehicles: [" + vehicles + "]\nvocabulary");
  }

  private static Proof proof(TestBook... books) {
    return Proof.of(TestBook.read(books), DEMO, ON);
  }

  private static List<String> told(List<Problem> problems) {
    return problems.stream().map(Problem::toString).toList();
  }

  /** Each Stonecrop and Skerrow gives its stop's crush; none gives where its frame ends. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stonecrop | front.support.stop-crush | 18 mm ± 4 mm | given by the profile of stonecrop",
        "stonecrop | front.support.fluid.diameter | 30 mm ± 1 mm"
            + " | nothing to have such a value on stonecrop",
        "stonecrop | outline.frame-end-front | 500 mm ± 40 mm |",
        "stonecrop, skerrow | outline.frame-end-front | 500 mm ± 40 mm |",
      })
  void aDefaultThatNoneOfItsVehiclesWants(String vehicles, String key, String value, String why) {
    Proof proof = proof(book("seen", vehicles, key, value));
    assertThat(proof.wrong()).isEmpty();
    if (why == null) {
      assertThat(proof.doubtful()).isEmpty();
    } else {
      assertThat(told(proof.doubtful()))
          .singleElement()
          .asString()
          .startsWith(
              "seen/seen.rules.yaml:2:5: the default of " + key + " is never wanted: " + why);
    }
    assertThat(Proof.of(TestBook.read(book("seen", vehicles, key, value)), ON).doubtful())
        .isEmpty();
  }

  @Test
  void aVehicleThatTheCatalogDoesNotHave() {
    Proof proof = proof(book("seen", "stonecrob", "outline.frame-end-front", "500 mm ± 40 mm"));
    assertThat(told(proof.doubtful()))
        .singleElement()
        .asString()
        .contains("the book is for \"stonecrob\", which is no vehicle", "Did you mean stonecrop?");
  }

  /** Only where both may be in force for one vehicle, and assume otherwise. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stonecrop | stonecrop, skerrow | 510 mm ± 40 mm | 1",
        "'' | skerrow | 510 mm ± 40 mm | 1",
        "skerrow | '' | 500 mm ± 30 mm | 1",
        "stonecrop | stonecrop | 500 mm ± 40 mm | 0",
        "stonecrop | skerrow | 510 mm ± 40 mm | 0",
      })
  void twoBooksThatAssumeDifferentValuesForOneVehicle(
      String one, String other, String value, int wrong) {
    List<String> told =
        told(
            proof(
                    book("heard", one, "outline.frame-end-front", "500 mm ± 40 mm"),
                    book("seen", other, "outline.frame-end-front", value))
                .wrong());
    assertThat(told)
        .hasSize(wrong)
        .allSatisfy(
            each ->
                assertThat(each)
                    .startsWith("seen/seen.rules.yaml:2:5: outline.frame-end-front: book seen 1.2")
                    .contains(
                        "and book heard 1.2 (heard/seen.rules.yaml:2:5) assumes 500 ± 40 mm"));
  }

  /** At book height the damper would be longer than it is pulled out; a check refuses it too. */
  @ParameterizedTest
  @CsvSource({"900 mm ± 4 mm, 1", "490 mm ± 4 mm, 0"})
  void aDefaultThatAVehicleCannotHave(String value, int wrong) {
    String key = "front.support.damper.length";
    VehicleProfile stonecrop = DEMO.vehicle("stonecrop").orElseThrow();
    Quantity absent =
        Quantity.absent(
            Dimension.LENGTH, new Absence("length", "not measured", Instrument.TAPE, ""));
    Map<String, VehicleProfile> vehicles = new LinkedHashMap<>(DEMO.vehicles());
    vehicles.put("stonecrop", Nested.with(stonecrop, List.of(key.split("\\.")), absent));
    Catalog catalog = new Catalog(DEMO.name(), DEMO.currency(), vehicles, DEMO.parts());
    Proof proof =
        Proof.of(TestBook.read(book("seen", "stonecrop, skerrow", key, value)), catalog, ON);
    assertThat(proof.doubtful()).isEmpty();
    assertThat(told(proof.wrong()))
        .hasSize(wrong)
        .allSatisfy(
            each ->
                assertThat(each)
                    .startsWith("seen/seen.rules.yaml:2:5: " + key + ": assumes 900 ± 4 mm, which")
                    .contains("stonecrop cannot have: "));
  }
}
