// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.ask;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;

/** A dialog of the program: words of our own on its buttons, ids on what it holds, never larger than the screen. */
public abstract class PlainDialog extends Dialog {

    /** Letters in a line of running text, above which reading gets hard. */
    protected static final int LINE = 68;

    private final Desk desk;
    private final String id;

    protected PlainDialog(Shell parent, Desk desk, String id) {
        super(parent);
        this.desk = desk;
        this.id = id;
        setShellStyle(SWT.DIALOG_TRIM | SWT.APPLICATION_MODAL | SWT.RESIZE | getDefaultOrientation());
    }

    protected final Desk desk() {
        return desk;
    }

    /** {@return what stands in the title of the window} */
    protected abstract String title();

    /** Fills the dialog. */
    protected abstract void fill(Composite area);

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(title());
        shell.setData("garboard.id", id);
    }

    @Override
    protected final Control createDialogArea(Composite parent) {
        var area = (Composite) super.createDialogArea(parent);
        int margin = Lettering.width(parent, 2);
        GridLayoutFactory.fillDefaults().margins(margin, margin).spacing(margin, margin / 2).applyTo(area);
        fill(area);
        return area;
    }

    /** {@return a button of the row at the foot} @param code as of {@link IDialogConstants}, or from its {@code CLIENT_ID} on */
    protected final Button button(Composite row, int code, String name, String label, boolean proposed) {
        Button button = createButton(row, code, label, proposed);
        button.setData("garboard.id", id + "." + name);
        return button;
    }

    /** {@return running text, wrapped} */
    protected static Label text(Composite area, String sentence) {
        var label = new Label(area, SWT.WRAP);
        label.setText(sentence);
        GridDataFactory.fillDefaults().grab(true, false).hint(Lettering.width(label, LINE), SWT.DEFAULT).applyTo(label);
        return label;
    }

    @Override
    protected Point getInitialSize() {
        Point wanted = super.getInitialSize();
        Rectangle screen = getShell().getMonitor().getClientArea();
        return new Point(Math.min(wanted.x, screen.width), Math.min(wanted.y, screen.height * 9 / 10));
    }
}
