// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import garboard.session.Field;

/** The three figures of a place on the boat, side by side: forward, to starboard, up. */
final class PlaceEditor implements Editor {

    private final Composite area;
    private final List<TextEntry> entries = new ArrayList<>();
    private TextEntry current;

    PlaceEditor(Composite parent, List<Field> figures, FieldContext context, Runnable changed) {
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2 * figures.size()).spacing(4, 0).applyTo(area);
        for (Field figure : figures) {
            var label = new Label(area, SWT.NONE);
            label.setText(context.texts().get("figure." + figure.attribute().getName()));
            label.setForeground(context.desk().palette().faint());
            var text = new Text(area, SWT.BORDER | SWT.SINGLE);
            GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(1, SWT.DEFAULT).applyTo(text);
            var entry = new TextEntry(text, figure, context, changed);
            text.addListener(SWT.FocusIn, event -> current = entry);
            entries.add(entry);
        }
        current = entries.getLast();
    }

    List<TextEntry> entries() {
        return entries;
    }

    @Override
    public Control control() {
        return area;
    }

    @Override
    public List<Field> fields() {
        return entries.stream().map(TextEntry::field).toList();
    }

    @Override
    public void show() {
        entries.forEach(TextEntry::show);
    }

    /** That of the figure that was typed last; the height, before. */
    @Override
    public Optional<String> beside() {
        return current.beside();
    }

    @Override
    public Optional<Message> message() {
        return current.message().or(() -> entries.stream().flatMap(entry -> entry.message().stream()).findFirst());
    }

    @Override
    public boolean setFocus(Field field) {
        return entries.stream().filter(entry -> entry.field().equals(field)).findFirst().orElse(entries.getFirst()).control().setFocus();
    }

    @Override
    public Room room() {
        return Room.CHOICE;
    }
}
