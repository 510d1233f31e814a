// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.session.Field;
import garboard.session.FieldStandings;
import garboard.workbench.look.Palette;

/** A row: the mark of its standing, what the field is called, its editor, what stands beside it, and below it what is to be said of it. */
final class FieldRow implements Line {

    private static final int FEWEST_LINES = 3;
    private static final int MOST_LINES = 12;
    /** Height of a line with a low editor, in widths of a letter. */
    private static final int LOWEST = 3;

    private final Composite area;
    private final FieldContext context;
    private final Editor editor;
    private final Label name;
    private final StandingMark mark;
    private Optional<Label> beside = Optional.empty();
    private Optional<Label> message = Optional.empty();
    private Optional<Editor.Message> said = Optional.empty();
    private boolean quiet;
    private int nameWidth = -1;
    private int lineHeight;
    private Point nameSize = new Point(0, 0);
    private Point editorSize;
    private Rectangle besidePlace = new Rectangle(0, 0, 0, 0);

    /** Makes an editor that tells when there may be something else to say. */
    interface Maker {
        Editor make(Composite parent, Runnable changed);
    }

    FieldRow(Composite area, FieldContext context, String called, Maker maker) {
        this.area = area;
        this.context = context;
        mark = new StandingMark(context);
        name = new Label(area, SWT.WRAP);
        name.setText(called);
        editor = maker.make(area, this::tell);
        name.getAccessible().addRelation(ACC.RELATION_LABEL_FOR, editor.control().getAccessible());
        editor.control().getAccessible().addRelation(ACC.RELATION_LABELLED_BY, name.getAccessible());
        introduce(called);
        colour();
        tell();
    }

    private void introduce(String called) {
        if (editor instanceof PlaceEditor place) {
            for (TextEntry entry : place.entries()) {
                context.introduce(entry.control(), entry.field(), () -> called + ", " + context.name(entry.field()), this::description);
            }
        } else {
            context.introduce(editor.control(), editor.fields().getFirst(), () -> called, this::description);
        }
    }

    /** What a screen reader says besides the name: the converted value, what is wrong, how the field stands. */
    private String description() {
        var parts = new ArrayList<String>();
        editor.beside().ifPresent(parts::add);
        said.map(Editor.Message::words).ifPresent(parts::add);
        mark.standing().map(standing -> context.texts().get("standing." + standing.name())).ifPresent(parts::add);
        return String.join(". ", parts);
    }

    Editor editor() {
        return editor;
    }

    boolean holds(Control control) {
        for (Control at = control; at != null && at != area; at = at.getParent()) {
            if (at == editor.control()) {
                return true;
            }
        }
        return false;
    }

    void show() {
        editor.show();
        tell();
    }

    /** Shows what is to be said of the entry as it stands. */
    private void tell() {
        if (editor == null) {
            return; // while the row is made
        }
        grow();
        tellBeside(editor.beside().orElse(""));
        Optional<Editor.Message> now = editor.message();
        if (!now.equals(said)) {
            said = now;
            say(now);
            message.ifPresent(Control::requestLayout);
        }
    }

    /** Most entries have nothing beside them, so the label is made when it is wanted. */
    private void tellBeside(String now) {
        if (beside.isEmpty() && !now.isEmpty()) {
            var label = new Label(area, SWT.NONE);
            label.moveBelow(editor.control());
            label.setForeground(context.desk().palette().faint());
            label.setData("garboard.id", "beside:" + editor.fields().getFirst().key());
            beside = Optional.of(label);
            label.setText(now);
            label.setBounds(besidePlace);
        } else if (beside.isPresent() && !beside.get().getText().equals(now)) {
            beside.get().setText(now);
        }
    }

    private void say(Optional<Editor.Message> now) {
        if (now.isEmpty()) {
            message.ifPresent(label -> label.setVisible(false));
            return;
        }
        if (message.isEmpty()) {
            var label = new Label(area, SWT.WRAP);
            label.moveBelow(beside.map(Control.class::cast).orElse(editor.control()));
            label.setData("garboard.id", "message:" + editor.fields().getFirst().key());
            message = Optional.of(label);
        }
        message.get().setText(now.get().words());
        message.get().setForeground(messageColour(now.get()));
        message.get().setVisible(true);
    }

    private org.eclipse.swt.graphics.Color messageColour(Editor.Message now) {
        Palette palette = context.desk().palette();
        return now.fault() ? palette.of(Standing.FALLS_SHORT) : palette.faint();
    }

