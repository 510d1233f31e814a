// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.StartingBattery;
import garboard.quantity.Length;
import garboard.quantity.Mass;

class BatteryRestraintByIsoTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();

    @ParameterizedTest
    @CsvSource({ "10 mm, MEETS", "0.39 in, MEETS", "10.1 mm, FALLS_SHORT", "0.4 in, FALLS_SHORT" }) // ISO 10133 clause 5 (quoted): 10 mm
    void movesTenMillimetres(String moved, Standing standing) {
        battery.setMovementUnderTest(Length.valueOf(moved));
        judge(BatteryRestraintByIso.check(), record).is(standing);
    }

    @Test
    void namesThePull() {
        battery.setMovementUnderTest(Length.of(5, "mm"));
        battery.setBlockMass(Mass.of(25, "kg"));
        assertThat(judge(BatteryRestraintByIso.check(), record).meets().verdict().sentence()).contains("490 N"); // ISO 10133 clause 5: twice the weight
    }

    @Test
    void cannotTellWithoutTheTest() {
        judge(BatteryRestraintByIso.check(), record).cannotTell("startingBattery.movementUnderTest");
    }
}
