// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import garboard.session.OpenRecord;
import garboard.workbench.Desk;
import garboard.workbench.page.Page;

/** TODO */
public final class SignOffPage implements Page {

    private final OpenRecord record;
    private final Desk desk;

    public SignOffPage(OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
    }

    @Override
    public Control create(Composite parent) {
        var label = new Label(parent, SWT.NONE);
        label.setText("SignOffPage");
        return label;
    }
}
