// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.TerminalKind;

class BatteryTerminalsTest {

    private final CommissioningRecord record = Bench.flooded();

    @ParameterizedTest
    @CsvSource({ "POST_CLAMP, MEETS", "BOLTED_LUG, MEETS", "SPRING_CLIP, FALLS_SHORT", "WING_NUT, FALLS_SHORT" }) // common practice
    void boltedOrClamped(TerminalKind terminals, Standing standing) {
        record.getStartingBattery().setTerminals(terminals);
        judge(BatteryTerminals.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutTheKind() {
        judge(BatteryTerminals.check(), record).cannotTell("startingBattery.terminals");
    }
}
