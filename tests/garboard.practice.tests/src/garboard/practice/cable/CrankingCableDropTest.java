// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CableFunction;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Judged;
import garboard.quantity.Voltage;

class CrankingCableDropTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();

    @ParameterizedTest
    @CsvSource({ "0.2 V, MEETS", "200 mV, MEETS", "0.201 V, FALLS_SHORT", "0.05 V, MEETS" }) // common practice: 0.2 V per cable
    void twoTenths(String drop, Standing standing) {
        record.getGeneratorSet().setSystemVoltage(Voltage.of(12, "V"));
        Wiring.add(record, CableFunction.CRANKING_NEGATIVE).setMeasuredDrop(Voltage.valueOf(drop));
        judge(CrankingCableDrop.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutTheReading() {
        Wiring.add(record, CableFunction.CRANKING_POSITIVE);
        judge(CrankingCableDrop.check(), record).cannotTell("generatorSet.systemVoltage", "startingBattery.cables[0].measuredDrop");
        record.getGeneratorSet().setSystemVoltage(Voltage.of(12, "V"));
        judge(CrankingCableDrop.check(), record).cannotTell("startingBattery.cables[0].measuredDrop");
    }

    @Test
    void doesNotApplyTo24V() {
        // the 0.2 V are common practice at 12 V; at 24 V nothing is said
        record.getGeneratorSet().setSystemVoltage(Voltage.of(24, "V"));
        Wiring.add(record, CableFunction.CRANKING_POSITIVE).setMeasuredDrop(Voltage.of(0.3, "V"));
        judge(CrankingCableDrop.check(), record).doesNotApply();
    }

    @Test
    void looksAtCrankingCablesOnly() {
        Wiring.add(record, CableFunction.CHARGING).setMeasuredDrop(Voltage.of(1, "V"));
        assertThat(Judged.all(CrankingCableDrop.check(), record)).isEmpty();
    }
}
