// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.page;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.workbench.Desk;

/** The particulars of one system, grouped as one would walk the boat. */
final class SystemPage implements Page {

    private final Stop stop;
    private final OpenRecord record;
    private final Desk desk;

    SystemPage(Stop stop, OpenRecord record, Desk desk) {
        this.stop = stop;
        this.record = record;
        this.desk = desk;
    }

    @Override
    public Control create(Composite parent) {
        var label = new Label(parent, SWT.NONE);
        label.setText(stop.name());
        return label;
    }
}
