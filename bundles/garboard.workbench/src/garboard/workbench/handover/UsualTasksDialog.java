// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

import garboard.report.UsualUpkeep;
import garboard.workbench.Desk;
import garboard.workbench.ask.PlainDialog;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Spoken;
import garboard.workbench.text.Texts;

/** Which of the usual tasks are to be taken into the plan. */
final class UsualTasksDialog extends PlainDialog {

    private static final int LINES = 16;
    private static final int WIDTH = 96;

    private final List<UsualUpkeep.Task> lacking;
    private final Function<UsualUpkeep.Task, String> wording;
    private final Texts.Of texts;
    private Table table;
    private List<UsualUpkeep.Task> chosen = List.of();

    UsualTasksDialog(Shell parent, Desk desk, List<UsualUpkeep.Task> lacking, Function<UsualUpkeep.Task, String> wording) {
        super(parent, desk, "usualTasks");
        this.lacking = lacking;
        this.wording = wording;
        this.texts = desk.texts(UsualTasksDialog.class);
    }

    /** Shows it. @return the tasks to take; none when the person thought better of it */
    List<UsualUpkeep.Task> ask() {
        open();
        return chosen;
    }

    @Override
    protected String title() {
        return texts.get("usual.title");
    }

    @Override
    protected void fill(Composite area) {
        text(area, texts.get("usual.sentence"));
        table = new Table(area, SWT.CHECK | SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
        table.setData("garboard.id", "usualTasks.table");
        Spoken.name(table, texts.get("usual.title"));
        GridDataFactory.fillDefaults().grab(true, true).hint(Lettering.width(table, WIDTH), Lettering.height(table, LINES * 1.6)).applyTo(table);
        var task = new TableColumn(table, SWT.LEFT);
        var often = new TableColumn(table, SWT.LEFT);
        for (UsualUpkeep.Task one : lacking) {
            var item = new TableItem(table, SWT.NONE);
            item.setText(new String[] {wording.apply(one), texts.get("usual.often", one.interval().months(), one.interval().hours().toString())});
            item.setChecked(true);
        }
        often.pack();
        task.setWidth(Lettering.width(table, WIDTH - 3) - often.getWidth());
    }

    @Override
    protected void createButtonsForButtonBar(Composite row) {
        button(row, IDialogConstants.OK_ID, "take", texts.get("usual.take"), true);
        button(row, IDialogConstants.CANCEL_ID, "leave", texts.get("usual.leave"), false);
    }

    @Override
    protected void okPressed() {
        var taken = new ArrayList<UsualUpkeep.Task>();
        for (int line = 0; line < lacking.size(); line++) {
            if (table.getItem(line).getChecked()) {
                taken.add(lacking.get(line));
            }
        }
        chosen = taken;
        super.okPressed();
    }
}
