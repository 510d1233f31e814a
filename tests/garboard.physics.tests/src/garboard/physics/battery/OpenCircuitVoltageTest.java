// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import static garboard.physics.Printed.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import garboard.physics.OutOfRangeException;
import garboard.quantity.Ratio;
import garboard.quantity.Voltage;

class OpenCircuitVoltageTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # curve         | rested  | blocks | per cent | source
            FLOODED_US_ARMY | 12.6 V  | 1 | 100   | US Army TM 5-3805-262-20
            FLOODED_US_ARMY | 12.4 V  | 1 | 75    | US Army TM 5-3805-262-20
            FLOODED_US_ARMY | 12.2 V  | 1 | 50    | US Army TM 5-3805-262-20
            FLOODED_US_ARMY | 12.0 V  | 1 | 25    | US Army TM 5-3805-262-20
            FLOODED_US_ARMY | 11.7 V  | 1 | 0     | US Army TM 5-3805-262-20
            FLOODED_US_ARMY | 12.50 V | 1 | 87.5  | straight line in US Army TM 5-3805-262-20, recomputed independently
            FLOODED_US_ARMY | 12.30 V | 1 | 62.5  | straight line in US Army TM 5-3805-262-20, recomputed independently
            FLOODED_US_ARMY | 24.60 V | 2 | 62.5  | straight line in US Army TM 5-3805-262-20, recomputed independently
            AGM             | 12.80 V | 1 | 100   | typical AGM, from memory
            GEL             | 12.65 V | 1 | 75    | typical gel, from memory
            FLOODED_SG_1265 | 12.06 V | 1 | 25    | typical flooded SG 1.265, from memory
            """)
    void readsTheStateOfChargeFromTheTable(OpenCircuitCurve curve, String rested, int blocks, String perCent, String source) {
        assertPrinted(perCent, OpenCircuitVoltage.stateOfCharge(curve, Voltage.valueOf(rested), blocks).in("%"));
    }

    @Test
    void callsABatteryAboveItsFullVoltageFullAndBelowItsEmptyVoltageEmpty() {
        assertThat(OpenCircuitVoltage.stateOfCharge(OpenCircuitCurve.FLOODED_US_ARMY, Voltage.valueOf("13.0 V"), 1).si()).isEqualTo(1);
        assertThat(OpenCircuitVoltage.stateOfCharge(OpenCircuitCurve.FLOODED_US_ARMY, Voltage.valueOf("10.5 V"), 1).si()).isZero();
        assertThat(OpenCircuitVoltage.stateOfCharge(OpenCircuitCurve.FLOODED_US_ARMY, Voltage.valueOf("26.4 V"), 2).si()).isEqualTo(1);
    }

    @Test
    void refusesAVoltageThatNoRestedBatteryShows() {
        assertThatThrownBy(() -> OpenCircuitVoltage.stateOfCharge(OpenCircuitCurve.AGM, Voltage.valueOf("10.49 V"), 1))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> OpenCircuitVoltage.stateOfCharge(OpenCircuitCurve.AGM, Voltage.valueOf("13.21 V"), 1))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> OpenCircuitVoltage.stateOfCharge(OpenCircuitCurve.AGM, Voltage.valueOf("14.4 V"), 1))
                .isInstanceOf(OutOfRangeException.class).hasMessageContaining("rested voltage").hasMessageContaining("14.4 V")
                .hasMessageContaining("13.2");
        assertThatThrownBy(() -> OpenCircuitVoltage.stateOfCharge(OpenCircuitCurve.AGM, Voltage.valueOf("12.6 V"), 2))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> OpenCircuitVoltage.stateOfCharge(OpenCircuitCurve.AGM, Voltage.valueOf("12.6 V"), 0))
                .isInstanceOf(OutOfRangeException.class).hasMessageContaining("blocks");
    }

    @ParameterizedTest
    @EnumSource(OpenCircuitCurve.class)
    void turnsTheStateOfChargeBackIntoTheVoltage(OpenCircuitCurve curve) {
        for (double share = 0; share <= 1; share += 0.05) {
            Voltage rested = OpenCircuitVoltage.restedVoltage(curve, Ratio.of(share), 2);
            assertThat(OpenCircuitVoltage.stateOfCharge(curve, rested, 2).si()).isCloseTo(share, within(1e-9));
        }
    }

    @Test
    void measuresTheSpreadOfAString() {
        // US Army TM 9-6140-200-14 rejects unequal cells; arithmetic: 12.75 V - 12.35 V = 0.40 V
        assertPrinted("0.40", OpenCircuitVoltage.blockSpread(List.of(Voltage.valueOf("12.75 V"), Voltage.valueOf("12.35 V"))).si());
        assertThatThrownBy(() -> OpenCircuitVoltage.blockSpread(List.of())).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void findsASharedBankHalfEmpty() {
        // US Army TM 5-3805-262-20: 50 % is 12.2 V
        assertPrinted("12.2", OpenCircuitVoltage.restedVoltage(OpenCircuitCurve.FLOODED_US_ARMY, Ratio.of(0.5), 1).si());
    }
}
