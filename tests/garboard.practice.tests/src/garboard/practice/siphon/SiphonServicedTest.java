// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.practice.siphon.SiphonFixture.fitted;
import static garboard.practice.siphon.SiphonFixture.loop;
import static garboard.practice.siphon.SiphonFixture.siphonBreak;
import static garboard.practice.testing.Judged.judge;

import java.time.LocalDate;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.SiphonBreakKind;

class SiphonServicedTest {

    // marine trade press: at least yearly; the tests judge on 2026-06-01
    @ParameterizedTest
    @CsvSource({ "2026-05-31, MEETS", "2025-06-01, MEETS", "2025-05-31, FALLS_SHORT", "2020-01-01, FALLS_SHORT", "2026-06-02, FALLS_SHORT" })
    void wantsItEveryYear(LocalDate servicedOn, Standing expected) {
        CommissioningRecord record = loop();
        siphonBreak(record).setServicedOn(servicedOn);
        judge(SiphonServiced.check(), record).is(expected);
    }

    @Test
    void doesNotApplyWithoutABreak() {
        judge(SiphonServiced.check(), fitted(SiphonBreakKind.NONE)).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheDate() {
        judge(SiphonServiced.check(), loop()).cannotTell("rawWater.siphonBreak.servicedOn");
    }
}
