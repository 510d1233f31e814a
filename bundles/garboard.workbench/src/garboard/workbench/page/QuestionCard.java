// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.page;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import garboard.model.GarboardPackage.Literals;
import garboard.model.InspectionAnswer;
import garboard.model.RecordPath;
import garboard.session.Field;
import garboard.session.OpenRecord;
import garboard.workbench.Desk;
import garboard.workbench.ask.Ask;
import garboard.workbench.fields.FieldRows;
import garboard.workbench.photo.PhotoStrip;

/** One question with its answer, note and photographs. */
final class QuestionCard {

    private final InspectionAnswer answer;
    private final Composite area;
    private final FieldRows rows;
    private final PhotoStrip strip;

    QuestionCard(Composite parent, OpenRecord record, Desk desk, Ask ask, InspectionAnswer answer) {
        this.answer = answer;
        area = new Composite(parent, SWT.NONE);
        area.setData("garboard.id", "question:" + RecordPath.key(answer));
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 0).applyTo(area);
        area.addListener(SWT.Paint, event -> {
            event.gc.setForeground(desk.palette().line());
            event.gc.drawLine(0, 0, area.getSize().x, 0);
        });
        rows = new FieldRows(area, record, desk).title(Field.of(answer, Literals.INSPECTION_ANSWER__QUESTION)).fields(answer,
            Literals.INSPECTION_ANSWER__ANSWER, Literals.INSPECTION_ANSWER__NOTE, Literals.INSPECTION_ANSWER__ANSWERED_BY, Literals.INSPECTION_ANSWER__ANSWERED_ON);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(rows.control());
        strip = new PhotoStrip(area, record, desk, ask, answer);
        GridDataFactory.fillDefaults().grab(true, false).indent(24, 0).applyTo(strip.control());
        var remove = new Button(area, SWT.PUSH);
        remove.setText(desk.texts(QuestionCard.class).get("inspection.remove"));
        remove.setData("garboard.id", "remove:" + RecordPath.key(answer));
        remove.addListener(SWT.Selection, event -> record.edits().remove(List.of(answer), desk.texts(QuestionCard.class).get("step.removeQuestion")));
        GridDataFactory.fillDefaults().align(SWT.END, SWT.END).applyTo(remove);
    }

    InspectionAnswer answer() {
        return answer;
    }

    Control control() {
        return area;
    }

    void show() {
        strip.show();
    }

    boolean setFocus() {
        return rows.reveal(RecordPath.key(answer, Literals.INSPECTION_ANSWER__ANSWER));
    }

    boolean reveal(String key) {
        String own = RecordPath.key(answer);
        return key.equals(own) ? setFocus() : key.startsWith(own + ".") && rows.reveal(key);
    }
}
