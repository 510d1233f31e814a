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
import garboard.practice.testing.Installation;

class CarbonMonoxideInDateTest {

    private final CommissioningRecord record = Installation.empty();

    // tests judge on 2026-06-01; ABYC A-24 (2025), summary: in date
    @ParameterizedTest
    @CsvSource({ "2033-05-31, MEETS", "2026-06-01, MEETS", "2026-05-31, FALLS_SHORT" })
    void goodUntilItsDay(LocalDate expiry, Standing standing) {
        record.getAlarms().setCarbonMonoxideExpiry(expiry);
        judge(CarbonMonoxideInDate.check(), record).is(standing);
    }

    @Test
    void theEarliestDateCounts() {
        record.getAlarms().setCarbonMonoxideExpiry(LocalDate.of(2033, 5, 31));
        Devices.add(record, AlarmKind.CARBON_MONOXIDE);
        Devices.add(record, AlarmKind.CARBON_MONOXIDE).setExpiresOn(LocalDate.of(2026, 1, 31));
        Devices.add(record, AlarmKind.FIRE).setExpiresOn(LocalDate.of(2020, 1, 31));
        assertThat(judge(CarbonMonoxideInDate.check(), record).fallsShort().verdict().sentence()).contains("2026-01-31");
    }

    @Test
    void aDateInTheListIsEnough() {
        Devices.add(record, AlarmKind.CARBON_MONOXIDE).setExpiresOn(LocalDate.of(2030, 1, 31));
        judge(CarbonMonoxideInDate.check(), record).meets();
    }

    @Test
    void cannotTellWithoutADate() {
        Devices.add(record, AlarmKind.CARBON_MONOXIDE);
        judge(CarbonMonoxideInDate.check(), record).cannotTell("alarms.carbonMonoxideExpiry");
    }
}
