// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustBend;
import garboard.model.ExhaustBendKind;
import garboard.model.ExhaustRun;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;
import garboard.model.GarboardFactory;
import garboard.model.MufflerKind;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

/** Exhausts for tests, with nothing entered beyond what is named. */
final class ExhaustFixture {

    private ExhaustFixture() {
    }

    static ExhaustRun exhaust(CommissioningRecord record) {
        return record.getExhaust();
    }

    static CommissioningRecord muffler(MufflerKind kind) {
        return muffler(Installation.empty(), kind);
    }

    static CommissioningRecord muffler(CommissioningRecord record, MufflerKind kind) {
        exhaust(record).getMuffler().setKind(kind);
        return record;
    }

    static CommissioningRecord liftMuffler() {
        return muffler(MufflerKind.LIFT_MUFFLER);
    }

    /** Adds a part of the run, called run-1, run-2 and so on. */
    static ExhaustSectionRun add(CommissioningRecord record, ExhaustSection section) {
        ExhaustSectionRun run = GarboardFactory.eINSTANCE.createExhaustSectionRun();
        run.setId("run-" + (exhaust(record).getSections().size() + 1));
        run.setSection(section);
        exhaust(record).getSections().add(run);
        return run;
    }

    /** Adds a part with bore and length. */
    static ExhaustSectionRun add(CommissioningRecord record, ExhaustSection section, String bore, String length) {
        ExhaustSectionRun run = add(record, section);
        run.setBore(Length.valueOf(bore));
        run.setLength(Length.valueOf(length));
        return run;
    }

    /** Adds a part that drains back into the muffler. */
    static ExhaustSectionRun addDrainingBack(CommissioningRecord record, String bore, String length) {
        ExhaustSectionRun run = add(record, ExhaustSection.MUFFLER_TO_CREST, bore, length);
        run.setSlopesBackToMuffler(Answer.YES);
        return run;
    }

    static ExhaustBend bend(ExhaustSectionRun run, ExhaustBendKind kind, int count) {
        ExhaustBend bend = GarboardFactory.eINSTANCE.createExhaustBend();
        bend.setId(run.getId() + "-bend-" + (run.getBends().size() + 1));
        bend.setKind(kind);
        bend.setCount(count);
        run.getBends().add(bend);
        return bend;
    }
}
