// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.Optional;

import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/** The buttons below a list, and the keys that do the same. */
final class ItemButtons {

    private final FieldContext context;
    private final ItemsEditor list;
    private final Button add;
    private final Button duplicate;
    private final Button remove;
    private final Button up;
    private final Button down;

    ItemButtons(Composite parent, FieldContext context, ItemsEditor list) {
        this.context = context;
        this.list = list;
        var bar = new Composite(parent, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(4).applyTo(bar);
        add = button(bar, "add", list::add);
        duplicate = button(bar, "duplicate", list::duplicate);
        remove = button(bar, "remove", list::remove);
        up = button(bar, "up", () -> list.move(-1));
        down = button(bar, "down", () -> list.move(1));
    }

    private Button button(Composite bar, String what, Runnable action) {
        var button = new Button(bar, SWT.PUSH);
        button.setText(context.texts().get("list." + what));
        button.setToolTipText(context.texts().get("list." + what + ".tip"));
        button.setData("garboard.id", "list." + what);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    /** Takes the keys of a control as presses of the buttons. */
    void listenTo(Control control) {
        control.addListener(SWT.KeyDown, this::key);
    }

    private void key(Event event) {
        int modifiers = event.stateMask & SWT.MODIFIER_MASK;
        if (modifiers == 0 && event.keyCode == SWT.INSERT) {
            list.add();
        } else if (modifiers == SWT.MOD1 && event.keyCode == SWT.DEL) {
            list.remove();
        } else if (modifiers == SWT.MOD1 && event.keyCode == 'd') {
            list.duplicate();
        } else if (modifiers == SWT.ALT && (event.keyCode == SWT.ARROW_UP || event.keyCode == SWT.ARROW_DOWN)) {
            list.move(event.keyCode == SWT.ARROW_UP ? -1 : 1);
            event.doit = false;
        }
    }

    /** Offers what can be done with the chosen item. */
    void follow(Optional<Integer> line, int count) {
        duplicate.setEnabled(line.isPresent());
        remove.setEnabled(line.isPresent());
        up.setEnabled(line.filter(at -> at > 0).isPresent());
        down.setEnabled(line.filter(at -> at < count - 1).isPresent());
    }

    void setFocus() {
        add.setFocus();
    }
}
