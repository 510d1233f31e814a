// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.DoubleStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Current;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

class LoadListTest {

    private static ConnectedLoad load(double kilowatt, double powerFactor, double useFactor) {
        return ConnectedLoad.of(Power.of(kilowatt, "kW")).withPowerFactor(Ratio.of(powerFactor)).withUseFactor(Ratio.of(useFactor));
    }

    /** An invented 230 V list; its demand factors are common practice. */
    private static final List<ConnectedLoad> LIST = List.of(load(3.60, .85, .80), load(.55 / .70, .75, .80), load(2.00, 1, .40), load(6.00, 1, .40),
            load(.60, .80, .50), load(1.50, .70, .60), load(2.75, .80, .50), load(1.50, .95, .50), load(.80, .90, .50), load(2.50, .90, .40));

    @Test
    void multipliesLoadDiversityAndTimeFactors() {
        // IMO form, recomputed independently: 2.2 kW / 0.80, 0.9 x 0.5 x 0.6 = 0.27, 0.74 kW
        ConnectedLoad pump = ConnectedLoad.of(ConnectedLoad.inputOf(Power.valueOf("2.2 kW"), Ratio.of(.80))).times(Ratio.of(.9)).times(Ratio.of(.5))
                .times(Ratio.of(.6));
        assertPrinted("0.27", pump.useFactor().si());
        assertPrinted("0.74", pump.demand().in("kW"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0 | 2.88 | 1.78 | IMO form with P tan(acos pf), recomputed independently
            1 | .63  | .55  | IMO form with P tan(acos pf), recomputed independently
            2 | .80  | 0    | IMO form with P tan(acos pf), recomputed independently
            3 | 2.40 | 0    | IMO form with P tan(acos pf), recomputed independently
            4 | .30  | .22  | IMO form with P tan(acos pf), recomputed independently
            5 | .90  | .92  | IMO form with P tan(acos pf), recomputed independently
            6 | 1.38 | 1.03 | IMO form with P tan(acos pf), recomputed independently
            7 | .75  | .25  | IMO form with P tan(acos pf), recomputed independently
            8 | .40  | .19  | IMO form with P tan(acos pf), recomputed independently
            9 | 1.00 | .48  | IMO form with P tan(acos pf), recomputed independently
            """)
    void demandsLineByLine(int line, String kilowatt, String kilovar, String source) {
        assertPrinted(kilowatt, LIST.get(line).demand().in("kW"));
        assertPrinted(kilovar, LIST.get(line).reactiveDemand().in("kvar"));
    }

    @Test
    void sumsActiveAndReactivePowerApart() {
        // Recomputed independently: connected 22.04 kW, demand 11.43 kW, 5.44 kvar, 12.66 kVA, pf .903, overall factor .519
        DemandSum sum = DemandSum.of(LIST);
        assertPrinted("22.04", sum.connected().in("kW"));
        assertPrinted("11.43", sum.demand().in("kW"));
        assertPrinted("5.44", sum.reactive().in("kvar"));
        assertPrinted("12.66", sum.apparent().in("kVA"));
        assertPrinted(".903", sum.powerFactor().si());
        assertPrinted(".519", sum.overallFactor().si());
    }

    @Test
    void sizesTheSet() {
        // Common practice: at most 80 %; recomputed independently
        DemandSum sum = DemandSum.of(LIST);
        assertPrinted("14.3", sum.leastRating(Ratio.valueOf("80 %")).in("kW"));
        assertPrinted("71", sum.shareOf(Power.valueOf("16 kW")).in("%"));
        assertPrinted("19", DemandSum.of(List.of(load(3.0, 1, 1))).shareOf(Power.valueOf("16 kW")).in("%"));
    }

    @Test
    void refusesAnEmptyListAndImpossibleFactors() {
        assertThatThrownBy(() -> DemandSum.of(List.of())).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> load(1, 1, 1.2)).isInstanceOf(OutOfRangeException.class).hasMessageContaining("use factor");
        assertThatThrownBy(() -> load(1, 0, 1)).isInstanceOf(OutOfRangeException.class).hasMessageContaining("power factor");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            12 kW  | 0 kW  | 12    | 46 CFR Table 111.60-7, recomputed independently
            120 kW | 0 kW  | 99    | 46 CFR Table 111.60-7, recomputed independently
            60 kW  | 10 kW | 61.5  | 46 CFR Table 111.60-7: 50 + 0.65 x 10 + 0.5 x 10
            """)
    void feedsAGalley(String connected, String spare, String kilowatt, String source) {
        assertPrinted(kilowatt, FeederDemand.galley(new FeederDemand.GalleyLoad(Power.valueOf(connected), Power.valueOf(spare))).in("kW"));
    }

    private static List<Current> amperes(double... amperes) {
        return DoubleStream.of(amperes).mapToObj(Current::of).toList();
    }

    @Test
    void feedsAPanel() {
        // ABYC E-11 worksheet (from memory), recomputed independently
        assertPrinted("62", FeederDemand.panel(Current.valueOf("22 A"), FeederDemand.OtherLoads.of(amperes(40, 30, 25))).si());
        assertPrinted("34", FeederDemand.panel(Current.valueOf("22 A"),
                new FeederDemand.OtherLoads(Current.valueOf("8 A"), Current.valueOf("120 A"))).si());
        assertPrinted("22", FeederDemand.panel(Current.valueOf("22 A"), FeederDemand.OtherLoads.of(List.of())).si());
        assertThatThrownBy(() -> new FeederDemand.OtherLoads(Current.of(9), Current.of(8))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> FeederDemand.OtherLoads.of(amperes(-1, 3))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void reckonsAChargersInput() {
        // U I / (efficiency pf), recomputed independently
        ChargerInput charger = ChargerInput.of(Voltage.valueOf("28.8 V"), Current.valueOf("50 A")).withEfficiency(Ratio.of(.88));
        assertPrinted("2.34", charger.withPowerFactor(Ratio.of(.70)).apparent().in("kVA"));
        assertPrinted("1.67", charger.withPowerFactor(Ratio.of(.98)).apparent().in("kVA"));
        assertThatThrownBy(() -> charger.withPowerFactor(Ratio.of(0))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void rushesIn() {
        // Common practice: transformer 8 to 12 times, switch-mode 10 to 40 times
        assertThat(Inrush.TRANSFORMER.least(Current.of(10)).si()).isEqualTo(80);
        assertThat(Inrush.TRANSFORMER.most(Current.of(10)).si()).isEqualTo(120);
        assertThat(Inrush.SWITCH_MODE.least(Current.of(10)).si()).isEqualTo(100);
        assertThat(Inrush.SWITCH_MODE.most(Current.of(10)).si()).isEqualTo(400);
    }
}
