package trammel.designation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import trammel.designation.TireDesignation.Prefix;
import trammel.designation.TireDesignation.Suffix;

/** What the grammars print, they read back as the same value, however it is spelled. */
@PropertyDefaults(edgeCases = EdgeCasesMode.NONE)
class RoundTripTest {

  @Property(tries = 1000)
  void aTireReadsBack(@ForAll("tires") TireDesignation tire) {
    assertThat(TireDesignation.parse(tire.toString())).isEqualTo(tire);
  }

  @Property(tries = 500)
  void aTireReadsBackHoweverItIsSpelled(
      @ForAll("tires") TireDesignation tire, @ForAll boolean small, @ForAll boolean spread) {
    String text = tire.toString();
    if (spread) {
      text = text.replace("/", " / ").replaceFirst("(?<=\\d)(ZR|RF|R|D|B|-)(?=\\d\\d)", "  $1 ");
    }
    if (small) {
      text = text.toLowerCase(Locale.ROOT).replace('.', ',').replace('x', '×');
    }
    assertThat(TireDesignation.parse(text)).isEqualTo(tire);
  }

  @Provide
  Arbitrary<TireDesignation> tires() {
    return Combinators.combine(
            Arbitraries.of(Prefix.class),
            Arbitraries.oneOf(metric(), flotation(), numeric()),
            Arbitraries.of(Construction.class),
            Arbitraries.of(SpeedSymbol.S, SpeedSymbol.H, SpeedSymbol.V).optional(0.2),
            Arbitraries.of(RimCode.validCodes()),
            Arbitraries.of(Suffix.class),
            Combinators.combine(
                    Arbitraries.of(LoadClass.class).optional(),
                    Arbitraries.of(LoadRange.class).optional())
                .as(Load::new),
            service().optional(0.8))
        .flatAs(
            (prefix, size, construction, inSize, rim, suffix, load, service) ->
                Arbitraries.of(Mark.class)
                    .set()
                    .ofMaxSize(3)
                    .map(
                        marks ->
                            tried(
                                prefix,
                                size,
                                construction,
                                inSize,
                                rim,
                                suffix,
                                load,
                                service,
                                marks)))
        .filter(Optional::isPresent)
        .map(Optional::get);
  }

  private record Load(Optional<LoadClass> loadClass, Optional<LoadRange> range) {}

  /** The record refuses what contradicts itself; such draws are thrown away. */
  private static Optional<TireDesignation> tried(
      Prefix prefix,
      TireSize size,
      Construction construction,
      Optional<SpeedSymbol> inSize,
      RimCode rim,
      Suffix suffix,
      Load load,
      Optional<ServiceDescription> service,
      Set<Mark> marks) {
    try {
      return Optional.of(
          new TireDesignation(
              prefix,
              size,
              construction,
              inSize,
              rim,
              suffix,
              load.loadClass(),
              load.range(),
              service,
              marks));
    } catch (IllegalArgumentException contradiction) {
      return Optional.empty();
    }
  }

  private static Arbitrary<TireSize> metric() {
    return Combinators.combine(
            Arbitraries.integers().between(125, 395), Arbitraries.integers().between(24, 100))
        .as(
            (width, aspect) ->
                new TireSize.Metric(
                    width, aspect == 24 ? OptionalInt.empty() : OptionalInt.of(aspect)));
  }

  private static Arbitrary<TireSize> flotation() {
    return Combinators.combine(
            Arbitraries.integers().between(54, 80), Arbitraries.integers().between(20, 52))
        .as((halves, quarters) -> new TireSize.Flotation(halves / 2.0, quarters / 4.0));
  }

  private static Arbitrary<TireSize> numeric() {
    return Arbitraries.integers()
        .between(300, 1400)
        .map(hundredths -> new TireSize.Numeric(hundredths / 100.0));
  }

  private static Arbitrary<ServiceDescription> service() {
    return Combinators.combine(
            Arbitraries.integers().between(60, 150),
            Arbitraries.integers().between(0, 5).optional(),
            Arbitraries.of(SpeedSymbol.class).optional(0.9),
            Arbitraries.of(true, false))
        .as(
            (single, less, speed, bracketed) ->
                new ServiceDescription(
                    new LoadIndex(single),
                    less.map(l -> new LoadIndex(single - l)),
                    speed,
                    bracketed));
  }

  @Property
  void aBoltPatternReadsBack(@ForAll("counts") int count, @ForAll("hundredths") int hundredths) {
    BoltPattern pattern = new BoltPattern(count, hundredths / 100.0);
    assertThat(BoltPattern.parse(pattern.toString())).isEqualTo(pattern);
    assertThat(BoltPattern.parse(pattern + " mm")).isEqualTo(pattern);
    assertThat(pattern.nearMiss(pattern)).isFalse();
    assertThat(pattern.matches(pattern)).isTrue();
  }

  @Provide
  Arbitrary<Integer> counts() {
    return Arbitraries.integers().between(3, 10);
  }

  @Provide
  Arbitrary<Integer> hundredths() {
    return Arbitraries.integers().between(6000, 40000);
  }

  @Property
  void anInchThreadReadsBack(@ForAll("tops") int sixteenths, @ForAll("turns") int turns) {
    ThreadSize thread =
        new ThreadSize(ThreadSize.Series.INCH, sixteenths / 16.0 * 25.4, 25.4 / turns);
    assertThat(ThreadSize.parse(thread.toString())).isEqualTo(thread);
  }

  @Provide
  Arbitrary<Integer> tops() {
    return Arbitraries.integers().between(5, 15);
  }

  @Provide
  Arbitrary<Integer> turns() {
    return Arbitraries.integers().between(8, 32);
  }

  @Property
  void aRimReadsBackInEitherOrder(@ForAll("codes") RimCode code, @ForAll("quarters") int quarters) {
    RimSize rim = new RimSize(code, quarters / 4.0, Optional.of("J"));
    assertThat(RimSize.parse(rim.toString())).isEqualTo(rim);
    assertThat(RimSize.parse(quarters / 4.0 + "J x " + code)).isEqualTo(rim);
  }

  @Provide
  Arbitrary<RimCode> codes() {
    return Arbitraries.of(RimCode.validCodes());
  }

  @Provide
  Arbitrary<Integer> quarters() {
    return Arbitraries.integers().between(12, 39);
  }
}
