// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class ClearanceAroundTest {

    private final CommissioningRecord record = Installation.empty();

    @ParameterizedTest
    @CsvSource({ "150 mm, MEETS", "1 mm, MEETS", "0 mm, FALLS_SHORT", "0 in, FALLS_SHORT" }) // derived: what touches wears
    void touchesNothing(String gap, Standing standing) {
        record.getMounting().setClearanceAround(Length.valueOf(gap));
        judge(ClearanceAround.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutTheGap() {
        judge(ClearanceAround.check(), record).cannotTell("mounting.clearanceAround");
    }
}
