// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import java.time.LocalDate;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import garboard.session.OpenRecord;
import garboard.session.handover.Revisions;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Spoken;
import garboard.workbench.text.Texts;

/** A revision being written: by whom, and what changed. */
final class RevisionView {

    private static final int LINES = 4;

    private final Composite area;
    private final Text by;

    /** @param proposed what is proposed to be written @param done told when it is recorded or given up */
    RevisionView(Composite parent, OpenRecord record, Desk desk, Tint tint, String proposed, Runnable done) {
        Texts.Of texts = desk.texts(RevisionView.class);
        area = Sheet.area(parent, 2);
        by = field(area, tint, "by", texts.get("revision.by"), new Text(area, SWT.BORDER));
        Text what = field(area, tint, "what", texts.get("revision.what"), new Text(area, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL));
        GridDataFactory.fillDefaults().grab(true, false).hint(1, Lettering.height(what, LINES + 0.5)).applyTo(what);
        what.setText(proposed);
        what.addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        new Label(area, SWT.NONE);
        Composite row = Sheet.row(area);
        Button keep = Sheet.button(row, "revision.record", texts.get("revision.record", Revisions.next(record.record())), () -> {
            Revisions.record(record, LocalDate.now(desk.clock()), by.getText(), what.getText(), texts.get("step.revision"));
            done.run();
        });
        Sheet.button(row, "revision.cancel", texts.get("revision.cancel"), done);
        Runnable check = () -> keep.setEnabled(!by.getText().isBlank() && !what.getText().isBlank());
        by.addListener(SWT.Modify, event -> check.run());
        what.addListener(SWT.Modify, event -> check.run());
        check.run();
    }

    private static <C extends Control> C field(Composite area, Tint tint, String id, String called, C control) {
        Label label = tint.ink(new Label(area, SWT.NONE));
        label.setText(called);
        label.moveAbove(control);
        control.setData("garboard.id", "revision." + id);
        Spoken.name(control, called.replace("&", ""));
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(control);
        return control;
    }

    void setFocus() {
        by.setFocus();
    }
}
