// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Area;
import garboard.quantity.Current;
import garboard.quantity.Length;
import garboard.quantity.ResistancePerLength;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

class VoltageDropTest {

    private static Voltage drop(String size, String current, String loop, String temperature) {
        ResistancePerLength at20 = ConductorResistance.at20(ConductorSize.valueOf(size), StrandClass.CLASS_5_PLAIN);
        return VoltageDrop.roundTrip(Current.valueOf(current), ConductorResistance.atTemperature(at20, Temperature.valueOf(temperature)),
                Length.valueOf(loop));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # size | current | loop | temperature | volt
            70 mm2  | 300 A | 6 m   | 20 degC | 0.490 | Ohm's law with IEC 60228 class 5, recomputed independently
            70 mm2  | 300 A | 6 m   | 50 degC | 0.547 | Ohm's law with IEC 60228 class 5, recomputed independently
            50 mm2  | 400 A | 4 m   | 20 degC | 0.618 | Ohm's law with IEC 60228 class 5, recomputed independently
            35 mm2  | 250 A | 8 m   | 20 degC | 1.108 | Ohm's law with IEC 60228 class 5, recomputed independently
            2/0 AWG | 300 A | 20 ft | 20 degC | 0.468 | Ohm's law with solid copper, recomputed independently
            10 AWG  | 30 A  | 10 m  | 50 degC | 1.10  | Ohm's law with solid copper, recomputed independently
            10 mm2  | 40 A  | 30 m  | 60 degC | 2.65  | Ohm's law with IEC 60228 class 5, recomputed independently
            """)
    void dropsOverTheLoop(String size, String current, String loop, String temperature, String volt, String source) {
        assertPrinted(volt, drop(size, current, loop, temperature).si());
    }

    @Test
    void dropsBetweenThreeLines() {
        // Ohm's law with IEC 60228 class 5 (50 mm2: 0.386 ohm/km), recomputed independently: sqrt(3) x 100 A x 0.0386 ohm
        ResistancePerLength at20 = ConductorResistance.at20(ConductorSize.squareMillimetre(50), StrandClass.CLASS_5_PLAIN);
        assertPrinted("6.686", VoltageDrop.threePhase(Current.valueOf("100 A"), at20, Length.valueOf("100 m")).si());
    }

    @Test
    void countsTheDropAgainstTheNominalVoltage() {
        // Ohm's law, recomputed independently: 2.65 V of 230 V
        assertPrinted("1.15", VoltageDrop.share(drop("10 mm2", "40 A", "30 m", "60 degC"), Voltage.valueOf("230 V")).in("%"));
        assertThatThrownBy(() -> VoltageDrop.share(Voltage.valueOf("230 V"), Voltage.valueOf("2 V"))).isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            CRITICAL     | 12 V | 0.36 | ABYC E-11, 3 %
            CRITICAL     | 24 V | 0.72 | ABYC E-11, 3 %
            NON_CRITICAL | 12 V | 1.2  | ABYC E-11, 10 %
            NON_CRITICAL | 24 V | 2.4  | ABYC E-11, 10 %
            """)
    void allowsAShareOfTheNominalVoltage(DropAllowance allowance, String nominal, String volt, String source) {
        assertPrinted(volt, allowance.of(Voltage.valueOf(nominal)).si());
    }

    @Test
    void findsTheAreaByTheCircularMilMethod() {
        Area pump = VoltageDrop.circularMilArea(Current.valueOf("10 A"), Length.valueOf("21 ft"), Voltage.valueOf("0.36 V"));
        assertPrinted("6270.8", pump.si() / ConductorSize.CIRCULAR_MIL_M2); // ABYC E-11 form, 10.75 I L / E, recomputed independently
        assertThat(CableSizing.smallestAwg(pump)).contains(ConductorSize.awg(12)); // published pump example: 12 AWG
        assertThat(CableSizing.smallestSaeGauge(pump)).contains(ConductorSize.awg(10)); // SAE 12 has 5833 circular mils only
        Area metric = VoltageDrop.circularMilArea(Current.valueOf("40 A"), Length.valueOf("12 m"), Voltage.valueOf("0.72 V"));
        assertPrinted("11.9", metric.in("mm2")); // ABYC E-11 form, recomputed independently
        assertThat(ConductorSeries.smallest(ConductorSeries.IEC, metric)).contains(ConductorSize.squareMillimetre(16));
    }

    @Test
    void hasAConstantThatIsCopperAt29Degrees() {
        // ABYC E-11's 10.75 ohm circular mil per foot is 0.01787 ohm mm2/m
        double ohmMm2PerM = VoltageDrop.circularMilArea(Current.of(1), Length.of(1), Voltage.of(1)).in("mm2");
        assertPrinted("0.01787", ohmMm2PerM);
    }

