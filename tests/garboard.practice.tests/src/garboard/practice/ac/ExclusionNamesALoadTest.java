// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.ElectricalLoad;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class ExclusionNamesALoadTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "oven, MEETS", "OVEN, MEETS", "load-2, MEETS", "stove, FALLS_SHORT", "oven; stove, FALLS_SHORT", "heater, FALLS_SHORT" })
    void namesAnotherLoad(String name, Standing standing) { // derived: a name that fits no load excludes nothing
        ElectricalLoad heater = Board.load(record, "heater", "2 kW", "1");
        heater.setExclusiveWith(name);
        Board.load(record, "oven", "3 kW", "1").setId("load-2");
        judge(ExclusionNamesALoad.check(), record).is(standing);
    }

    @Test
    void looksOnlyAtLoadsThatExcludeOthers() {
        Board.load(record, "oven", "3 kW", "1");
        Board.load(record, "lights", "3 kW", "1").setExclusiveWith(" ");
        assertThat(Judged.all(ExclusionNamesALoad.check(), record)).isEmpty();
    }

    @Test
    void cannotTellWithoutLoads() {
        judge(ExclusionNamesALoad.check(), record).cannotTell("acOutput.loads");
    }
}
