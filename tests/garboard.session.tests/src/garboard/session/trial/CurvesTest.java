// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import static garboard.session.trial.TrialRecords.coolant;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.CustomaryUnits;
import garboard.model.GarboardPackage.Literals;
import garboard.model.LoadStep;
import garboard.model.PhaseSystem;
import garboard.model.Reading;
import garboard.quantity.GaugePressure;
import garboard.quantity.Power;
import garboard.quantity.Temperature;
import garboard.quantity.UnitSystem;
import garboard.session.OpenRecord;

class CurvesTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-01T08:00:00Z"), ZoneOffset.UTC);

    private final CommissioningRecord record = TrialRecords.withTrial();

    @Test
    void drawAlongMinutesInTheOrderOfTime() {
        LoadStep first = TrialRecords.step(record, "0 %");
        coolant(first, 10, "60 degC");
        coolant(TrialRecords.step(record, "25 %"), 25, "140 degF");
        coolant(first, 0, "40 degC");

        Curves curves = curves(ReadingTopic.COOLANT, Curves.Along.TIME, UnitSystem.SI);

        assertThat(curves.unit()).isEqualTo("degC");
        assertThat(curves.curves()).hasSize(1);
        assertThat(curves.curves().getFirst().along()).containsExactly(0, 10, 25);
        // 140 degF are 60 degC
        assertThat(curves.curves().getFirst().values()).containsExactly(new double[] {40, 60, 60}, within(1e-9));
        assertThat(curves.from()).hasValueSatisfying(from -> assertThat(from).isEqualTo("2026-05-01T10:00+02:00"));
    }

    @Test
    void drawAlongTheLoadThatWasMeasuredElseTheOneThatWasSet() {
        record.getGeneratorSet().setRatedPower(Power.valueOf("8 kW"));
        record.getGeneratorSet().setPhases(PhaseSystem.SINGLE_PHASE);
        coolant(TrialRecords.step(record, "25 %"), 0, "60 degC").setPower(Power.valueOf("2.4 kW"));
        coolant(TrialRecords.step(record, "50 %"), 5, "61 degC");

        Curves curves = curves(ReadingTopic.COOLANT, Curves.Along.LOAD, UnitSystem.US);

        assertThat(curves.unit()).isEqualTo("degF");
        // 2.4 kW of 8 kW are 30 %
        assertThat(curves.curves().getFirst().along()).containsExactly(new double[] {30, 50}, within(1e-9));
        // 60 degC are 140 degF, 61 degC are 141.8 degF
        assertThat(curves.curves().getFirst().values()).containsExactly(new double[] {140, 141.8}, within(1e-9));
    }

    @Test
    void countReadingsThatHaveNoPlace() {
        LoadStep step = TrialRecords.MAKE.createLoadStep();
        record.getTrial().getLoadSteps().add(step);
        coolant(step, 0, "60 degC").setAt(null);

        assertThat(curves(ReadingTopic.COOLANT, Curves.Along.TIME, UnitSystem.SI).withoutPlace()).isEqualTo(1);
        assertThat(curves(ReadingTopic.COOLANT, Curves.Along.LOAD, UnitSystem.SI).withoutPlace()).isEqualTo(1);
        assertThat(curves(ReadingTopic.COOLANT, Curves.Along.TIME, UnitSystem.SI).curves()).isEmpty();
        assertThat(ReadingTopic.read(record)).containsExactly(ReadingTopic.COOLANT);
    }

    @Test
    void bringTheMakersLimit() {
        record.getGeneratorSet().setMakerLimits(TrialRecords.MAKE.createMakerLimits());
        record.getGeneratorSet().getMakerLimits().setMaximumCoolantTemperature(Temperature.valueOf("98 degC"));
        record.getGeneratorSet().getMakerLimits().setMinimumOilPressure(GaugePressure.valueOf("1 bar"));
        Reading reading = coolant(TrialRecords.step(record, "25 %"), 0, "80 degC");
        reading.setOilPressure(GaugePressure.valueOf("3.5 bar"));

        assertThat(curves(ReadingTopic.COOLANT, Curves.Along.TIME, UnitSystem.SI).limits()).singleElement().satisfies(limit -> {
            assertThat(limit.value()).isEqualTo(Temperature.valueOf("98 degC"));
            assertThat(limit.atMost()).isTrue();
            assertThat(limit.check()).isEmpty();
        });
        assertThat(curves(ReadingTopic.OIL_PRESSURE, Curves.Along.TIME, UnitSystem.SI).limits()).singleElement()
            .satisfies(limit -> assertThat(limit.atMost()).isFalse());
    }

    @Test
    void bringTheLimitThatACheckUsed() {
        record.setExhaust(TrialRecords.MAKE.createExhaustRun());
        record.getExhaust().setMeasuredBackPressure(GaugePressure.valueOf("4 kPa"));
        record.getGeneratorSet().setAspiration(garboard.model.Aspiration.NATURALLY_ASPIRATED);
        record.getExhaust().setTestTapFitted(Answer.YES);
        coolant(TrialRecords.step(record, "100 %"), 0, "80 degC").setBackPressure(GaugePressure.valueOf("4 kPa"));

        // Gerr, Boat Mechanical Systems Handbook: 2.5 inHg for a naturally aspirated engine
        assertThat(curves(ReadingTopic.BACK_PRESSURE, Curves.Along.LOAD, UnitSystem.SI).limits()).singleElement().satisfies(limit -> {
            assertThat(limit.check()).isEqualTo(Optional.of("EXHAUST-BACK-PRESSURE"));
            assertThat(limit.value().in("inHg")).isCloseTo(2.5, within(0.01));
        });
    }

    @Test
    void nameEachFieldOfAReadingOnceAmongTheTopics() {
        assertThat(java.util.Arrays.stream(ReadingTopic.values()).flatMap(topic -> topic.fields().stream()).toList())
            .doesNotHaveDuplicates()
            .containsExactlyInAnyOrderElementsOf(ReadingSheet.allColumns().stream().filter(ReadingSheet::isQuantity).toList())
            .contains(Literals.READING__FREQUENCY);
    }

    private Curves curves(ReadingTopic topic, Curves.Along along, UnitSystem units) {
        try (OpenRecord open = TrialRecords.of(record, CLOCK)) {
            return Curves.of(topic, along, record, open.verdicts().evaluation(), CustomaryUnits.of(units));
        }
    }
}
