// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import garboard.workbench.Desk;
import garboard.workbench.ask.PlainDialog;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** Tells that something went wrong in the program itself: what, that the entries are safe, what to do, and the details to pass on. */
final class FaultDialog extends PlainDialog {

    private static final int COPY = IDialogConstants.CLIENT_ID;
    private static final int LOG = IDialogConstants.CLIENT_ID + 1;

    private final LogFile log;
    private final String version;
    private final Texts.Of texts;
    private final List<Throwable> thrown = new ArrayList<>();
    private Text details;
    private Label more;

    FaultDialog(Shell parent, Desk desk, LogFile log, String version) {
        super(parent, desk, "fault");
        this.log = log;
        this.version = version;
        this.texts = desk.texts(FaultDialog.class);
    }

    /** Adds an exception, also while the dialog is open. */
    void add(Throwable one) {
        thrown.add(one);
        if (details != null && !details.isDisposed()) {
            details.setText(written());
            ((GridData) more.getLayoutData()).exclude = false;
            more.setVisible(true);
            more.setText(texts.get("fault.more", thrown.size() - 1));
            more.requestLayout();
        }
    }

    @Override
    protected String title() {
        return texts.get("fault.window");
    }

    @Override
    protected void fill(Composite area) {
        Label lead = text(area, texts.get("fault.title"));
        Lettering.heading(lead, 115);
        text(area, texts.get("fault.what", briefly(thrown.getFirst())));
        boolean open = desk().open().isPresent();
        text(area, texts.get(open ? "fault.safe" : "fault.nothingOpen"));
        text(area, texts.get(open ? "fault.saveAndRestart" : "fault.restart"));
        more = text(area, "");
        more.setForeground(desk().palette().faint());
        more.setVisible(false);
        ((GridData) more.getLayoutData()).exclude = true;
        details = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.H_SCROLL | SWT.V_SCROLL | SWT.BORDER);
        details.setData("garboard.id", "fault.details");
        details.setText(written());
        GridDataFactory.fillDefaults().grab(true, true).hint(Lettering.width(details, LINE), Lettering.height(details, 9)).applyTo(details);
    }

    @Override
    protected void createButtonsForButtonBar(Composite row) {
        button(row, COPY, "copy", texts.get("fault.copy"), false);
        button(row, LOG, "log", texts.get("fault.log"), false);
        button(row, IDialogConstants.CANCEL_ID, "close", texts.get("close"), true).setFocus();
    }

    @Override
    protected void buttonPressed(int code) {
        switch (code) {
            case COPY -> copy();
            case LOG -> log.show();
            default -> close();
        }
    }

    private void copy() {
        var clipboard = new Clipboard(getShell().getDisplay());
        try {
            clipboard.setContents(new Object[] { written() }, new Transfer[] { TextTransfer.getInstance() });
        } finally {
            clipboard.dispose();
        }
    }

    private static String briefly(Throwable one) {
        Throwable root = one;
        while (root.getCause() != null && root.getCause() != root) {
            root = root.getCause();
        }
        String message = root.getMessage() == null ? "" : ": " + root.getMessage().lines().findFirst().orElse("");
        return root.getClass().getSimpleName() + message;
    }

    private String written() {
        var text = new StringWriter();
        var out = new PrintWriter(text);
        out.println("Garboard " + version + ", Java " + System.getProperty("java.version") + ", " + System.getProperty("os.name") + " "
            + System.getProperty("os.version") + " " + System.getProperty("os.arch"));
        thrown.forEach(one -> {
            out.println();
            one.printStackTrace(out);
        });
        return text.toString();
    }
}
