// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.osgi.framework.FrameworkUtil;

import garboard.workbench.Desk;
import garboard.workbench.ask.PlainDialog;
import garboard.workbench.look.Emblem;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** What program this is, under which licence, and what it does not do. */
public final class AboutDialog extends PlainDialog {

    private static final String LICENCE = "https://www.eclipse.org/legal/epl-2.0/";

    private final Texts.Of texts;

    public AboutDialog(Shell parent, Desk desk) {
        super(parent, desk, "about");
        this.texts = desk.texts(AboutDialog.class);
    }

    @Override
    protected String title() {
        return texts.get("about.title");
    }

    @Override
    protected void fill(Composite area) {
        ((org.eclipse.swt.layout.GridLayout) area.getLayout()).numColumns = 2;
        var emblem = new Emblem(area, desk());
        GridDataFactory.swtDefaults().align(SWT.CENTER, SWT.BEGINNING).hint(Lettering.height(area, 9), Lettering.height(area, 7)).applyTo(emblem);
        var words = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, Lettering.height(area, 0.5)).applyTo(words);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(words);
        Label name = text(words, "Garboard");
        Lettering.heading(name, 180);
        text(words, texts.get("about.version", ProgramVersion.of(FrameworkUtil.getBundle(AboutDialog.class)),
            System.getProperty("java.version"))).setForeground(desk().palette().faint());
        text(words, texts.get("about.what"));
        text(words, texts.get("about.plank"));
        Label certifies = text(words, texts.get("about.certifies"));
        Lettering.bold(certifies);
        var licence = new Link(words, SWT.WRAP);
        licence.setText(texts.get("about.licence"));
        licence.setData("garboard.id", "about.licence");
        licence.addListener(SWT.Selection, event -> Program.launch(LICENCE));
        GridDataFactory.fillDefaults().grab(true, false).hint(Lettering.width(licence, LINE), SWT.DEFAULT).applyTo(licence);
    }

    @Override
    protected void createButtonsForButtonBar(Composite row) {
        button(row, IDialogConstants.CANCEL_ID, "close", texts.get("close"), true).setFocus();
    }
}
