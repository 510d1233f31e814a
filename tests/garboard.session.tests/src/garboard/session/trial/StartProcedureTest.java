// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.model.FuelSystem;
import garboard.model.GarboardPackage.Literals;
import garboard.model.MufflerKind;
import garboard.model.PhaseSystem;
import garboard.model.ProcedureStep;
import garboard.model.SiphonBreakKind;
import garboard.session.Field;
import garboard.session.OpenRecord;

class StartProcedureTest {

    private final HandClock clock = HandClock.at("2026-05-01T10:00:40+02:00");
    private final OpenRecord open = TrialRecords.of(TrialRecords.empty(), clock);
    private final StartProcedure procedure = new StartProcedure(open, clock, StartStep::name);

    @Test
    void showsEveryStepOfAnUnknownInstallationAndTouchesNothing() {
        List<StartLine> lines = procedure.lines();

        assertThat(lines).extracting(line -> line.guided().orElseThrow()).containsExactly(StartStep.values());
        assertThat(lines).allMatch(line -> line.stored().isEmpty() && line.answer() == Answer.UNANSWERED);
        assertThat(lines.get(6).concern()).isEqualTo(Concern.until("generatorSet.fuel"));
        assertThat(open.record().getTrial()).isNull();
        assertThat(open.edits().canUndo()).isFalse();
    }

    @Test
    void takesAllStepsInWithTheFirstAnswerAsOneStepToUndo() {
        procedure.answer(line(StartStep.PEOPLE), Answer.YES, "Done");

        List<ProcedureStep> steps = open.record().getTrial().getProcedure();
        assertThat(steps).extracting(ProcedureStep::getId).containsExactly(java.util.Arrays.stream(StartStep.values()).map(StartStep::id)
            .toArray(String[]::new));
        assertThat(steps.get(1).getDone()).isEqualTo(Answer.YES);
        assertThat(steps.get(1).getAt()).isEqualTo(OffsetDateTime.parse("2026-05-01T10:00+02:00"));
        assertThat(steps.get(1).getNumber()).isEqualTo(2);
        assertThat(steps.get(1).getStep()).isEqualTo("PEOPLE");
        assertThat(steps.getFirst().getDone()).isEqualTo(Answer.UNANSWERED);
        open.edits().undo();
        assertThat(open.record().getTrial()).isNull();
    }

    @Test
    void leavesOutWhatDoesNotConcernADieselSetWithoutASiphonBreak() {
        diesel();

        assertThat(procedure.lines()).extracting(line -> line.guided().orElseThrow())
            .doesNotContain(StartStep.BLOWER, StartStep.PRIME_BY_KEY, StartStep.PRIME_CARBURETTOR, StartStep.SIPHON_BREAK, StartStep.ROTATION)
            .contains(StartStep.BLEED, StartStep.MUFFLER_LEVEL, StartStep.RAW_WATER);
    }

    @Test
    void asksForBlowerAndKeyOfAPetrolSet() {
        CommissioningRecord record = open.record();
        record.setGeneratorSet(TrialRecords.MAKE.createGeneratorSet());
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getGeneratorSet().setFuelSystem(FuelSystem.PORT_INJECTION);

        assertThat(procedure.lines()).extracting(line -> line.guided().orElseThrow())
            .contains(StartStep.BLOWER, StartStep.PRIME_BY_KEY).doesNotContain(StartStep.BLEED, StartStep.PRIME_CARBURETTOR);
        assertThat(line(StartStep.BLOWER).concern()).isEqualTo(Concern.YES);
    }

    @Test
    void asksForTheBlowerBesideAnotherPetrolEngine() {
        diesel();
        open.record().getVessel().setGasolineEngineAboard(Answer.YES);

        assertThat(procedure.lines()).extracting(line -> line.guided().orElseThrow()).contains(StartStep.BLOWER);
    }

    @Test
    void insertsAStepThatComesToConcernTheInstallationAtItsPlace() {
        diesel();
        procedure.answer(line(StartStep.CONDITIONS), Answer.YES, "Done");
        open.record().getVessel().setGasolineEngineAboard(Answer.YES);

        assertThat(line(StartStep.BLOWER).stored()).isEmpty();
        assertThat(line(StartStep.BLOWER).number()).isEqualTo(line(StartStep.OUTPUT_OPEN).number() + 1);
        procedure.answer(line(StartStep.BLOWER), Answer.YES, "Done");

        assertThat(open.record().getTrial().getProcedure()).extracting(ProcedureStep::getId)
            .containsSubsequence("start-output-open", "start-blower", "start-raw-water");
        assertThat(open.record().getTrial().getProcedure()).extracting(ProcedureStep::getNumber)
            .containsExactlyElementsOf(java.util.stream.IntStream.rangeClosed(1, open.record().getTrial().getProcedure().size()).boxed().toList());
    }

