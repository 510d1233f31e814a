// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

import garboard.checks.Standing;
import garboard.workbench.Desk;
import garboard.workbench.ask.PlainDialog;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** The cautions in full, to be read before work on the set and before it is started. */
public final class CautionsDialog extends PlainDialog {

    private final Texts.Of texts;
    private ScrolledComposite scrolled;

    public CautionsDialog(Shell parent, Desk desk) {
        super(parent, desk, "cautions");
        this.texts = desk.texts(CautionsDialog.class);
    }

    @Override
    protected String title() {
        return texts.get("cautions.title");
    }

    @Override
    protected void fill(Composite area) {
        Label lead = text(area, texts.get("cautions.lead"));
        Lettering.heading(lead, 115);
        text(area, texts.get("cautions.decide"));
        scrolled = new ScrolledComposite(area, SWT.V_SCROLL);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        var page = new Composite(scrolled, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, Lettering.height(area, 0.3)).applyTo(page);
        Cautions.all().forEach(caution -> add(page, caution));
        scrolled.setContent(page);
        int width = Lettering.width(area, LINE + 12);
        GridDataFactory.fillDefaults().grab(true, true).hint(width, page.computeSize(width, SWT.DEFAULT).y).applyTo(scrolled);
        scrolled.addListener(SWT.Resize, event -> {
            Point size = page.computeSize(scrolled.getClientArea().width, SWT.DEFAULT);
            scrolled.setMinSize(SWT.DEFAULT, size.y);
        });
    }

    private void add(Composite page, Cautions caution) {
        Label lead = text(page, caution.lead(texts));
        Lettering.heading(lead, 105);
        lead.setForeground(desk().palette().of(Standing.FALLS_SHORT));
        text(page, caution.full(texts));
        var gap = new Label(page, SWT.NONE);
        GridDataFactory.fillDefaults().hint(SWT.DEFAULT, Lettering.height(page, 0.4)).applyTo(gap);
    }

    @Override
    protected void createButtonsForButtonBar(Composite row) {
        button(row, IDialogConstants.CANCEL_ID, "close", texts.get("close"), true);
        PageKeys.work(row, scrolled);
    }
}
