// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

import garboard.session.Field;

/** A field that stands as a heading over the rows below it, and is written over in place. */
final class TitleLine implements Line {

    private final FieldContext context;
    private final TextEntry entry;
    private int height;

    TitleLine(Composite area, Field field, FieldContext context, ResourceManager resources) {
        this.context = context;
        var text = new Text(area, SWT.MULTI | SWT.WRAP);
        text.setFont(resources.create(FontDescriptor.createFrom(area.getFont()).setStyle(SWT.BOLD)));
        text.setMessage(context.name(field));
        entry = new TextEntry(text, field, context, this::grow);
        context.introduce(text, field, () -> context.name(field), () -> "");
        colour();
    }

    Field field() {
        return entry.field();
    }

    void show() {
        entry.show();
        grow();
    }

    void colour() {
        entry.control().setBackground(context.desk().palette().ground());
        entry.control().setForeground(context.desk().palette().ink());
    }

    private void grow() {
        if (entry != null && height != 0 && entry.control().computeSize(entry.control().getSize().x, SWT.DEFAULT).y != height) {
            entry.control().requestLayout();
        }
    }

    boolean reveal(String key) {
        return entry.field().key().equals(key) && entry.control().setFocus();
    }

    @Override
    public int layout(Columns columns, int y, boolean place) {
        int width = columns.width() - columns.mark() - columns.gap();
        height = entry.control().computeSize(Math.max(1, width), SWT.DEFAULT).y;
        if (place) {
            entry.control().setBounds(columns.mark(), y, width, height);
        }
        return height;
    }
}