    @Test
    void keepsTheStepsThatARecordBringsWithIt() {
        own("step-1", "Oil looked at");
        own("step-2", "Cranked");

        assertThat(procedure.bringsItsOwn()).isTrue();
        assertThat(procedure.lines()).extracting(StartLine::id).containsExactly("step-1", "step-2");
        procedure.answer(procedure.lines().getFirst(), Answer.YES, "Done");
        assertThat(open.record().getTrial().getProcedure()).hasSize(2);

        procedure.takeIn("Take in");
        assertThat(open.record().getTrial().getProcedure()).hasSize(2 + StartStep.values().length);
        assertThat(open.record().getTrial().getProcedure()).extracting(ProcedureStep::getStep).startsWith("Oil looked at", "Cranked", "CONDITIONS");
        assertThat(open.record().getTrial().getProcedure().get(1).getNumber()).as("a number of the record's own").isNull();
    }

    @Test
    void staysWithAStepThatNoLongerConcernsTheInstallation() {
        procedure.answer(line(StartStep.BLOWER), Answer.YES, "Done");
        diesel();

        assertThat(line(StartStep.BLOWER).concern().holds()).isFalse();
        assertThat(line(StartStep.BLOWER).answer()).isEqualTo(Answer.YES);
    }

    @Test
    void saysWhatStandsOpenBeforeAStepThatIsDone() {
        procedure.answer(line(StartStep.CONDITIONS), Answer.YES, "Done");
        procedure.answer(line(StartStep.FLUIDS), Answer.YES, "Done");

        assertThat(line(StartStep.CONDITIONS).stillOpen()).isEmpty();
        assertThat(line(StartStep.FLUIDS).stillOpen()).hasValue(line(StartStep.PEOPLE).number());
        procedure.answer(line(StartStep.PEOPLE), Answer.NOT_APPLICABLE, "Does not apply");
        assertThat(line(StartStep.FLUIDS).stillOpen()).isEmpty();
        assertThat(procedure.next().orElseThrow().guided()).contains(StartStep.LEAKS_COLD);
    }

    @Test
    void saysWhatWasDoneLaterThoughItComesBefore() {
        procedure.answer(line(StartStep.FLUIDS), Answer.YES, "Done");
        clock.pass(Duration.ofMinutes(5));
        procedure.answer(line(StartStep.PEOPLE), Answer.YES, "Done");

        assertThat(line(StartStep.FLUIDS).laterBefore()).hasValue(line(StartStep.PEOPLE).number());
        assertThat(line(StartStep.PEOPLE).laterBefore()).isEmpty();
    }

    @Test
    void keepsATimeThatWasCorrectedByHand() {
        ProcedureStep step = procedure.answer(line(StartStep.FLUIDS), Answer.YES, "Done");
        open.edits().set(Field.of(step, Literals.PROCEDURE_STEP__AT), OffsetDateTime.parse("2026-05-01T09:30+02:00"), "Time");

        procedure.answer(line(StartStep.FLUIDS), Answer.NO, "Not done");
        assertThat(step.getAt()).isEqualTo(OffsetDateTime.parse("2026-05-01T09:30+02:00"));
        procedure.answer(line(StartStep.FLUIDS), Answer.UNANSWERED, "Open again");
        assertThat(step.getAt()).isNull();
        assertThat(step.getDone()).isEqualTo(Answer.UNANSWERED);
    }

    @Test
    void addsToANoteWhatTheRecordShouldRemember() {
        procedure.note(line(StartStep.CONDITIONS), "Open then: A", "Note");
        procedure.note(line(StartStep.CONDITIONS), "Open then: B", "Note");

        assertThat(line(StartStep.CONDITIONS).stored().orElseThrow().getNote()).isEqualTo("Open then: A\nOpen then: B");
    }

    @Test
    void givesEachStepAnIdOfItsOwnThatARecordCanHold() {
        assertThat(StartStep.values()).extracting(StartStep::id).doesNotHaveDuplicates()
            .allMatch(id -> id.matches("start-[a-z]+(-[a-z]+)*") && garboard.model.io.Items.isId(id));
    }

    private StartLine line(StartStep step) {
        return procedure.lines().stream().filter(line -> line.guided().filter(step::equals).isPresent()).findFirst().orElseThrow();
    }

    private void own(String id, String words) {
        if (open.record().getTrial() == null) {
            open.record().setTrial(TrialRecords.MAKE.createTrial());
        }
        ProcedureStep step = TrialRecords.MAKE.createProcedureStep();
        step.setId(id);
        step.setStep(words);
        open.record().getTrial().getProcedure().add(step);
    }

    private void diesel() {
        CommissioningRecord record = open.record();
        record.setVessel(TrialRecords.MAKE.createVessel());
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        record.setGeneratorSet(TrialRecords.MAKE.createGeneratorSet());
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        record.getGeneratorSet().setFuelSystem(FuelSystem.MECHANICAL_INJECTION);
        record.getGeneratorSet().setPhases(PhaseSystem.SINGLE_PHASE);
        record.setExhaust(TrialRecords.MAKE.createExhaustRun());
        record.getExhaust().setMuffler(TrialRecords.MAKE.createMuffler());
        record.getExhaust().getMuffler().setKind(MufflerKind.LIFT_MUFFLER);
        record.setRawWater(TrialRecords.MAKE.createRawWaterCircuit());
        record.getRawWater().setSiphonBreak(TrialRecords.MAKE.createSiphonBreak());
        record.getRawWater().getSiphonBreak().setKind(SiphonBreakKind.NONE);
    }
}
