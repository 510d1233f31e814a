// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.checks.Evaluation;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.Answer;
import garboard.model.FuelKind;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.io.RecordFile;
import garboard.session.verdicts.Judged;

class StopTest {

    @ParameterizedTest
    @CsvSource({"'', RECORD", "title, RECORD", "parties[party-1].name, RECORD", "instruments, RECORD", "vessel.beam, VESSEL",
        "generatorSet.makerLimits.maximumHeel, GENERATOR_SET", "startingBattery.cables[cable-1].length, STARTING_BATTERY",
        "fuelSupply.tank.top.z, FUEL", "rawWater.hoses[hose-1].bore, RAW_WATER", "exhaust, EXHAUST", "ventilation.ducts, VENTILATION",
        "mounting.bedsRigid, MOUNTING", "acOutput.outputCable.length, AC_OUTPUT", "alarms.alarms[alarm-1].kind, ALARMS",
        "inspections[answer-1].note, INSPECTION", "photographs[photo-1].caption, PHOTOGRAPHS", "trial, FIRST_START", "trial.attempts, FIRST_START",
        "trial.loadSteps[load-step-1].readings[reading-1].frequency, LOAD_TRIAL", "trial.seaRun.heelPort, SEA_RUN", "upkeep.tasks, UPKEEP",
        "signatures[signature-1].name, SIGN_OFF", "acceptances[acceptance-1].reason, SIGN_OFF", "trialled, RECORD"})
    void isWhereAPlaceIsEntered(String key, Stop stop) {
        assertThat(Stop.of(key)).isEqualTo(stop);
    }

    @Test
    void isWhereAPartOfAClassWouldBeEntered() {
        assertThat(Stop.of(Literals.COMMISSIONING_RECORD)).isEqualTo(Stop.RECORD);
        assertThat(Stop.of(Literals.SEPARATOR_DRAIN)).isEqualTo(Stop.EXHAUST);
        assertThat(Stop.of(Literals.READING)).isEqualTo(Stop.LOAD_TRIAL);
        assertThat(Stop.of(Literals.SEA_RUN)).isEqualTo(Stop.SEA_RUN);
        assertThat(Stop.of(Literals.SIGNATURE)).isEqualTo(Stop.SIGN_OFF);
    }

    @Test
    void standsInOneStage() {
        assertThat(Arrays.stream(Stop.Stage.values()).flatMap(stage -> stage.stops().stream())).containsExactly(Stop.values());
    }

    @Test
    void followsTheOneBeforeIt() {
        assertThat(Stop.RECORD.previous()).isEmpty();
        assertThat(Stop.RECORD.next()).contains(Stop.VESSEL);
        assertThat(Stop.FIRST_START.previous()).contains(Stop.PHOTOGRAPHS);
        assertThat(Stop.CALCULATORS.next()).isEmpty();
    }

    /** The stop of a verdict is that of the system which its subject lies in, and each verdict counts once. */
    @ParameterizedTest
    @ValueSource(strings = {"motor-cruiser", "sailing-yacht", "passenger-boat"})
    void countsEachVerdictOfAnExampleAtTheSystemOfItsSubject(String name) {
        Evaluation evaluation = Judged.example(name).verdicts().evaluation();
        for (Verdict verdict : evaluation.verdicts()) {
            Stop stop = StopStanding.stop(verdict);
            Optional<String> system = stop.part().map(part -> part.getName());
            assertThat(system).as(verdict.check().id()).hasValueSatisfying(part -> assertThat(verdict.subjectKey()).startsWith(part));
        }
        Map<Stop, StopStanding> standings = StopStanding.of(evaluation);
        assertThat(standings.values().stream().mapToInt(StopStanding::needAction).sum())
            .isEqualTo((int) evaluation.verdicts().stream().filter(Verdict::needsAction).count()).isPositive();
        assertThat(standings.values().stream().mapToInt(StopStanding::cannotTell).sum()).isEqualTo((int) evaluation.count(Standing.CANNOT_TELL));
        assertThat(standings.values().stream().mapToInt(StopStanding::meets).sum())
            .isEqualTo((int) (evaluation.count(Standing.MEETS) + evaluation.count(Standing.ACCEPTED)));
    }

    /** With nothing entered no verdict falls to the record as a whole: each has a system where its subject would be entered. */
    @Test
    void countsTheVerdictsOfAnEmptyRecordWhereTheirSubjectWouldBeEntered() {
        OpenRecord empty = OpenRecord.of(RecordFile.create(), Optional.empty(), Judged.allPractices(), Judged.CLOCK);
        assertThat(empty.verdicts().evaluation().verdicts()).isNotEmpty().allSatisfy(verdict -> {
            assertThat(verdict.subjectKey()).isEmpty();
            assertThat(StopStanding.stop(verdict)).as(verdict.check().id()).isEqualTo(Stop.of(verdict.check().subjectType())).isNotEqualTo(Stop.RECORD);
        });
    }

    @Test
    void tellsTheWorstVerdictAndLeavesOutWhatDoesNotApply() {
        Map<Stop, StopStanding> standings = StopStanding.of(Judged.made().verdicts().evaluation());

        assertThat(standings.get(Stop.RAW_WATER)).satisfies(water -> {
            assertThat(water.worst().orElseThrow().check().id()).isEqualTo("HOSE-CLAMPED");
            assertThat(List.of(water.needAction(), water.cannotTell(), water.meets())).containsExactly(2, 1, 1);
        });
        assertThat(standings.get(Stop.EXHAUST)).isEqualTo(new StopStanding(Optional.empty(), 0, 0, 0));
    }

    @Test
    void warnsOfWhatCanHurtThereAndOfVapourUntilTheFuelIsKnown() {
        var record = GarboardFactory.eINSTANCE.createCommissioningRecord();
        assertThat(Caution.at(Stop.FUEL, record)).contains(Caution.GASOLINE_VAPOUR);
        record.setGeneratorSet(GarboardFactory.eINSTANCE.createGeneratorSet());
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        assertThat(Caution.at(Stop.FUEL, record)).contains(Caution.FUEL_FIRE);
        record.setVessel(GarboardFactory.eINSTANCE.createVessel());
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        assertThat(Caution.at(Stop.FIRST_START, record)).contains(Caution.GASOLINE_VAPOUR);
        assertThat(Caution.at(Stop.EXHAUST, record)).contains(Caution.CARBON_MONOXIDE);
        assertThat(Caution.at(Stop.CALCULATORS, record)).isEmpty();
    }
}
