// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import java.util.ArrayList;
import java.util.List;

import garboard.checks.Evaluation;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.RecordChange;
import garboard.session.verdicts.VerdictChange;
import garboard.workbench.Desk;

/** Takes a step back or forth, and shows where something changed by it, so that nothing changes out of sight. */
final class Retrace {

    private Retrace() {
    }

    static void take(Desk desk, OpenRecord record, Runnable step) {
        List<RecordChange> changes = new ArrayList<>();
        Evaluation before = record.verdicts().evaluation();
        try (Subscription told = record.edits().onChange(changes::add)) {
            step.run();
        }
        changes.stream().findFirst().ifPresent(change -> change.place()
            .ifPresentOrElse(desk::goTo, () -> VerdictChange.between(before, record.verdicts().evaluation()).stream()
                .filter(one -> one.after().isPresent()).findFirst().ifPresent(one -> desk.lookAt(one.key()))));
    }
}
