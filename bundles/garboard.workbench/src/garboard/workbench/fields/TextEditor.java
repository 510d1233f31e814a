// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;

import garboard.model.GarboardPackage.Literals;
import garboard.session.Field;

/** A field that is typed: a quantity, a count, a date, a word, or several lines of text. */
final class TextEditor implements Editor {

    private final TextEntry entry;
    private final Room room;

    TextEditor(Composite parent, Field field, FieldContext context, Runnable changed) {
        boolean lines = isLines(field);
        var text = new Text(parent, SWT.BORDER | (lines ? SWT.MULTI | SWT.WRAP | SWT.V_SCROLL : SWT.SINGLE));
        boolean words = field.attribute().getEAttributeType().getInstanceClass() == String.class;
        room = words ? Room.ALL : Room.FIGURE;
        entry = new TextEntry(text, field, context, changed);
    }

    static boolean isLines(Field field) {
        return field.attribute().getEAttributeType() == Literals.TEXT;
    }

    @Override
    public Control control() {
        return entry.control();
    }

    @Override
    public List<Field> fields() {
        return List.of(entry.field());
    }

    @Override
    public void show() {
        entry.show();
    }

    @Override
    public Optional<String> beside() {
        return entry.beside();
    }

    @Override
    public Optional<Message> message() {
        return entry.message();
    }

    @Override
    public boolean setFocus(Field field) {
        return entry.control().setFocus();
    }

    @Override
    public Room room() {
        return room;
    }
}
