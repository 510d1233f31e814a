// SPDX-License-Identifier: EPL-2.0
package garboard.workbench;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;

import garboard.checks.Catalogue;
import garboard.model.Labels;
import garboard.model.io.RecordFile;
import garboard.session.Listeners;
import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.session.calculators.Calculators;
import garboard.session.form.Form;
import garboard.session.verdicts.VerdictKey;
import garboard.workbench.look.Palette;
import garboard.workbench.look.Settings;
import garboard.workbench.text.Texts;

/** What the parts of the window share: the open record, where the person is, texts, colours. In the context of the application. */
public final class Desk {

    private final Settings settings;
    private final Texts texts;
    private final Labels labels;
    private final CompletableFuture<Catalogue> catalogue;
    private final Clock clock;
    private final Listeners<Optional<OpenRecord>> opened = new Listeners<>();
    private final Listeners<Place> gone = new Listeners<>();
    private final Listeners<Palette> repainted = new Listeners<>();
    private final Listeners<VerdictKey> lookedAt = new Listeners<>();
    private Optional<OpenRecord> open = Optional.empty();
    private Optional<VerdictKey> verdict = Optional.empty();
    private Stop stop = Stop.VESSEL;
    private Palette palette = Palette.LIGHT;
    private Optional<Form> form = Optional.empty();
    private final Calculators calculators = new Calculators();
    private final Listeners<Path> written = new Listeners<>();
    private Optional<Path> report = Optional.empty();
    private Consumer<String> commands = command -> { };

    /** Where the person is. @param field the key of the field to show there, if one is asked for */
    public record Place(Stop stop, Optional<String> field) {
    }

    /** @param catalogue made in the background, since it takes longer than a window */
    public Desk(Settings settings, Texts texts, CompletableFuture<Catalogue> catalogue, Clock clock) {
        this.settings = settings;
        this.texts = texts;
        this.labels = Labels.in(texts.locale());
        this.catalogue = catalogue;
        this.clock = clock;
    }

    public Settings settings() {
        return settings;
    }

    /** {@return the texts of the package of a class} */
    public Texts.Of texts(Class<?> user) {
        return texts.of(user);
    }

    public Texts texts() {
        return texts;
    }

    /** {@return what fields and choices are called} */
    public Labels labels() {
        return labels;
    }

    public Clock clock() {
        return clock;
    }

    /** {@return the checks; waits for them if need be} */
    public Catalogue catalogue() {
        return catalogue.join();
    }

    /** {@return which fields stand where} */
    public Form form() {
        if (form.isEmpty()) {
            form = Optional.of(Form.read());
        }
        return form.get();
    }

    /** {@return the calculators, with what was typed into them since the program started} */
    public Calculators calculators() {
        return calculators;
    }

    // Commands --------------------------------------------------------------------------------------------------------

    /** Does what an entry of the menu does. @param command its id */
    public void perform(String command) {
        commands.accept(command);
    }

    /** Sets who carries commands out. */
    public void performBy(Consumer<String> performer) {
        commands = performer;
    }

    // The record ------------------------------------------------------------------------------------------------------

    public Optional<OpenRecord> open() {
        return open;
    }

    /** Shows a record in place of the one that is open. Whether that one is saved was asked before. */
    public void show(RecordFile content, Optional<Path> file) {
        show(OpenRecord.of(content, file, catalogue(), clock));
    }

    public void show(OpenRecord record) {
        open.ifPresent(OpenRecord::close);
        open = Optional.of(record);
        verdict = Optional.empty();
        report = Optional.empty();
        stop = Stop.VESSEL;
        opened.tell(open);
        gone.tell(new Place(stop, Optional.empty()));
    }

    public void close() {
        open.ifPresent(OpenRecord::close);
        open = Optional.empty();
        opened.tell(open);
    }

    /** {@return the subscription of a listener that is told when another record is open, or none} */
    public Listeners.Subscription onOpen(Consumer<? super Optional<OpenRecord>> listener) {
        return opened.add(listener);
    }

    /** {@return the report that was written last of the open record} */
    public Optional<Path> report() {
        return report;
    }

    /** Tells that a report of the open record was written. */
    public void reportWritten(Path file) {
        report = Optional.of(file);
        written.tell(file);
    }

    public Listeners.Subscription onReport(Consumer<? super Path> listener) {
        return written.add(listener);
    }

    // The place -------------------------------------------------------------------------------------------------------

    public Stop stop() {
        return stop;
    }

    public void goTo(Stop next) {
        stop = next;
        gone.tell(new Place(next, Optional.empty()));
    }

    /** Goes to the field with this key, or to the stop where it would be. */
    public void goTo(String field) {
        stop = Stop.of(field);
        gone.tell(new Place(stop, Optional.of(field)));
    }

    public Listeners.Subscription onGo(Consumer<? super Place> listener) {
        return gone.add(listener);
    }

    // The verdict -----------------------------------------------------------------------------------------------------

    /** {@return the verdict that the person looks at} */
    public Optional<VerdictKey> verdict() {
        return verdict;
    }

    /** Shows a verdict among the others. The focus stays where it is. */
    public void lookAt(VerdictKey key) {
        verdict = Optional.of(key);
        lookedAt.tell(key);
    }

    /** {@return the subscription of a listener that is told when the person looks at another verdict, or at the same again} */
    public Listeners.Subscription onLook(Consumer<? super VerdictKey> listener) {
        return lookedAt.add(listener);
    }

    // The look --------------------------------------------------------------------------------------------------------

    public Palette palette() {
        return palette;
    }

    public void setPalette(Palette now) {
        palette = now;
        repainted.tell(now);
    }

    public Listeners.Subscription onPalette(Consumer<? super Palette> listener) {
        return repainted.add(listener);
    }
}
