// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.StartingBattery;
import garboard.quantity.Resistance;
import garboard.quantity.Voltage;

class CrankingDropInTheFieldTest {

    private final CommissioningRecord record = Wiring.withoutOutputCable();
    private final StartingBattery battery = record.getStartingBattery();

    // common practice: 0.5 V at 12 V
    @ParameterizedTest
    @CsvSource({ "10.3 V, 9.8 V, MEETS", "10.3 V, 9.79 V, FALLS_SHORT", "10300 mV, 9.9 V, MEETS", "9.8 V, 10.3 V, FALLS_SHORT" })
    void halfAVolt(String posts, String starter, Standing standing) {
        record.getGeneratorSet().setSystemVoltage(Voltage.of(12, "V"));
        battery.setCrankingVoltageAtPosts(Voltage.valueOf(posts));
        battery.setCrankingVoltageAtStarter(Voltage.valueOf(starter));
        judge(CrankingDropInTheField.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutReadings() {
        record.getGeneratorSet().setSystemVoltage(Voltage.of(12, "V"));
        judge(CrankingDropInTheField.check(), record).cannotTell("startingBattery.crankingVoltageAtPosts",
            "startingBattery.crankingVoltageAtStarter");
    }

    @Test
    void theMakersResistanceDecidesInItsPlace() {
        record.getGeneratorSet().setSystemVoltage(Voltage.of(12, "V"));
        record.getGeneratorSet().getMakerLimits().setMaximumCrankingCircuitResistance(Resistance.of(2, "mohm"));
        judge(CrankingDropInTheField.check(), record).doesNotApply();
    }

    @Test
    void doesNotApplyTo24V() {
        record.getGeneratorSet().setSystemVoltage(Voltage.of(24, "V"));
        judge(CrankingDropInTheField.check(), record).doesNotApply();
    }
}
