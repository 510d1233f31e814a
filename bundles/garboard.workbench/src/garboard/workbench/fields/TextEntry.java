// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

import garboard.quantity.Quantity;
import garboard.session.Field;
import garboard.session.Typing;
import garboard.session.entry.Reading;

/**
 * A text control in which one field is typed. The record follows each letter; what the person typed stays as it is while it means what the
 * record says, and changes when the record says something else. The unit is added to a bare number when the person goes on.
 */
final class TextEntry {

    private final Text text;
    private final Field field;
    private final FieldContext context;
    private final Runnable changed;
    private Typing typing;
    private String before = "";
    private boolean showing;
    private boolean focused;
    private Reading reading = new Reading.Empty();

    /** @param changed told after each letter and when what is to be said of the entry may have changed */
    TextEntry(Text text, Field field, FieldContext context, Runnable changed) {
        this.text = text;
        this.field = field;
        this.context = context;
        this.changed = changed;
        this.typing = newTyping();
        text.addListener(SWT.Modify, event -> typed());
        text.addListener(SWT.FocusIn, event -> begin());
        text.addListener(SWT.FocusOut, event -> finish());
        text.addListener(SWT.Traverse, this::traverse);
        show();
    }

    Field field() {
        return field;
    }

    Text control() {
        return text;
    }

    private Typing newTyping() {
        return context.edits().typing(field, context.step(field));
    }

    /** Shows what the record says, unless the text means just that. */
    void show() {
        hint();
        String now = context.reader().shown(context.edits(), field);
        boolean same = text.getText().equals(now) || focused && meansTheRecord();
        if (!same) {
            set(now);
        }
        if (!same || !focused) {
            reading = read();
        }
    }

    /** What stands quietly in the empty field; it follows the units that are preferred. */
    private void hint() {
        String now = (text.getStyle() & SWT.MULTI) == 0 ? context.hint(field).orElse("") : text.getMessage();
        if (!text.getMessage().equals(now)) {
            text.setMessage(now);
        }
    }

    private boolean meansTheRecord() {
        return switch (read()) {
            case Reading.Empty empty -> context.edits().unread(field).isEmpty() && field.value().isEmpty();
            case Reading.Entered entered -> context.edits().unread(field).isEmpty() && field.value().filter(entered.value()::equals).isPresent();
            case Reading.Begun begun -> context.edits().unread(field).filter(text.getText()::equals).isPresent();
            case Reading.Refused refused -> context.edits().unread(field).filter(text.getText()::equals).isPresent();
        };
    }

    private Reading read() {
        return context.reader().read(field.attribute(), text.getText());
    }

    private void set(String words) {
        showing = true;
        int caret = text.getCaretPosition();
        text.setText(words);
        if (focused) {
            text.setSelection(Math.min(caret, words.length()));
        }
        showing = false;
    }

    private void typed() {
        if (showing) {
            return;
        }
        reading = read();
        switch (reading) {
            case Reading.Empty empty -> typing.clear();
            case Reading.Entered entered -> typing.enter(entered.value());
            case Reading.Begun begun -> typing.leaveUnread(text.getText());
            case Reading.Refused refused -> typing.leaveUnread(text.getText());
        }
        changed.run();
    }

    private void begin() {
        focused = true;
        before = text.getText();
        typing = newTyping();
        reading = read();
        if ((text.getStyle() & SWT.MULTI) == 0) {
            text.selectAll(); // who comes with the keyboard writes over what stands there; a click sets the caret afterwards
        }
        changed.run();
    }

    /** The person goes on: the unit that a bare number was taken in is written out, and half an entry is now a wrong one. */
    private void finish() {
        focused = false;
        if (reading instanceof Reading.Entered entered && entered.unitAdded().isPresent() && meansTheRecord()) {
            set(context.reader().written(field.attribute(), entered.value()));
        }
        reading = read();
        changed.run();
    }

    private void traverse(Event event) {
        boolean many = (text.getStyle() & SWT.MULTI) != 0;
        if (event.detail == SWT.TRAVERSE_ESCAPE && !text.getText().equals(before)) {
            event.doit = false;
            restore();
        } else if (event.detail == SWT.TRAVERSE_RETURN && !many && !(text.getParent() instanceof Table)) {
            // In a table Enter goes down, which is for the table to do.
            event.doit = false;
            text.traverse(SWT.TRAVERSE_TAB_NEXT);
        } else if (many && (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS)) {
            event.doit = true;
        }
    }

    /** Puts back what stood there when the person came. */
    void restore() {
        text.setText(before);
        text.selectAll();
    }

    /** {@return what is to be said of the entry now: while it is typed, a beginning is no fault yet} */
    Optional<Editor.Message> message() {
        return switch (reading) {
            case Reading.Begun begun when focused -> context.goesOn(begun).map(words -> new Editor.Message(words, false));
            case Reading.Begun begun -> Optional.of(new Editor.Message(context.words(begun.asItStands()), true));
            case Reading.Refused refused -> Optional.of(new Editor.Message(context.words(refused.why()), true));
            case Reading.Empty empty -> Optional.empty();
            case Reading.Entered entered -> Optional.empty();
        };
    }

    /** {@return the unit that was added, and the converted value} */
    Optional<String> beside() {
        if (!(reading instanceof Reading.Entered entered)) {
            return Optional.empty();
        }
        Optional<String> converted = context.reader().converted(field.attribute(), entered.value());
        Optional<String> unit = focused && entered.value() instanceof Quantity<?> ? entered.unitAdded() : Optional.empty();
        if (unit.isPresent()) {
            return Optional.of(converted.map(other -> context.texts().get("beside.unitAndConverted", unit.get(), other)).orElse(unit.get()));
        }
        return converted.map(other -> context.texts().get("beside.converted", other));
    }
}
