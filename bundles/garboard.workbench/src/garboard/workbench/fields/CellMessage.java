// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import garboard.checks.Standing;

/** A line below a table that tells what is to be said of the cell that is filled in: what is wrong, or the converted value. */
final class CellMessage {

    private final FieldContext context;
    private final Label label;
    private Optional<CellEditing> cells = Optional.empty();

    CellMessage(Composite parent, FieldContext context) {
        this.context = context;
        label = new Label(parent, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).exclude(true).applyTo(label);
    }

    /** Says of whose cells it tells. */
    void of(CellEditing editing) {
        cells = Optional.of(editing);
    }

    void tell() {
        if (label.isDisposed()) {
            return;
        }
        Optional<Editor.Message> now = cells.flatMap(CellEditing::editor).flatMap(editor -> editor.message().or(() -> editor.beside()
            .map(words -> new Editor.Message(context.texts().get("cell.beside", context.name(editor.fields().getFirst()), words), false))));
        label.setText(now.map(Editor.Message::words).orElse(""));
        label.setForeground(now.filter(Editor.Message::fault).isPresent() ? context.desk().palette().of(Standing.FALLS_SHORT)
            : context.desk().palette().faint());
        var place = (GridData) label.getLayoutData();
        boolean wasThere = !place.exclude;
        place.exclude = now.isEmpty();
        label.setVisible(now.isPresent());
        if (wasThere || now.isPresent()) {
            label.requestLayout();
        }
    }
}
