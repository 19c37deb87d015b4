package trammel.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.build.BuildFiles;
import trammel.build.MeasuredFile;
import trammel.catalog.Catalog;
import trammel.catalog.CatalogFiles;
import trammel.catalog.ShaftProfile;
import trammel.derive.BeamPredictions;
import trammel.derive.Predictions;
import trammel.derive.ShaftPredictions;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.Place;
import trammel.subject.Axle;

/** Measured beam axles that are made from predictions: what they are then found to be. */
class BeamAgreementTest {
  private static final Path DEMO = Path.of("catalog-demo");
  private static final Catalog CATALOG = CatalogFiles.read(DEMO);
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final Place HERE = new Place("made-up", 1, 1);

  @TempDir private Path folder;

  private Predictions predictions(String vehicle, String changes) throws IOException {
    Path sheet =
        Files.writeString(
            folder.resolve("s.build.yaml"),
            "build: b\ncatalog: "
                + DEMO.toAbsolutePath()
                + "\nvehicle: "
                + vehicle
                + "\nchanges:\n"
                + changes);
    return Predictions.of(BuildFiles.read(sheet, CATALOG), DAY);
  }

  private Predictions inHole(String hole) throws IOException {
    return predictions(
        "skerrow",
        "  - { raise: 28 mm, at: rear }\n  - { add: LB-PK-SK, at: rear, hole: " + hole + " }\n");
  }

  private static Quantity reading(Quantity of) {
    Instrument by =
        of.dimension() == trammel.quantity.Dimension.LENGTH
            ? Instrument.TAPE
            : Instrument.ANGLE_FINDER;
    Input input = new Input("made-up", of.name(), 1, "made up", by);
    return of.isKnown()
        ? Quantity.read(of.name(), of.dimension(), of.value(), by.expanded(of.value()), input)
        : of;
  }

  /** A file that has everything as predicted. */
  private static MeasuredFile asForetold(Predictions predictions, Axle... axles) {
    List<MeasuredFile.BeamAxle> beams =
        List.of(axles).stream()
            .map(
                axle -> {
                  BeamPredictions beam = predictions.beam(axle);
                  return new MeasuredFile.BeamAxle(
                      HERE,
                      axle,
                      reading(beam.barSlope()),
                      reading(beam.shift()),
                      reading(beam.dragLinkSlope()),
                      reading(beam.lowerLinkSlope()),
                      reading(beam.upperLinkSlope()),
                      reading(beam.turn()));
                })
            .toList();
    List<MeasuredFile.PropShaft> shafts =
        predictions.build().vehicle().shafts().stream()
            .map(ShaftProfile::shaft)
            .map(
                name -> {
                  ShaftPredictions shaft = predictions.shaft(name);
                  return new MeasuredFile.PropShaft(
                      HERE,
                      name,
                      reading(shaft.pinionSlope()),
                      reading(shaft.gearboxJoint()),
                      reading(shaft.axleJoint()));
                })
            .toList();
    return of(beams, shafts);
  }

  private static MeasuredFile of(
      List<MeasuredFile.BeamAxle> axles, List<MeasuredFile.PropShaft> shafts) {
    return new MeasuredFile(
        HERE, "m", DAY, List.of(), List.of(), List.of(), List.of(), axles, shafts);
  }

  @ParameterizedTest
  @CsvSource({
    "skerrow, '{ raise: 28 mm, at: rear }', 11",
    "skerrow, '{ add: LB-PK-SK, at: rear, hole: upper }', 11",
    "stonecrop, '{ add: LS-SC-F40P, at: front }', 17",
    "stonecrop, '{ add: LS-SC-R70, at: rear }', 17",
  })
  void whatIsMeasuredAsForetoldDoesNotDeviate(String vehicle, String change, int values)
      throws IOException {
    Predictions predictions = predictions(vehicle, "  - " + change + "\n");
    Axle[] axles = vehicle.equals("skerrow") ? new Axle[] {Axle.REAR} : Axle.values();
    Agreement agreement = Agreement.of(asForetold(predictions, axles), predictions);
    assertThat(agreement.deviations())
        .hasSize(values)
        .allSatisfy(each -> assertThat(each.difference()).isZero());
    assertThat(agreement.agrees()).isTrue();
    assertThat(agreement.explanations()).isEmpty();
    assertThat(agreement.holes()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"upper, lower", "lower, upper"})
  void aBarInTheOtherHoleIsFound(String stated, String fitted) throws IOException {
    Agreement agreement = Agreement.of(asForetold(inHole(fitted), Axle.REAR), inHole(stated));
    assertThat(agreement.agrees()).isFalse();
    assertThat(agreement.deviations())
        .filteredOn(each -> !each.agrees())
        .extracting(each -> each.pair().kind())
        .contains(Kind.BAR_SLOPE)
        .isSubsetOf(Kind.BAR_SLOPE, Kind.AXLE_SHIFT);
    assertThat(agreement.holes())
        .singleElement()
        .satisfies(
            hole -> {
              assertThat(hole.axle()).isEqualTo(Axle.REAR);
              assertThat(hole.stated()).isEqualTo(stated);
              assertThat(hole.other()).isEqualTo(fitted);
              assertThat(hole.place().line()).isEqualTo(6);
            });
  }

  /** Another hole does not explain a pinion that points elsewhere too. */
  @Test
  void aHoleThatLeavesSomethingOpenIsNotNamed() throws IOException {
    MeasuredFile file = asForetold(inHole("lower"), Axle.REAR);
    MeasuredFile.PropShaft rear = file.shafts().get(1);
    Quantity slope = rear.pinionSlope();
    Quantity off =
        Quantity.read(slope.name(), slope.dimension(), slope.value() + 4, 0.5, slope.input());
    MeasuredFile more =
        of(
            file.axles(),
            List.of(
                new MeasuredFile.PropShaft(
                    HERE, rear.shaft(), off, rear.gearboxJoint(), rear.axleJoint())));
    Agreement agreement = Agreement.of(more, inHole("upper"));
    assertThat(agreement.agrees()).isFalse();
    assertThat(agreement.holes()).isEmpty();
  }

  /**
   * Thirty higher, where the lift may be off by 24: it explains bar and links together. Joints near
   * their least angle are left out, since what they change by is no straight line.
   */
  @Test
  void aLiftThatIsOffExplainsBarAndLinksTogether() throws IOException {
    Predictions stated = predictions("skerrow", "  - { raise: 28 mm ± 24 mm, at: rear }\n");
    Predictions fitted = predictions("skerrow", "  - { raise: 58 mm, at: rear }\n");
    MeasuredFile file = of(asForetold(fitted, Axle.REAR).axles(), List.of());
    Agreement agreement = Agreement.of(file, stated);
    assertThat(agreement.agrees()).isFalse();
    assertThat(agreement.explanations()).isNotEmpty();
    Explanation likeliest = agreement.explanations().get(0);
    assertThat(likeliest.input().name()).contains("lift");
    assertThat(likeliest.wanted()).isCloseTo(58, within(3.0));
  }
}
