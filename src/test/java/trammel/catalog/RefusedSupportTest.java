package trammel.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot carry an axle is refused where it stands, with the likely mistake. */
class RefusedSupportTest {
  private static final String SKERROW = "vehicles/skerrow.vehicle.yaml";
  private static final String COILS = "parts/coilmead-springs.parts.yaml";
  private static final String OWN = "parts/tarnholt-original.parts.yaml";

  @TempDir private Path folder;

  private List<String> refusal(String file, String old, String wrong) throws IOException {
    SpoiledCatalog catalog = new SpoiledCatalog(folder);
    catalog.spoil(file, text -> SpoiledCatalog.replaced(text, old, wrong));
    return catalog.refusal();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "book-pressure: 5.7 MPa | book-pressure: 57 psi | about a fourteenth of the preferred | in bar, written as psi?",
        "preferred: 6.1 MPa | preferred: 0.42 MPa | about 14.5 times the preferred | in psi, written as bar?",
        "from: 4.8 MPa | from: 7.4 MPa | is greater than the preferred pressure, 5700 kPa | swapped?",
        "to: 9.0 MPa~      gas-pressure: 2.5 MPa | to: 5.0 MPa~      gas-pressure: 2.5 MPa | is greater than the greatest pressure | swapped?",
        "gas-pressure: 2.5 MPa | gas-pressure: 6.5 MPa | no gas would ever move | swapped?",
        "spring-length: 276.5 mm | spring-length: 340 mm | leaves the book's spring TH-5101 loose | with the wheels hanging?",
        "spring-length: 276.5 mm | spring-length: 170 mm | presses the book's spring TH-5101 solid | on the bump stop?"
      })
  void aVehicleThatNothingCouldCarry(String old, String wrong, String what, String advice)
      throws IOException {
    List<String> said = refusal(SKERROW, line(old), line(wrong));
    assertThat(said.get(0)).startsWith(SKERROW + ":").contains(what);
    assertThat(said.get(1)).contains(advice);
  }

  /** A cell of the table; a tilde stands for the end of a line. */
  private static String line(String cell) {
    return cell.strip().replace("~", "\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "free-length: 334 mm~    solid-length: 182 mm | free-length: 182 mm~    solid-length: 334 mm | solid is no shorter than the 182 mm | swapped?",
        "rate: 106 N/mm | curve: [{ deflection: 50 mm, force: 4 kN }, { deflection: 90 mm, force: 3 kN }] | does not go on rising | in order",
        "rate: 106 N/mm | curve: [{ deflection: 0 mm, force: 1 kN }, { deflection: 90 mm, force: 3 kN }] | at no deflection | preloaded"
      })
  void aSpringThatCannotBe(String old, String wrong, String what, String advice)
      throws IOException {
    List<String> said = refusal(COILS, line(old), line(wrong));
    assertThat(said).hasSize(2);
    assertThat(said.get(0)).startsWith(COILS + ":").contains(what);
    assertThat(said.get(1)).contains(advice);
  }

  /** What nobody has stated is no fault. */
  @ParameterizedTest
  @ValueSource(
      strings = {"    free-length: 420 mm", "    solid-length: 112 mm", "    rate: 24 N/mm"})
  void whatIsNotStatedIsNoFault(String line) throws IOException {
    assertThat(refusal(OWN, line + "\n", "\n")).isEmpty();
  }
}
