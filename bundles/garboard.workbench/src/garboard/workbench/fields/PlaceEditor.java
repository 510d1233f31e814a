// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Layout;
import org.eclipse.swt.widgets.Text;

import garboard.session.Field;
import garboard.workbench.look.Palette;

/** The three figures of a place on the boat, side by side: forward, to starboard, up. */
final class PlaceEditor implements Editor {

    private final Composite area;
    private final List<TextEntry> entries = new ArrayList<>();
    private final List<Label> names = new ArrayList<>();
    private TextEntry current;

    PlaceEditor(Composite parent, List<Field> figures, FieldContext context, Runnable changed) {
        area = new Composite(parent, SWT.NONE);
        area.setLayout(new Shared());
        for (Field figure : figures) {
            var label = new Label(area, SWT.NONE);
            label.setText(context.texts().get("figure." + figure.attribute().getName()));
            names.add(label);
            var text = new Text(area, SWT.BORDER | SWT.SINGLE);
            text.addListener(SWT.Modify, event -> area.layout());
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
    public void colour(Palette palette) {
        names.forEach(name -> name.setForeground(palette.faint()));
    }

    @Override
    public boolean setFocus(Field field) {
        return entries.stream().filter(entry -> entry.field().equals(field)).findFirst().orElse(entries.getFirst()).control().setFocus();
    }

    @Override
    public Room room() {
        return Room.FIGURES;
    }

    /** Labels and figures in a line; a figure with its accuracy gets more of the room than one without. */
    private static final class Shared extends Layout {

        private static final int GAP = 4;
        private static final int LEAST = 6;

        @Override
        protected Point computeSize(Composite parent, int widthHint, int heightHint, boolean flushCache) {
            int height = 0;
            for (Control child : parent.getChildren()) {
                height = Math.max(height, child.computeSize(SWT.DEFAULT, SWT.DEFAULT, flushCache).y);
            }
            return new Point(widthHint, height);
        }

        @Override
        protected void layout(Composite parent, boolean flushCache) {
            Control[] children = parent.getChildren();
            int room = parent.getClientArea().width - GAP * (children.length - 1);
            int letters = 0;
            for (Control child : children) {
                if (child instanceof Text text) {
                    letters += letters(text);
                } else {
                    room -= child.computeSize(SWT.DEFAULT, SWT.DEFAULT, flushCache).x;
                }
            }
            int x = 0;
            for (Control child : children) {
                Point size = child.computeSize(SWT.DEFAULT, SWT.DEFAULT, flushCache);
                int width = child instanceof Text text ? Math.max(1, room * letters(text) / letters) : size.x;
                child.setBounds(x, (parent.getClientArea().height - size.y) / 2, width, size.y);
                x += width + GAP;
            }
        }

        private static int letters(Text text) {
            return Math.max(LEAST, text.getCharCount()) + 2;
        }
    }
}
