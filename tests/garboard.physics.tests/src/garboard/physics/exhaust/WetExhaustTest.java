// SPDX-License-Identifier: EPL-2.0
package garboard.physics.exhaust;

import static garboard.physics.PrintedQuantity.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.physics.pipe.PipeRun;
import garboard.physics.pipe.SeaWater;
import garboard.quantity.Density;
import garboard.quantity.Length;
import garboard.quantity.MassFlow;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.RotationalSpeed;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

class WetExhaustTest {

    private static final Density SEA = SeaWater.CUSTOMARY_DENSITY;
    private static final MassFlow GAS = BackPressureTest.DIESEL.exhaustFlow();
    /** The worked example: dry and wet section of the diesel set, muffler 1.5 kPa, lift 0.90 m. */
    private static final WetExhaust EXAMPLE = WetExhaust.ofDry(BackPressureTest.DRY).withWet(BackPressureTest.WET)
        .withSilencers(PressureDifference.valueOf("1.5 kPa")).withLift(Length.valueOf("0.90 m"));

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # lift   | solid column of 1025 kg/m3, recomputed independently from rho g h
            0.60 m  | 6.03 kPa  | 1.78 inHg
            0.90 m  | 9.05 kPa  | 2.67 inHg
            1.067 m | 10.73 kPa | 3.17 inHg
            1.20 m  | 12.06 kPa | 3.56 inHg
            0.90 m  | 9.047 kPa | 2.67 inHg
            """)
    void reckonsTheColumn(String lift, String pressure, String mercury) {
        PressureDifference column = LiftColumn.pressure(Length.valueOf(lift), Ratio.of(1), SEA);
        assertPrinted(pressure, column);
        assertPrinted(mercury, column);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # hold-up | total of the example, recomputed independently: 0.2140 + 2 x 0.1042 + 1.5 + hold-up x 9.047 kPa
            0   | 1.92 kPa
            0.3 | 4.64 kPa
            0.5 | 6.45 kPa
            1.0 | 10.97 kPa
            1.0 | 3.24 inHg
            """)
    void addsUpTheBackPressure(double holdUp, String total) {
        assertPrinted(total, EXAMPLE.withHoldUp(Ratio.of(holdUp)).budget(GAS).total());
    }

    @Test
    void keepsThePartsOfTheBudget() {
        var budget = EXAMPLE.budget(GAS);
        assertThat(budget.parts()).extracting(part -> part.cause()).containsExactly("dry section", "wet hose", "muffler", "lift");
        assertPrinted("9.047 kPa", budget.parts().get(3).pressure());
        // 8.466 - 10.969 kPa: 2.5 inHg is passed on paper
        assertPrinted("-2.50 kPa", budget.leftTo(PressureDifference.valueOf("2.5 inHg")));
    }

    @Test
    void findsTheGreatestLift() {
        // recomputed independently: (10.16 - 0.2140 - 0.2084 - 1.5) / (1025 x 9.80665) = 0.819 m for 3 inHg with a solid column
        assertPrinted("0.819 m", EXAMPLE.greatestLift(GAS, PressureDifference.valueOf("3 inHg")).orElseThrow());
        Length lift = EXAMPLE.greatestLift(GAS, PressureDifference.valueOf("8.5 kPa")).orElseThrow();
        assertThat(EXAMPLE.withLift(lift).budget(GAS).total().si()).isCloseTo(8500, within(1e-8));
        assertThat(EXAMPLE.greatestLift(GAS, PressureDifference.valueOf("1 kPa"))).isEmpty();
        assertThatThrownBy(() -> EXAMPLE.withHoldUp(Ratio.of(0)).greatestLift(GAS, PressureDifference.valueOf("8.5 kPa")))
            .isInstanceOf(OutOfRangeException.class).hasMessageContaining("hold-up");
    }

    @Test
    void findsTheLeastBoreOfTheWetHose() {
        WetExhaust narrow = EXAMPLE.withHoldUp(Ratio.of(0.5)).withWetBore(Length.valueOf("38.1 mm"));
        PressureDifference limit = PressureDifference.valueOf("6.9 kPa");
        assertThat(narrow.budget(GAS).total().si()).isGreaterThan(6900);
        Length bore = narrow.leastWetBore(GAS, limit).orElseThrow();
        assertThat(narrow.withWetBore(bore).budget(GAS).total().si()).isLessThanOrEqualTo(6900).isCloseTo(6900, within(0.01));
        assertThat(narrow.leastWetBore(GAS, PressureDifference.valueOf("5 kPa"))).isEmpty();
    }

    @Test
    void boundsTheHoldUpFromBelow() {
        // recomputed independently: 24.43 L/min of water beside 2.0379 m3/min of gas: 0.0119
        TwoPhaseFlow flow = TwoPhaseFlow.ofGas(VolumeFlow.valueOf("2.0379 m3/min")).withWater(VolumeFlow.valueOf("24.43 L/min"));
        assertPrinted("0.0118", flow.leastHoldUp());
        assertThatThrownBy(() -> TwoPhaseFlow.wetLoss(PressureDifference.of(1), Ratio.of(0.5))).isInstanceOf(OutOfRangeException.class);
    }

    // V_back = pi/4 D^2 L and filling = V_back / V_usable + residue, recomputed independently
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # bore    | length | drains back | usable | filling
            50.8 mm | 1.6 m  | 3.243 L     | 8 L    | 0.655
            76.2 mm | 2.4 m  | 10.945 L    | 14 L   | 1.032
            38.1 mm | 1.2 m  | 1.368 L     | 14 L   | 0.348
            """)
    void reckonsWhatDrainsBack(String bore, String length, String back, String usable, String filling) {
        Volume draining = DrainBack.of(List.of(PipeRun.ofBore(Length.valueOf(bore)).withLength(Length.valueOf(length))));
        assertPrinted(back, draining);
        assertPrinted(filling, DrainBack.into(Volume.valueOf(usable)).from(draining).filling());
    }

    @Test
    void findsTheLeastMuffler() {
        DrainBack muffler = DrainBack.into(Volume.valueOf("8 L")).from(Volume.valueOf("3.243 L"));
        Volume least = muffler.leastUsable(DrainBack.USUAL_LIMIT);
        assertThat(DrainBack.into(least).from(muffler.draining()).filling().si()).isCloseTo(0.80, within(1e-12));
        assertPrinted("5.896 L", least); // recomputed independently: 3.243 / (0.80 - 0.25)
        assertPrinted("9.73 L", DrainBack.leastUsableByThreeTimesRule(Volume.valueOf("3.243 L"))); // common practice: three times
        assertPrinted("4.40 L", muffler.greatestDraining(DrainBack.USUAL_LIMIT)); // recomputed independently: 8 x 0.55
        assertPrinted("2.757 L", muffler.freeAfterStop()); // recomputed independently: 8 - 3.243 - 2.0
        assertThatThrownBy(() -> muffler.leastUsable(Ratio.of(0.25))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> muffler.withResidue(Ratio.of(1))).isInstanceOf(OutOfRangeException.class).hasMessageContaining("residue");
    }

    // Q = Q_rated n_crank / n_rated and t = V / Q, recomputed independently
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # rated speed | flow        | free    | floods in
            1800 r/min    | 3.889 L/min | 5 L     | 77.1 s
            1800 r/min    | 3.889 L/min | 2 L     | 30.9 s
            3000 r/min    | 2.333 L/min | 5 L     | 128.6 s
            1800 r/min    | 3.889 L/min | 2.757 L | 42.5 s
            """)
    void reckonsTheTimeToFlood(String rated, String flow, String free, String floods) {
        var pump = new CrankingFlood.PumpRating(VolumeFlow.valueOf("28 L/min"), RotationalSpeed.valueOf(rated));
        VolumeFlow cranking = CrankingFlood.flow(pump, RotationalSpeed.valueOf("250 r/min"));
        assertPrinted(flow, cranking);
        assertPrinted(floods, CrankingFlood.timeToFlood(Volume.valueOf(free), cranking));
    }

    @Test
    void allowsHalfTheTimeToFloodAndThirtySecondsAtMost() {
        assertPrinted("30 s", CrankingFlood.greatestTotal(TimeSpan.valueOf("77.1 s")));
        assertPrinted("15.45 s", CrankingFlood.greatestTotal(TimeSpan.valueOf("30.9 s")));
        Volume least = CrankingFlood.leastFree(TimeSpan.valueOf("15.45 s"), VolumeFlow.of(3.889, "L/min"));
        assertPrinted("2.00 L", least);
        var pump = new CrankingFlood.PumpRating(VolumeFlow.valueOf("28 L/min"), RotationalSpeed.valueOf("1800 r/min"));
        assertThatThrownBy(() -> CrankingFlood.flow(pump, RotationalSpeed.valueOf("1801 r/min"))).isInstanceOf(OutOfRangeException.class)
            .hasMessageContaining("cranking speed").hasMessageContaining("1800 r/min");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # gas side | height of water, recomputed independently from p / (rho g), 1025 kg/m3
            1.0 kPa | 0.0995 m
            2.0 kPa | 0.199 m
            3.0 kPa | 0.298 m
            """)
    void reckonsTheHeightOfASeparator(String gas, String height) {
        PressureDifference pressure = PressureDifference.valueOf(gas);
        Length least = SeparatorHeight.least(pressure, Length.of(0), SEA);
        assertPrinted(height, least);
        assertThat(SeparatorHeight.least(pressure, SeparatorHeight.USUAL_MARGIN, SEA).si()).isCloseTo(least.si() + 0.15, within(1e-12));
        Length built = SeparatorHeight.least(pressure, SeparatorHeight.USUAL_MARGIN, SEA);
        assertThat(SeparatorHeight.greatestGasPressure(new SeparatorHeight.BaseHeight(built), SeparatorHeight.USUAL_MARGIN, SEA).si())
            .isCloseTo(pressure.si(), within(1e-9));
        assertThat(SeparatorHeight.greatestGasPressure(new SeparatorHeight.BaseHeight(Length.of(0.1)), SeparatorHeight.USUAL_MARGIN, SEA).si())
            .isZero();
    }

    @Test
    void knowsTheRulesForTheBore() {
        // Gerr, Boat Mechanical Systems Handbook: wet bore 1.4 times the dry one, 60 bores, 20 % more
        assertPrinted("53.3 mm", ExhaustBore.wetByGerr(Length.valueOf("38.1 mm")));
        assertPrinted("70 mm", ExhaustBore.wetByGerr(Length.valueOf("50 mm")));
        assertPrinted("3.05 m", ExhaustBore.length(ExhaustBore.LONGEST_IN_BORES, Length.valueOf("50.8 mm")));
        assertPrinted("1.52 m", ExhaustBore.length(Ratio.of(30), Length.valueOf("50.8 mm")));
        assertPrinted("60.0", ExhaustBore.lengthInBores(PipeRun.ofBore(Length.valueOf("50.8 mm")).withLength(Length.valueOf("3.048 m"))));
        assertPrinted("60.96 mm", ExhaustBore.enlargedForLongRun(Length.valueOf("50.8 mm")));
        // loss ~ D^-5, recomputed independently: a doubled loss takes 1.149 times the bore; 1.4 times divides the loss by 5.4
        assertPrinted("1.149", ExhaustBore.boreFactorFor(Ratio.of(2)));
        assertPrinted("5.4", Ratio.of(1 / ExhaustBore.lossFactorOf(Ratio.of(1.4)).si()));
    }
}