    /** Shows how the field stands. */
    void judge(FieldStandings standings) {
        List<Verdict> verdicts = editor.fields().stream().flatMap(field -> standings.at(field).stream())
            .sorted(java.util.Comparator.comparing(Verdict::standing)).distinct().toList();
        if (mark.show(verdicts)) {
            area.redraw(mark.bounds().x, mark.bounds().y, mark.bounds().width, mark.bounds().height, false);
        }
        boolean quietNow = editor.fields().stream().allMatch(field -> field.value().isEmpty() && standings.isBeside(field));
        if (quietNow != quiet) {
            quiet = quietNow;
            colour();
        }
    }

    boolean isQuiet() {
        return quiet;
    }

    void colour() {
        Palette palette = context.desk().palette();
        name.setForeground(quiet ? palette.faint() : palette.ink());
        editor.colour(palette);
        beside.ifPresent(label -> label.setForeground(palette.faint()));
        said.ifPresent(now -> message.ifPresent(label -> label.setForeground(messageColour(now))));
    }

    StandingMark mark() {
        return mark;
    }

    boolean reveal(String key) {
        for (Field field : editor.fields()) {
            if (field.key().equals(key) || field.key().startsWith(key + ".")) {
                return editor.setFocus(field);
            }
        }
        return false;
    }

    @Override
    public int layout(Columns columns, int y, boolean place) {
        if (nameWidth != columns.name()) {
            nameWidth = columns.name();
            nameSize = name.computeSize(SWT.DEFAULT, SWT.DEFAULT);
            lineHeight = nameSize.y;
            if (nameSize.x > nameWidth) {
                nameSize = name.computeSize(nameWidth, SWT.DEFAULT);
            }
            editorSize = null;
        }
        int editorWidth = columns.editor(editor.room());
        if (editorSize == null || editorSize.x != editorWidth) {
            editorSize = new Point(editorWidth, editorHeight(editorWidth));
        }
        int editorY = columns.stacked() ? y + nameSize.y : y;
        boolean tall = editorSize.y > 2 * nameSize.y;
        int line = Math.max(editorSize.y, columns.stacked() ? LOWEST * columns.em() : Math.max(nameSize.y, LOWEST * columns.em()));
        if (place) {
            int nameY = columns.stacked() || tall ? y + (tall && !columns.stacked() ? columns.em() / 2 : 0) : y + (line - nameSize.y) / 2;
            name.setBounds(columns.mark(), nameY, columns.name(), nameSize.y);
            int square = 2 * columns.em();
            mark.setBounds(columns.em() / 2, nameY + (Math.min(nameSize.y, square + 4) - square) / 2, square, square);
            editor.control().setBounds(columns.editorX(), editorY + (line - editorSize.y) / 2, editorWidth, editorSize.y);
            placeBeside(columns, editorY, line, editorWidth);
        }
        int height = columns.stacked() ? nameSize.y + line : line;
        return height + messageHeight(columns, y + height, place);
    }

    private int editorHeight(int width) {
        int height = editor.control().computeSize(width, SWT.DEFAULT).y;
        return isLines() ? Math.max(FEWEST_LINES * lineHeight, Math.min(MOST_LINES * lineHeight, height + lineHeight / 2)) : height;
    }

    private boolean isLines() {
        return editor instanceof TextEditor text && TextEditor.isLines(text.fields().getFirst());
    }

    /** A text of several lines grows with what is written. */
    private void grow() {
        if (isLines() && editorSize != null && editorHeight(editorSize.x) != editorSize.y) {
            editorSize = null;
            editor.control().requestLayout();
        }
    }

    private void placeBeside(Columns columns, int y, int line, int editorWidth) {
        int x = columns.editorX() + editorWidth + columns.gap() / 2;
        int height = lineHeight;
        besidePlace = new Rectangle(x, y + (line - height) / 2, Math.max(0, columns.width() - x), height);
        beside.ifPresent(label -> label.setBounds(besidePlace));
    }

    private int messageHeight(Columns columns, int y, boolean place) {
        if (said.isEmpty()) {
            return 0;
        }
        int width = Math.max(1, columns.editors());
        int height = message.get().computeSize(width, SWT.DEFAULT).y;
        if (place) {
            message.get().setBounds(columns.editorX(), y + 1, width, height);
        }
        return height + 2;
    }
}
