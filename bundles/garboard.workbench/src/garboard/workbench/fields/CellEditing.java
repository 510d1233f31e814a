// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.Optional;

import org.eclipse.emf.ecore.EEnum;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.TableCursor;
import org.eclipse.swt.custom.TableEditor;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

import garboard.session.Field;

/**
 * The cells of a table filled in with the keyboard: arrows and Tab go from cell to cell, a letter or Enter begins to fill one in, Enter goes
 * on downwards, Tab to the right, Escape takes back what was typed.
 */
final class CellEditing {

    private final ItemTable items;
    private final Table table;
    private final FieldContext context;
    private final Runnable said;
    private final TableCursor cursor;
    private final TableEditor place;
    private Optional<Editor> editor = Optional.empty();

    /** @param said told when there may be something else to say of the cell that is filled in */
    CellEditing(ItemTable items, FieldContext context, Runnable said) {
        this.items = items;
        this.table = items.control();
        this.context = context;
        this.said = said;
        cursor = new TableCursor(table, SWT.NONE);
        place = new TableEditor(table);
        place.grabHorizontal = true;
        place.horizontalAlignment = SWT.LEFT;
        cursor.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> edit(Optional.empty())));
        cursor.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> moved()));
        cursor.addListener(SWT.KeyDown, this::key);
        cursor.addListener(SWT.Traverse, this::traverse);
        cursor.addListener(SWT.MouseDoubleClick, event -> edit(Optional.empty()));
        colour();
    }

    /** {@return the control that has the focus while cells are gone through} */
    Control control() {
        return cursor;
    }

    Optional<Editor> editor() {
        return editor;
    }

    void colour() {
        cursor.setBackground(context.desk().palette().band());
        cursor.setForeground(context.desk().palette().ink());
    }

    int line() {
        return cursor.getRow() == null || cursor.getRow().isDisposed() ? -1 : table.indexOf(cursor.getRow());
    }

    private void moved() {
        if (cursor.getColumn() < ItemTable.FIRST && line() >= 0) {
            cursor.setSelection(line(), ItemTable.FIRST);
        }
        table.setSelection(line());
        if (cursor.getColumn() >= ItemTable.FIRST) {
            table.showColumn(table.getColumn(cursor.getColumn()));
        }
        cursor.setData(FieldContext.FIELD, items.field(line(), cursor.getColumn()).orElse(null));
        if (cursor.isFocusControl()) {
            // The help follows the focus, and that stays on the same control while it goes from cell to cell.
            cursor.notifyListeners(SWT.FocusIn, new Event());
        }
    }

    /** Goes to a cell. */
    boolean goTo(int line, int column) {
        if (line < 0 || line >= table.getItemCount()) {
            return false;
        }
        cursor.setSelection(line, Math.max(ItemTable.FIRST, Math.min(table.getColumnCount() - 1, column)));
        moved();
        boolean there = cursor.setFocus();
        table.notifyListeners(SWT.Selection, new Event());
        return there;
    }

    private void key(Event event) {
        boolean plain = (event.stateMask & SWT.MODIFIER_MASK & ~SWT.SHIFT) == 0;
        if (event.keyCode == SWT.F2) {
            edit(Optional.empty());
        } else if (plain && (event.keyCode == SWT.DEL || event.keyCode == SWT.BS)) {
            items.field(line(), cursor.getColumn()).ifPresent(field -> context.edits().clear(field, context.step(field)));
        } else if (plain && event.character >= ' ' && event.character != SWT.DEL) {
            edit(Optional.of(String.valueOf(event.character)));
        }
    }

    private void traverse(Event event) {
        if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
            event.doit = !step(event.detail == SWT.TRAVERSE_TAB_NEXT ? 1 : -1);
        }
    }

    /** Goes to the next cell that can be filled in, over the ends of the lines. @return whether there is one */
    private boolean step(int by) {
        int columns = table.getColumnCount() - ItemTable.FIRST;
        int cell = line() * columns + cursor.getColumn() - ItemTable.FIRST + by;
        while (cell >= 0 && cell / columns < table.getItemCount() && items.field(cell / columns, cell % columns + ItemTable.FIRST).isEmpty()) {
            cell += by;
        }
        return line() >= 0 && cell >= 0 && goTo(Math.floorDiv(cell, columns), cell % columns + ItemTable.FIRST);
    }

    private void edit(Optional<String> seed) {
        end();
        items.field(line(), cursor.getColumn()).ifPresent(field -> {
            Editor opened = field.attribute().getEAttributeType() instanceof EEnum ? new ChoiceEditor(table, field, context, said)
                : new TextEditor(table, field, context, said);
            editor = Optional.of(opened);
            Control control = opened.control();
            context.introduce(control, field, () -> context.name(field), () -> opened.beside().orElse(""));
            place.minimumHeight = control.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
            place.minimumWidth = table.getColumn(cursor.getColumn()).getWidth();
            place.setEditor(control, cursor.getRow(), cursor.getColumn());
            cursor.setVisible(false);
            control.moveAbove(null);
            control.setFocus();
            begin(control, seed);
        });
    }

    private void begin(Control control, Optional<String> seed) {
        control.addListener(SWT.Traverse, this::traverseInCell);
        control.addListener(SWT.FocusOut, event -> control.getDisplay().asyncExec(() -> endIfLeft(control)));
        if (editor.orElseThrow() instanceof ChoiceEditor choice) {
            seed.ifPresent(letter -> choice.type(letter.charAt(0)));
        }
        if (control instanceof Text text) {
            text.selectAll();
            text.addListener(SWT.KeyDown, event -> {
                if (event.keyCode == SWT.ARROW_DOWN || event.keyCode == SWT.ARROW_UP) {
                    leave(event.keyCode == SWT.ARROW_DOWN ? 1 : -1, 0);
                }
            });
            seed.ifPresent(letter -> {
                text.setText(letter);
                text.setSelection(letter.length());
            });
        }
        said.run();
    }

    private void traverseInCell(Event event) {
        switch (event.detail) {
            case SWT.TRAVERSE_TAB_NEXT, SWT.TRAVERSE_TAB_PREVIOUS -> {
                event.doit = false;
                leave(0, event.detail == SWT.TRAVERSE_TAB_NEXT ? 1 : -1);
            }
            case SWT.TRAVERSE_RETURN -> {
                event.doit = false;
                leave(1, 0);
            }
            case SWT.TRAVERSE_ESCAPE -> {
                event.doit = false;
                leave(0, 0);
            }
            default -> { }
        }
    }

    /** Ends filling in and goes on, down or to the side. */
    private void leave(int down, int right) {
        int line = line();
        int column = cursor.getColumn();
        end();
        if (right != 0) {
            step(right);
        } else {
            goTo(Math.max(0, Math.min(table.getItemCount() - 1, line + down)), column);
        }
    }

    private void endIfLeft(Control control) {
        if (!control.isDisposed() && !control.isFocusControl() && editor.filter(open -> open.control() == control).isPresent()) {
            end();
        }
    }

    /** Ends filling in a cell; what was typed stands in the record already. */
    void end() {
        Optional<Editor> open = editor;
        editor = Optional.empty();
        open.ifPresent(closing -> {
            place.setEditor(null);
            boolean focus = closing.control().isFocusControl();
            closing.control().dispose();
            cursor.setVisible(line() >= 0);
            if (focus) {
                cursor.setFocus();
            }
        });
        said.run();
    }
}
