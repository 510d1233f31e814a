// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.AlarmKind;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class AlarmInDateTest {

    private final CommissioningRecord record = Installation.empty();

    // tests judge on 2026-06-01; common practice
    @ParameterizedTest
    @CsvSource({ "2031-09-30, MEETS", "2026-06-01, MEETS", "2026-05-31, FALLS_SHORT" })
    void goodUntilItsDay(LocalDate expiry, Standing standing) {
        Devices.add(record, AlarmKind.FUEL_VAPOUR).setExpiresOn(expiry);
        judge(AlarmInDate.check(), record).is(standing);
    }

    @Test
    void looksAtAlarmsWithADateAndNotAtCarbonMonoxide() {
        Devices.add(record, AlarmKind.FIRE);
        Devices.add(record, AlarmKind.CARBON_MONOXIDE).setExpiresOn(LocalDate.of(2020, 1, 1)); // told by ALARM-CO-DATE
        assertThat(Judged.all(AlarmInDate.check(), record)).isEmpty();
    }

    @Test
    void cannotTellWithoutAlarms() {
        judge(AlarmInDate.check(), GarboardFactory.eINSTANCE.createCommissioningRecord()).cannotTell("alarms.alarms");
    }
}
