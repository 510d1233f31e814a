// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.time.Clock;
import java.util.Optional;

import garboard.checks.Catalogue;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.CrankingAttempt;
import garboard.model.ExhaustSectionRun;
import garboard.model.GarboardFactory;
import garboard.model.GeneratorSet;
import garboard.model.LoadStep;
import garboard.model.MufflerKind;
import garboard.model.Reading;
import garboard.model.SeacockState;
import garboard.model.io.RecordFile;
import garboard.practice.HandbookPractice;
import garboard.practice.SmallCraftStandards;
import garboard.quantity.Length;
import garboard.quantity.Ratio;
import garboard.quantity.RotationalSpeed;
import garboard.quantity.Temperature;
import garboard.quantity.TimeSpan;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;
import garboard.session.OpenRecord;

/** Records for the tests of the trial. */
final class TrialRecords {

    static final GarboardFactory MAKE = GarboardFactory.eINSTANCE;

    private TrialRecords() {
    }

    static CommissioningRecord empty() {
        return MAKE.createCommissioningRecord();
    }

    /** With an empty set and trial. */
    static CommissioningRecord withTrial() {
        CommissioningRecord record = empty();
        record.setGeneratorSet(MAKE.createGeneratorSet());
        record.setTrial(MAKE.createTrial());
        return record;
    }

    /**
     * A pump of 28 L/min at 1800 r/min that is cranked at 250 r/min, and a muffler of 8 L that keeps a quarter and takes back a hose of
     * 50.8 mm over 1.6 m.
     */
    static CommissioningRecord withMuffler() {
        CommissioningRecord record = withTrial();
        GeneratorSet set = record.getGeneratorSet();
        set.setRatedSpeed(RotationalSpeed.valueOf("1800 r/min"));
        set.setCrankingSpeed(RotationalSpeed.valueOf("250 r/min"));
        record.setRawWater(MAKE.createRawWaterCircuit());
        record.getRawWater().setPump(MAKE.createWaterPump());
        record.getRawWater().getPump().setRatedFlow(VolumeFlow.valueOf("28 L/min"));
        record.setExhaust(MAKE.createExhaustRun());
        record.getExhaust().setMuffler(MAKE.createMuffler());
        record.getExhaust().getMuffler().setKind(MufflerKind.LIFT_MUFFLER);
        record.getExhaust().getMuffler().setVolumeToInlet(Volume.valueOf("8 L"));
        record.getExhaust().getMuffler().setResidueFraction(Ratio.valueOf("25 %"));
        ExhaustSectionRun lift = MAKE.createExhaustSectionRun();
        lift.setSlopesBackToMuffler(Answer.YES);
        lift.setBore(Length.valueOf("50.8 mm"));
        lift.setLength(Length.valueOf("1.6 m"));
        record.getExhaust().getSections().add(lift);
        return record;
    }

    static CrankingAttempt tried(CommissioningRecord record, String duration, SeacockState seacock) {
        CrankingAttempt attempt = MAKE.createCrankingAttempt();
        attempt.setDuration(TimeSpan.valueOf(duration));
        attempt.setSeacock(seacock);
        attempt.setFired(Answer.NO);
        record.getTrial().getAttempts().add(attempt);
        return attempt;
    }

    static LoadStep step(CommissioningRecord record, String load) {
        LoadStep step = MAKE.createLoadStep();
        step.setLoad(Ratio.valueOf(load));
        record.getTrial().getLoadSteps().add(step);
        return step;
    }

    /** A reading of the coolant at a minute of an hour. */
    static Reading coolant(LoadStep step, int minute, String temperature) {
        Reading reading = MAKE.createReading();
        reading.setAt(java.time.OffsetDateTime.parse("2026-05-01T10:00+02:00").plusMinutes(minute));
        reading.setCoolantTemperature(Temperature.valueOf(temperature));
        reading.setInstruments("instrument-1");
        step.getReadings().add(reading);
        return reading;
    }

    static OpenRecord of(CommissioningRecord record, Clock clock) {
        return OpenRecord.of(RecordFile.of(record), Optional.empty(), Catalogue.of(new HandbookPractice(), new SmallCraftStandards()), clock);
    }
}
