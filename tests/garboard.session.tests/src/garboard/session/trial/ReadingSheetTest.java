// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.OffsetDateTime;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.Cooling;
import garboard.model.GarboardPackage.Literals;
import garboard.model.LoadStep;
import garboard.model.PhaseSystem;
import garboard.model.Reading;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;
import garboard.session.OpenRecord;

class ReadingSheetTest {

    private final HandClock clock = HandClock.at("2026-05-01T10:00:20+02:00");
    private final CommissioningRecord record = TrialRecords.withTrial();
    private final LoadStep quarter = TrialRecords.step(record, "25 %");
    private final LoadStep half = TrialRecords.step(record, "50 %");
    private final OpenRecord open = TrialRecords.of(record, clock);
    private final ReadingSheet sheet = new ReadingSheet(open, clock);

    @Test
    void beginsALineWithTheTimeAndTheInstruments() {
        Reading first = sheet.add(quarter, "Reading");
        assertThat(first.getAt()).isEqualTo(OffsetDateTime.parse("2026-05-01T10:00+02:00"));
        assertThat(first.getInstruments()).isNull();
        assertThat(first.getId()).isNotBlank();
        first.setInstruments("instrument-1, instrument-2");
        clock.pass(Duration.ofMinutes(5));

        Reading next = sheet.add(half, "Reading");

        assertThat(next.getInstruments()).isEqualTo("instrument-1, instrument-2");
        assertThat(next.getAt()).isEqualTo(OffsetDateTime.parse("2026-05-01T10:05+02:00"));
        assertThat(half.getReadings()).containsExactly(next);
    }

    @Test
    void copiesTheLastLineAsAStart() {
        Reading first = sheet.add(quarter, "Reading");
        first.setCoolantTemperature(Temperature.valueOf("176 degF"));
        first.setNote("White smoke");
        first.setInstruments("instrument-1");
        clock.pass(Duration.ofMinutes(15));

        Reading copy = sheet.addLikeLast(half, "Copy");

        assertThat(copy.getCoolantTemperature()).isEqualTo(Temperature.valueOf("176 degF"));
        assertThat(copy.getInstruments()).isEqualTo("instrument-1");
        assertThat(copy.getNote()).isNull();
        assertThat(copy.getAt()).isEqualTo(OffsetDateTime.parse("2026-05-01T10:15+02:00"));
        assertThat(copy.getId()).isNotEqualTo(first.getId()).isNotBlank();
        open.edits().undo();
        assertThat(half.getReadings()).isEmpty();
    }

    @Test
    void copiesNothingFromALaterStep() {
        sheet.add(half, "Reading").setCoolantTemperature(Temperature.valueOf("80 degC"));

        assertThat(sheet.addLikeLast(quarter, "Copy").getCoolantTemperature()).isNull();
    }

    @Test
    void showsTheColumnsThatSuitTheSet() {
        record.getGeneratorSet().setPhases(PhaseSystem.SINGLE_PHASE);
        assertThat(sheet.usualColumns()).contains(Literals.READING__VOLTAGE1, Literals.READING__RAW_WATER_IN, Literals.READING__INSTRUMENTS)
            .doesNotContain(Literals.READING__VOLTAGE2, Literals.READING__VOLTAGE3, Literals.READING__CARBON_MONOXIDE, Literals.ITEM__ID);

        record.getGeneratorSet().setPhases(PhaseSystem.THREE_PHASE);
        record.getGeneratorSet().setCooling(Cooling.KEEL_COOLED);
        assertThat(sheet.usualColumns()).contains(Literals.READING__VOLTAGE2, Literals.READING__CURRENT3)
            .doesNotContain(Literals.READING__RAW_WATER_IN);
    }

    @Test
    void neverHidesAColumnInWhichSomethingIsEntered() {
        sheet.add(quarter, "Reading").setCarbonMonoxide(Ratio.valueOf("3 ppm"));

        assertThat(sheet.usualColumns()).contains(Literals.READING__CARBON_MONOXIDE);
        assertThat(ReadingSheet.allColumns()).containsSubsequence(sheet.usualColumns());
    }
}
