// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import java.nio.file.Path;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;
import org.eclipse.swt.widgets.Shell;

import garboard.workbench.Desk;
import garboard.workbench.ask.PlainDialog;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Spoken;
import garboard.workbench.text.Texts;

/** How far the writing of a workbook is, and when it is done what to do with it. The window behind stays usable. */
final class ExportDialog extends PlainDialog {

    private static final int OPEN = IDialogConstants.CLIENT_ID;
    private static final int FOLDER = IDialogConstants.CLIENT_ID + 1;

    private final Texts.Of texts;
    private final Workbook workbook;
    private final Path file;
    private Writing writing;
    private Label lead;
    private Label sentence;
    private ProgressBar bar;
    private boolean done;

    ExportDialog(Shell parent, Desk desk, Workbook workbook, Path file) {
        super(parent, desk, "export");
        this.texts = desk.texts(ExportDialog.class);
        this.workbook = workbook;
        this.file = file;
        setShellStyle(SWT.DIALOG_TRIM | SWT.RESIZE | SWT.MODELESS | getDefaultOrientation());
        setBlockOnOpen(false);
    }

    Workbook workbook() {
        return workbook;
    }

    /** Opens it; the person can stop the writing from now on. */
    void show(Writing begun) {
        writing = begun;
        open();
    }

    @Override
    protected String title() {
        return texts.get("export." + workbook.id() + ".title");
    }

    @Override
    protected void fill(Composite area) {
        lead = text(area, texts.get("export." + workbook.id() + ".lead", file.getFileName()));
        Lettering.heading(lead, 115);
        bar = new ProgressBar(area, SWT.HORIZONTAL | SWT.SMOOTH);
        bar.setData("garboard.id", "export.bar");
        Spoken.name(bar, texts.get("export." + workbook.id() + ".title"));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        sentence = text(area, texts.get("export.begins"));
        sentence.setData("garboard.id", "export.sentence");
    }

    @Override
    protected void createButtonsForButtonBar(Composite row) {
        button(row, IDialogConstants.CANCEL_ID, "cancel", texts.get("export.cancel"), true);
    }

    /** Shows news of the writing. On the window's thread. */
    void hear(Writing.News news) {
        if (getShell() == null || getShell().isDisposed()) {
            return;
        }
        switch (news) {
            case Writing.News.At(String what, int step, int total) -> {
                bar.setMaximum(total);
                bar.setSelection(step);
                say(what.isEmpty() ? texts.get("export.begins") : texts.get("export.at", what, step + 1, total));
            }
            case Writing.News.Written written -> finish("export." + workbook.id() + ".written", texts.get("export.where", file), true);
            case Writing.News.Stopped stopped -> close();
            case Writing.News.Failed(var trouble) -> finish("export.failed",
                texts.get("export.trouble." + trouble.kind().name(), file.getParent(), trouble.detail()), false);
        }
    }

    private void say(String words) {
        sentence.setText(words);
        sentence.requestLayout();
    }

    private void finish(String leading, String words, boolean written) {
        done = true;
        lead.setText(texts.get(leading, file.getFileName()));
        bar.dispose();
        say(words);
        var row = (Composite) getButtonBar();
        for (Control button : row.getChildren()) {
            button.dispose();
        }
        ((GridLayout) row.getLayout()).numColumns = 0;
        if (written) {
            button(row, OPEN, "open", texts.get("export.open"), true).setFocus();
            button(row, FOLDER, "folder", texts.get("export.folder"), false);
        }
        Button last = button(row, IDialogConstants.CANCEL_ID, "done", texts.get(written ? "export.done" : "export.close"), !written);
        if (!written) {
            last.setFocus();
        }
        row.requestLayout();
        getShell().pack();
    }

    @Override
    protected void buttonPressed(int code) {
        switch (code) {
            case OPEN -> launch(file);
            case FOLDER -> launch(file.getParent());
            default -> close();
        }
    }

    /** The desktop has no program for it: then at least it is told where it is. */
    private void launch(Path what) {
        if (Program.launch(what.toString())) {
            close();
        } else {
            say(texts.get("export.noProgram", what));
            getShell().pack();
        }
    }

    /** Closing it while the workbook is being written stops that. */
    @Override
    public boolean close() {
        if (!done) {
            done = true;
            writing.cancel();
        }
        return super.close();
    }
}
