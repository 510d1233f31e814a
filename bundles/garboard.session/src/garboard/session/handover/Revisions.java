// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.Revision;
import garboard.session.OpenRecord;

/** The revisions of a record: numbered, with day, name and what changed. */
public final class Revisions {

    private Revisions() {
    }

    /** {@return the number that the next revision gets} */
    public static int next(CommissioningRecord record) {
        return record.getRevisions().stream().map(Revision::getNumber).filter(Objects::nonNull).mapToInt(Integer::intValue).max().orElse(0) + 1;
    }

    /** Records a revision. @return it, with its number */
    public static Revision record(OpenRecord open, LocalDate on, String by, String what, String label) {
        Revision revision = GarboardFactory.eINSTANCE.createRevision();
        revision.setNumber(next(open.record()));
        revision.setDate(on);
        revision.setBy(by.strip());
        revision.setDescription(what.strip());
        return open.edits().add(open.record(), List.of(Literals.COMMISSIONING_RECORD__REVISIONS), revision, label);
    }
}
