// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import garboard.model.RecordPath;
import garboard.session.form.FormGroup;
import garboard.session.form.ItemForm;

/** All fields of the item that is chosen in a table, and the lists that belong to it. Made when it is asked for: there are many. */
final class ItemDetail {

    /** After this time on one line a person means to look at it, and does not only pass. */
    private static final int PASSING = 120;

    private final Composite area;
    private final FieldContext context;
    private final ItemForm form;
    private Optional<EObject> shown = Optional.empty();
    private Optional<EObject> wanted = Optional.empty();
    private Optional<FieldRows> rows = Optional.empty();
    private boolean leftAway;

    ItemDetail(Composite parent, FieldContext context, ItemForm form) {
        this.context = context;
        this.form = form;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(area);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(area);
        leftAway = form.groups().isEmpty();
    }

    void leaveAway() {
        leftAway = true;
    }

    void show(Optional<EObject> item) {
        wanted = item;
        if (!leftAway && !wanted.equals(shown)) {
            if (wanted.isEmpty()) {
                make();
            } else {
                area.getDisplay().timerExec(PASSING, this::make);
            }
        }
    }

    private void make() {
        if (area.isDisposed() || leftAway || wanted.equals(shown)) {
            return;
        }
        shown = wanted;
        rows.ifPresent(old -> old.control().dispose());
        rows = shown.map(this::rows);
        GridDataFactory.createFrom((org.eclipse.swt.layout.GridData) area.getLayoutData()).exclude(shown.isEmpty()).applyTo(area);
        area.setVisible(shown.isPresent());
        area.requestLayout();
    }

    private FieldRows rows(EObject item) {
        var made = new FieldRows(area, context.record(), context.desk());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(made.control());
        for (FormGroup group : form.groups()) {
            made.heading(heading(item, group));
            made.group(group, item);
        }
        return made;
    }

    private String heading(EObject item, FormGroup group) {
        return group.part().map(part -> context.desk().labels().label(part))
            .orElseGet(() -> context.texts().get(group.id().equals(FormGroup.OTHERS) ? "item.others"
                : "item." + item.eClass().getName() + "." + group.id()));
    }

    boolean reveal(String key) {
        make();
        return shown.isPresent() && !key.equals(RecordPath.key(shown.get())) && rows.filter(made -> made.reveal(key)).isPresent();
    }
}
