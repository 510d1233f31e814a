// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

import garboard.session.Edits;
import garboard.session.Field;
import garboard.session.OpenRecord;
import garboard.session.entry.EntryReader;
import garboard.session.entry.Reading;
import garboard.session.entry.Refusal;
import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/** What the editors of one sheet have in common. */
final class FieldContext {

    /** Under this name a control carries the field that it edits, for the help and for whoever asks. */
    static final String FIELD = "garboard.field";

    private final OpenRecord record;
    private final Desk desk;
    private final Texts.Of texts;
    private EntryReader reader;

    FieldContext(OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
        this.texts = desk.texts(FieldContext.class);
    }

    OpenRecord record() {
        return record;
    }

    Edits edits() {
        return record.edits();
    }

    Desk desk() {
        return desk;
    }

    Texts.Of texts() {
        return texts;
    }

    /** {@return the reader for the units that are preferred now} */
    EntryReader reader() {
        if (reader == null || reader.system() != desk.settings().units()) {
            reader = new EntryReader(desk.settings().units(), desk.labels(), desk.clock());
        }
        return reader;
    }

    /** {@return what a field is called} */
    String name(Field field) {
        return desk.labels().label(field.attribute());
    }

    /** {@return what the step of filling in a field is called in the menu of edits} */
    String step(Field field) {
        return texts.get("step.enter", name(field));
    }

    /** {@return what stands quietly in the field while it is empty: the unit of a bare number, how a date is written} */
    Optional<String> hint(Field field) {
        Class<?> type = field.attribute().getEAttributeType().getInstanceClass();
        if (type == LocalDate.class) {
            return Optional.of(texts.get("hint.date"));
        }
        return type == OffsetDateTime.class ? Optional.of(texts.get("hint.moment")) : reader().unit(field.attribute());
    }

    /** {@return what is wrong, in a sentence} */
    String words(Refusal refusal) {
        Object[] facts = refusal.facts().toArray();
        return texts.get("refused." + refusal.reason().name(), facts);
    }

    /** {@return how an entry can go on, when there is anything to say} */
    Optional<String> goesOn(Reading.Begun begun) {
        List<String> units = begun.goesOn();
        return units.isEmpty() ? Optional.empty() : Optional.of(texts.get("goesOn", String.join(", ", units)));
    }

    /** Makes a control known: to the help by its field, to tests by its id, to a screen reader by a name and a description. */
    void introduce(Control control, Field field, java.util.function.Supplier<String> name, java.util.function.Supplier<String> description) {
        control.setData(FIELD, field);
        control.setData("garboard.id", "field:" + field.key());
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name.get();
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = description.get();
            }
        });
    }
}
