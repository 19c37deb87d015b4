package trammel.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.HERTZ;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.KILOMETRE_PER_HOUR;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.VOLT;
import static tech.units.indriya.unit.Units.WEEK;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.measure.IncommensurableException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import systems.uom.common.historic.CGS;
import systems.uom.common.historic.ObsoleteUnits;
import tech.units.indriya.AbstractUnit;

/** The factors, held against the units library Indriya with systems-common. */
class UnitTest {
  private static final double RELATIVE = 1e-12;

  private static final javax.measure.Unit<?> MILLIMETRE = METRE.divide(1000);
  private static final javax.measure.Unit<?> POUND_FORCE = Imperial.POUND_FORCE;

  private static final Map<Unit, javax.measure.Unit<?>> ORACLE =
      Map.ofEntries(
          Map.entry(Unit.MILLIMETER, MILLIMETRE),
          Map.entry(Unit.CENTIMETER, METRE.divide(100)),
          Map.entry(Unit.METER, METRE),
          Map.entry(Unit.INCH, USCustomary.INCH),
          Map.entry(Unit.FOOT, USCustomary.FOOT),
          Map.entry(Unit.DEGREE, USCustomary.DEGREE_ANGLE),
          Map.entry(Unit.MINUTE, USCustomary.MINUTE_ANGLE),
          Map.entry(Unit.KILOGRAM, KILOGRAM),
          Map.entry(Unit.POUND, USCustomary.POUND),
          Map.entry(Unit.TONNE, Imperial.METRIC_TON),
          Map.entry(Unit.NEWTON, NEWTON),
          Map.entry(Unit.KILONEWTON, NEWTON.multiply(1000)),
          Map.entry(Unit.POUND_FORCE, POUND_FORCE),
          Map.entry(Unit.KILOPASCAL, PASCAL.multiply(1000)),
          Map.entry(Unit.MEGAPASCAL, PASCAL.multiply(1_000_000)),
          // a barye is a millionth of a bar
          Map.entry(Unit.BAR, CGS.BARYE.multiply(1_000_000)),
          Map.entry(Unit.PSI, POUND_FORCE.divide(USCustomary.INCH.pow(2))),
          Map.entry(Unit.NEWTON_PER_MILLIMETER, NEWTON.divide(MILLIMETRE)),
          Map.entry(Unit.KILONEWTON_PER_METER, NEWTON.multiply(1000).divide(METRE)),
          Map.entry(Unit.POUND_FORCE_PER_INCH, POUND_FORCE.divide(USCustomary.INCH)),
          Map.entry(Unit.KILOMETER_PER_HOUR, KILOMETRE_PER_HOUR),
          Map.entry(Unit.MILE_PER_HOUR, USCustomary.MILE_PER_HOUR),
          Map.entry(Unit.NEWTON_METER, NEWTON.multiply(METRE)),
          Map.entry(Unit.POUND_FORCE_FOOT, POUND_FORCE.multiply(USCustomary.FOOT)),
          Map.entry(Unit.ONE, AbstractUnit.ONE),
          Map.entry(Unit.PERCENT, PERCENT),
          Map.entry(Unit.DAY, DAY),
          Map.entry(Unit.WEEK, WEEK),
          // the Julian year of 365.25 days
          Map.entry(Unit.YEAR, ObsoleteUnits.YEAR_JULIEN),
          Map.entry(Unit.LITER, LITRE),
          Map.entry(Unit.VOLT, VOLT),
          Map.entry(Unit.HERTZ, HERTZ),
          Map.entry(Unit.MILLIVOLT, VOLT.divide(1000)));

  private static double oracle(Unit from, Unit to) throws IncommensurableException {
    return ORACLE.get(from).getConverterToAny(ORACLE.get(to)).convert(1.0);
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void convertsToTheKeptUnitAsTheLibraryDoes(Unit unit) throws IncommensurableException {
    double expected = oracle(unit, unit.dimension().unit());
    assertThat(unit.toKept(1)).isCloseTo(expected, within(RELATIVE * expected));
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void convertsBack(Unit unit) {
    assertThat(unit.fromKept(unit.toKept(7.3))).isCloseTo(7.3, within(7.3 * RELATIVE));
  }

  /** NIST SP 811 (2008), appendix B.8: factors to seven digits. */
  @Test
  void agreesWithThePublishedFactors() {
    assertThat(Unit.PSI.toKept(1)).isCloseTo(6.894757, within(5e-7));
    assertThat(Unit.POUND_FORCE_PER_INCH.toKept(1)).isCloseTo(0.1751268, within(5e-8));
    assertThat(Unit.POUND_FORCE_FOOT.toKept(1)).isCloseTo(1.355818, within(5e-7));
    assertThat(Unit.POUND_FORCE.toKept(1)).isCloseTo(4.448222, within(5e-7));
    assertThat(Unit.MILE_PER_HOUR.toKept(1)).isEqualTo(1.609344);
    assertThat(Unit.POUND.toKept(1)).isEqualTo(0.45359237);
  }

  @Test
  void keepsEveryDimensionInAUnitOfFactorOne() {
    for (Dimension dimension : Dimension.values()) {
      assertThat(dimension.unit().dimension()).isEqualTo(dimension);
      assertThat(dimension.unit().toKept(1)).isEqualTo(1);
      dimension.second().ifPresent(u -> assertThat(u.dimension()).isEqualTo(dimension));
    }
  }

  @Test
  void everyNameLeadsBackToItsUnit() {
    for (Unit unit : Unit.values()) {
      assertThat(unit.names()).allSatisfy(name -> assertThat(Unit.named(name)).contains(unit));
    }
    assertThat(Unit.named("MM")).isEmpty();
    assertThat(EnumSet.allOf(Unit.class)).hasSameSizeAs(ORACLE.keySet());
  }

  @Test
  void listsTheNamesOfOneDimension() {
    assertThat(Unit.namesOf(Dimension.PRESSURE)).containsExactly("MPa", "bar", "kPa", "psi");
    Set<String> all = new TreeSet<>();
    Stream.of(Dimension.values()).map(Unit::namesOf).forEach(all::addAll);
    assertThat(Unit.allNames()).containsExactlyElementsOf(all);
  }
}
