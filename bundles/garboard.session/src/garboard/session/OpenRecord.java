// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import garboard.checks.Catalogue;
import garboard.checks.Remedy;
import garboard.checks.Verdict;
import garboard.model.Acceptance;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.io.Items;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordWriteException;

/** A record that a person works on: its content, where it is kept, what can be undone, what the checks say of it. */
public final class OpenRecord implements AutoCloseable {

    private final RecordFile content;
    private final Edits edits;
    private final LiveVerdicts verdicts;
    private final Items.Watch ids;
    private final Listeners<OpenRecord> saves = new Listeners<>();
    private Optional<Path> file;
    private boolean recovered;

    private OpenRecord(RecordFile content, Optional<Path> file, Catalogue catalogue, Clock clock) {
        this.content = content;
        this.file = file;
        Items items = Items.of(content.record());
        // A place with an item in it must have the same key for as long as the record is open, also after the item was out of it.
        items.assign();
        this.ids = items.watch();
        this.edits = new Edits(content.record());
        this.verdicts = new LiveVerdicts(content.record(), catalogue, clock);
        edits.onChange(verdicts::follow);
    }

    /** @param file where the record was read from; nothing for a new one, an example, or one out of a workbook */
    public static OpenRecord of(RecordFile content, Optional<Path> file, Catalogue catalogue, Clock clock) {
        return new OpenRecord(content, file, catalogue, clock);
    }

    /** {@return what a crash left, to be worked on again: it counts as not saved} */
    public static OpenRecord recovered(RecordFile content, Optional<Path> file, Catalogue catalogue, Clock clock) {
        var open = new OpenRecord(content, file, catalogue, clock);
        open.recovered = true;
        return open;
    }

    public CommissioningRecord record() {
        return content.record();
    }

    public RecordFile content() {
        return content;
    }

    public Optional<Path> file() {
        return file;
    }

    public Edits edits() {
        return edits;
    }

    public LiveVerdicts verdicts() {
        return verdicts;
    }

    /** {@return whether closing it now would lose something} */
    public boolean unsaved() {
        return recovered || edits.unsaved();
    }

    /** {@return the subscription of a listener that is told after each save} */
    public Listeners.Subscription onSaved(Consumer<? super OpenRecord> listener) {
        return saves.add(listener);
    }

    /** Writes the record and keeps it there from now on. */
    public void save(Path target) throws RecordWriteException {
        content.save(target);
        file = Optional.of(target);
        recovered = false;
        edits.saved();
        saves.tell(this);
    }

    /** Makes the changes that a computed remedy names, in one step. */
    public void apply(Remedy remedy, String label) {
        edits.setAll(remedy.changes().stream().map(change -> new Edits.Setting(change.target(), change.feature(), change.value())).toList(), label);
    }

    /**
     * Records who takes responsibility for a shortfall and why, in place of an earlier acceptance of the same. It never hides the
     * shortfall; see {@link Verdict#acceptance}.
     */
    public void accept(Verdict verdict, Acceptor acceptor, String label) {
        Acceptance acceptance = GarboardFactory.eINSTANCE.createAcceptance();
        acceptance.setCheck(verdict.check().id());
        acceptance.setSubject(verdict.subjectKey());
        acceptance.setAcceptedBy(acceptor.name());
        acceptance.setReason(acceptor.reason());
        acceptance.setAcceptedOn(acceptor.on());
        acceptor.until().ifPresent(acceptance::setUntil);
        List<Acceptance> earlier = acceptances(verdict).stream().filter(given -> verdict.subjectKey().equals(given.getSubject())).toList();
        edits.together(label, () -> {
            edits.remove(earlier, label);
            edits.add(record(), List.of(Literals.COMMISSIONING_RECORD__ACCEPTANCES), acceptance, label);
        });
    }

    /** Takes back every acceptance that speaks of a shortfall, also one that speaks of all places that the check judges. */
    public void withdraw(Verdict verdict, String label) {
        edits.remove(acceptances(verdict), label);
    }

    /** {@return the acceptances that speak of a verdict, whether they count or not} */
    public List<Acceptance> acceptances(Verdict verdict) {
        return record().getAcceptances().stream().filter(given -> verdict.check().id().equals(given.getCheck()))
            .filter(given -> given.getSubject() == null || given.getSubject().isBlank() || given.getSubject().equals(verdict.subjectKey())).toList();
    }

    /** Who accepts a shortfall, why, and until when. */
    public record Acceptor(String name, String reason, LocalDate on, Optional<LocalDate> until) {
    }

    /** {@return a field by its key, also one below parts that do not exist yet; nothing when the key names no field of this record} */
    public Optional<Field> field(String key) {
        return RecordKey.of(record(), key).flatMap(RecordKey::field);
    }

    @Override
    public void close() {
        ids.close();
    }
}