    @Test
    void picksTheSmallestSizeThatKeepsTheDrop() {
        CableTask task = new CableTask(Current.valueOf("300 A"), Length.valueOf("6 m"), Voltage.valueOf("0.60 V"), Temperature.valueOf("20 degC"));
        assertThat(CableSizing.smallestIec(task, StrandClass.CLASS_5_PLAIN)).contains(ConductorSize.squareMillimetre(70)); // 0.490 V; 50 mm2: 0.695 V
        assertThat(CableSizing.smallestAwg(task)).contains(ConductorSize.valueOf("1/0 AWG")); // NBS 0.09827 ohm/kft: 0.580 V; 1 AWG: 0.732 V
        CableTask heavy = new CableTask(Current.valueOf("300 A"), Length.valueOf("6 m"), Voltage.valueOf("0.30 V"), Temperature.valueOf("20 degC"));
        // 0.290 V; 95 mm2: 0.371 V
        assertThat(CableSizing.smallestIec(heavy, StrandClass.CLASS_5_PLAIN)).contains(ConductorSize.squareMillimetre(120));
        assertThat(CableSizing.smallestAwg(heavy)).contains(ConductorSize.valueOf("4/0 AWG"));
        CableTask hopeless = new CableTask(Current.valueOf("900 A"), Length.valueOf("60 m"), Voltage.valueOf("0.30 V"),
                Temperature.valueOf("20 degC"));
        assertThat(CableSizing.smallestIec(hopeless, StrandClass.CLASS_5_PLAIN)).isEmpty();
        assertThat(CableSizing.smallestAwg(hopeless)).isEmpty();
    }

    @Test
    void longestLoopUsesTheDropUp() {
        CableTask task = new CableTask(Current.valueOf("300 A"), Length.valueOf("6 m"), Voltage.valueOf("0.60 V"), Temperature.valueOf("50 degC"));
        ResistancePerLength at20 = ConductorResistance.iec60228(ConductorSize.squareMillimetre(70), StrandClass.CLASS_5_PLAIN);
        Length longest = CableSizing.longestLoop(task, at20);
        assertThat(VoltageDrop.roundTrip(task.current(), ConductorResistance.atTemperature(at20, task.conductor()), longest).si())
                .isCloseTo(0.60, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # duty | milliohm | current | volt
            LIGHT_12_V | 2.0 | 300 A | 0.60 | SAE J541: 0.20 V per 100 A
            HEAVY_12_V | 1.0 | 300 A | 0.30 | SAE J541: 0.10 V per 100 A
            LIGHT_12_V | 2.0 | 400 A | 0.80 | SAE J541: 0.20 V per 100 A
            LIGHT_24_V | 4.0 | 250 A | 1.00 | SAE J541: 0.40 V per 100 A
            HEAVY_24_V | 1.7 | 100 A | 0.17 | SAE J541: 0.17 V per 100 A
            """)
    void limitsTheCrankingCircuit(StarterDuty duty, String milliohm, String current, String volt, String source) {
        assertPrinted(milliohm, duty.allowedResistance().si() * 1000);
        assertPrinted(volt, duty.allowedDrop(Current.valueOf(current)).si());
    }

    @Test
    void measuresACrankingCircuitByItsDrop() {
        assertThat(StarterDuty.measuredResistance(Voltage.valueOf("0.45 V"), Current.valueOf("300 A")).si()).isCloseTo(1.5e-3, within(1e-15));
        assertThatThrownBy(() -> StarterDuty.measuredResistance(Voltage.valueOf("0.45 V"), Current.of(0))).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void knowsTheSaeAreas() {
        // SAE-gauge table, quoted by a third party
        assertPrinted("5833", CableSizing.saeArea(ConductorSize.awg(12)).si() / ConductorSize.CIRCULAR_MIL_M2);
        assertPrinted("125100", CableSizing.saeArea(ConductorSize.valueOf("2/0")).si() / ConductorSize.CIRCULAR_MIL_M2);
        for (ConductorSize gauge : ConductorSeries.AWG) {
            if (!gauge.equals(ConductorSize.awg(3))) {
                assertThat(CableSizing.saeArea(gauge).si() / gauge.area().si()).isBetween(0.88, 0.98);
            }
        }
        assertThatThrownBy(() -> CableSizing.saeArea(ConductorSize.awg(3))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> CableSizing.saeArea(ConductorSize.squareMillimetre(16))).isInstanceOf(OutOfRangeException.class);
    }
}
