// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.ApparentPower;
import garboard.quantity.Current;
import garboard.quantity.Power;
import garboard.quantity.Ratio;
import garboard.quantity.ReactivePower;
import garboard.quantity.Voltage;

class PowerTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            20 kVA  | 230 V | SINGLE_PHASE | 87.0  | S / U, recomputed independently
            25 kVA  | 400 V | THREE_PHASE  | 36.1  | S / (sqrt 3 U), recomputed independently
            50 kVA  | 208 V | THREE_PHASE  | 138.8 | S / (sqrt 3 U), recomputed independently
            125 kVA | 480 V | THREE_PHASE  | 150.4 | S / (sqrt 3 U), recomputed independently
            8 kVA   | 240 V | SPLIT_PHASE  | 33.3  | S / U between the legs, recomputed independently
            10 kVA  | 400 V | THREE_PHASE  | 14.4  | S / (sqrt 3 U), recomputed independently
            27.5 kVA | 400 V | THREE_PHASE | 39.7  | 110 % of 25 kVA, recomputed independently
            """)
    void turnsApparentPowerIntoCurrent(String apparent, String line, PhaseSystem phases, String ampere, String source) {
        Current current = AcPower.current(ApparentPower.valueOf(apparent), Voltage.valueOf(line), phases);
        assertPrinted(ampere, current.si());
        assertThat(AcPower.apparent(Voltage.valueOf(line), current, phases).si()).isCloseTo(ApparentPower.valueOf(apparent).si(), within(1e-6));
    }

    @Test
    void splitsApparentPower() {
        // 400 V, 36 A, pf 0.8, recomputed independently: 19.95 kW
        ApparentPower apparent = AcPower.apparent(Voltage.valueOf("400 V"), Current.valueOf("36 A"), PhaseSystem.THREE_PHASE);
        assertPrinted("19.95", AcPower.active(apparent, Ratio.of(0.8)).in("kW"));
        assertPrinted("25", AcPower.apparent(Power.valueOf("20 kW"), Ratio.of(0.8)).in("kVA")); // plate identity
        assertPrinted("15.0", AcPower.apparent(Power.valueOf("12.0 kW"), ReactivePower.valueOf("9.0 kvar")).in("kVA")); // 3-4-5 triangle
        assertPrinted("9.0", AcPower.reactive(Power.valueOf("12.0 kW"), Ratio.of(0.8)).in("kvar")); // 3-4-5 triangle
        assertPrinted("0.8", AcPower.powerFactor(Power.valueOf("20 kW"), ApparentPower.valueOf("25 kVA")).si());
        assertThatThrownBy(() -> AcPower.powerFactor(Power.valueOf("26 kW"), ApparentPower.valueOf("25 kVA")))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> AcPower.reactive(Power.valueOf("1 kW"), Ratio.of(1.1))).isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("power factor");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # kW | pf | V | phases | full load | 115 %
            8 kW  | 1   | 240 V | SPLIT_PHASE  | 33.333  | 38.333  | 46 CFR 183.320(f), recomputed independently
            8 kW  | 1   | 120 V | SINGLE_PHASE | 66.667  | 76.667  | 46 CFR 183.320(f), recomputed independently
            20 kW | 0.8 | 208 V | THREE_PHASE  | 69.393  | 79.802  | 46 CFR 183.320(f), recomputed independently
            99 kW | 0.8 | 400 V | THREE_PHASE  | 178.618 | 205.410 | 46 CFR 183.320(f), recomputed independently
            16 kW | 0.8 | 208 V | THREE_PHASE  | 55.514  | 63.842  | 46 CFR 183.320(b) and (f): 20 kW derated to 80 %, recomputed independently
            20 kW | 0.8 | 400 V | THREE_PHASE  | 36.1    | 41.5    | 46 CFR 28.860(a) and Table 111.60-7, recomputed independently
            20 kW | 1   | 230 V | SINGLE_PHASE | 87.0    | 100.0   | 46 CFR 28.860(a), recomputed independently
            """)
    void limitsTheGeneratorsDevice(String rated, String factor, String line, PhaseSystem phases, String full, String limit, String source) {
        GeneratorPlate plate = new GeneratorPlate(Power.valueOf(rated), Ratio.valueOf(factor), Voltage.valueOf(line), phases);
        assertPrinted(full, plate.fullLoad().si());
        assertPrinted(limit, plate.highestDevice().si());
        assertThat(plate.leastCable()).isEqualTo(plate.highestDevice());
    }

    @Test
    void shrinksTheLimitsWithADeratedPlate() {
        GeneratorPlate plate = new GeneratorPlate(Power.valueOf("20 kW"), Ratio.of(0.8), Voltage.valueOf("400 V"), PhaseSystem.THREE_PHASE);
        assertPrinted("28.9", plate.derated(Ratio.valueOf("80 %")).fullLoad().si()); // 46 CFR 183.320(b), recomputed independently
        assertThatThrownBy(() -> plate.derated(Ratio.of(1.1))).isInstanceOf(OutOfRangeException.class);
    }
}
