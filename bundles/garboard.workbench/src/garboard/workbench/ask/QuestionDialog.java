// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.ask;

import java.util.List;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;

/** Asks a question: what it is about, what happened and what can be done, a button for each answer. */
final class QuestionDialog extends PlainDialog {

    private static final int MOST_LINES = 9;

    private final Question question;
    private String answer;

    QuestionDialog(Shell parent, Desk desk, Question question) {
        super(parent, desk, "question." + question.id());
        this.question = question;
        this.answer = question.answers().getLast().id();
    }

    /** Shows it. @return the id of the answer */
    String ask() {
        open();
        return answer;
    }

    /** What it is about stands in the dialog, in letters that can be read. */
    @Override
    protected String title() {
        return "Garboard";
    }

    @Override
    protected void fill(Composite area) {
        ((org.eclipse.swt.layout.GridLayout) area.getLayout()).numColumns = 2;
        var sign = new Sign(area, question.tone(), desk().palette());
        GridDataFactory.swtDefaults().align(SWT.CENTER, SWT.BEGINNING).applyTo(sign);
        var words = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, Lettering.height(area, 0.6)).applyTo(words);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(words);
        Label lead = text(words, question.title());
        Lettering.heading(lead, 115);
        text(words, question.sentence());
        if (!question.details().isEmpty()) {
            details(words, question.details());
        }
    }

    private void details(Composite words, List<String> lines) {
        var text = new Text(words, SWT.MULTI | SWT.READ_ONLY | SWT.V_SCROLL | SWT.WRAP | SWT.BORDER);
        text.setText(String.join("\n", lines));
        text.setData("garboard.id", "question." + question.id() + ".details");
        GridDataFactory.fillDefaults().grab(true, true)
            .hint(Lettering.width(text, LINE), Lettering.height(text, Math.min(MOST_LINES, lines.size() + 1))).applyTo(text);
    }

    @Override
    protected void createButtonsForButtonBar(Composite row) {
        int number = 0;
        for (Question.Answer one : question.answers()) {
            boolean last = number == question.answers().size() - 1;
            boolean proposed = one == question.proposed();
            Button button = button(row, last ? IDialogConstants.CANCEL_ID : IDialogConstants.CLIENT_ID + number, one.id(), one.label(), proposed);
            if (proposed) {
                button.setFocus();
            }
            number++;
        }
    }

    @Override
    protected void buttonPressed(int code) {
        if (code != IDialogConstants.CANCEL_ID) {
            answer = question.answers().get(code - IDialogConstants.CLIENT_ID).id();
        }
        close();
    }
}
