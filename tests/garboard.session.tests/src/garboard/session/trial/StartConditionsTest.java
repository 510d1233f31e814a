// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

import org.junit.jupiter.api.Test;

import garboard.checks.Gravity;
import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.SeacockState;
import garboard.model.VesselService;
import garboard.quantity.Length;
import garboard.session.OpenRecord;
import garboard.session.trial.StartConditions.Condition;
import garboard.session.trial.StartConditions.Topic;

class StartConditionsTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-01T08:00:00Z"), ZoneOffset.UTC);

    private final CommissioningRecord record = TrialRecords.withMuffler();

    @Test
    void sayWhatOfTheMufflerFallsShort() {
        // 2.4 m of 76.2 mm hold 10.945 L: more than the 8 L of the muffler, whatever stays in it. Recomputed from pi/4 D^2 L.
        record.getExhaust().getSections().getFirst().setBore(Length.valueOf("76.2 mm"));
        record.getExhaust().getSections().getFirst().setLength(Length.valueOf("2.4 m"));

        Condition muffler = condition(Topic.MUFFLER);

        assertThat(muffler.fallsShort()).isTrue();
        assertThat(muffler.standing()).isEqualTo(Standing.FALLS_SHORT);
        assertThat(muffler.open()).extracting(verdict -> verdict.check().id()).contains("EXHAUST-DRAIN-BACK");
        assertThat(conditions().shortfalls()).extracting(verdict -> verdict.check().id()).contains("EXHAUST-DRAIN-BACK");
    }

    @Test
    void putWhatEndangersPeopleTogetherAndFirst() {
        record.setVessel(TrialRecords.MAKE.createVessel());
        record.getVessel().setService(VesselService.RECREATIONAL);
        record.getExhaust().setGasTight(Answer.NO);

        StartConditions conditions = conditions();

        assertThat(conditions.conditions().getFirst().topic()).isEqualTo(Topic.PEOPLE);
        assertThat(conditions.conditions().getFirst().open().getFirst().check().id()).isEqualTo("EXHAUST-GAS-TIGHT");
        assertThat(conditions.endangersPeople()).isTrue();
        assertThat(conditions.conditions()).filteredOn(condition -> condition.topic() != Topic.PEOPLE)
            .allMatch(condition -> condition.open().stream().allMatch(verdict -> verdict.check().gravity() == Gravity.DANGER_TO_MACHINE));
    }

    @Test
    void countWhatIsNotEnteredWithoutCallingItAShortfall() {
        StartConditions conditions = conditions(TrialRecords.empty());

        assertThat(conditions.shortfalls()).isEmpty();
        assertThat(conditions.cannotTell()).isPositive();
        assertThat(conditions.endangersPeople()).isFalse();
        assertThat(conditions.conditions().getFirst().holds()).isFalse();
        assertThat(conditions.conditions().getFirst().fallsShort()).isFalse();
    }

    @Test
    void leaveTheTrialItselfOut() {
        TrialRecords.tried(record, "90 s", SeacockState.OPEN);

        assertThat(conditions().shortfalls()).extracting(verdict -> verdict.check().id()).doesNotContain("EXHAUST-CRANKING-TOTAL");
    }

    private Condition condition(Topic topic) {
        return conditions().conditions().stream().filter(found -> found.topic() == topic).findFirst().orElseThrow();
    }

    private StartConditions conditions() {
        return conditions(record);
    }

    private static StartConditions conditions(CommissioningRecord of) {
        try (OpenRecord open = TrialRecords.of(of, CLOCK)) {
            return StartConditions.of(open.verdicts().evaluation());
        }
    }
}
