// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.practice.siphon.SiphonFixture.fitted;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.SiphonBreakKind;

class SiphonLoopVentedTest {

    // derived from the physics of the siphon: a closed loop goes on siphoning
    @ParameterizedTest
    @CsvSource({ "VALVED_VENTED_LOOP, MEETS", "BLEED_OVERBOARD, MEETS", "LOOP_WITHOUT_VENT, FALLS_SHORT", "NONE, DOES_NOT_APPLY",
            "NOT_ENTERED, CANNOT_TELL" })
    void aHighLoopAloneBreaksNoSiphon(SiphonBreakKind kind, Standing expected) {
        judge(SiphonLoopVented.check(), fitted(kind)).is(expected);
    }
}
