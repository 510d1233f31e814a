// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import garboard.model.Answer;
import garboard.model.GarboardPackage.Literals;
import garboard.model.ProcedureStep;
import garboard.session.Field;
import garboard.session.OpenRecord;
import garboard.session.trial.StartLine;
import garboard.session.trial.StartStep;
import garboard.workbench.Desk;
import garboard.workbench.fields.FieldRows;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** A step of the procedure, opened: what to do, what to beware of, the answer, where to enter what is found, time and note. */
final class StepDetail {

    private final OpenRecord record;
    private final Desk desk;
    private final StartWording wording;
    private final Texts.Of texts;
    private final Composite area;
    private final Map<Answer, Button> answers = new EnumMap<>(Answer.class);
    private final Leading place;
    private final Said order;
    private final Composite fields;
    private Optional<FieldRows> rows = Optional.empty();

    StepDetail(Composite parent, OpenRecord record, Desk desk, StartWording wording, StartLine line, Consumer<Answer> answered) {
        this.record = record;
        this.desk = desk;
        this.wording = wording;
        this.texts = desk.texts(StepDetail.class);
        area = new Composite(parent, SWT.NONE);
        area.setLayout(new Stacked(Lettering.height(parent, 2.5), Lettering.height(parent, 0.4)));
        area.setData("garboard.id", "step.detail");
        line.guided().ifPresent(this::explain);
        order = new Said(area, desk, Tone.WARNING);
        var choices = new Composite(area, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(Lettering.width(parent, 2)).applyTo(choices);
        for (Answer answer : new Answer[] {Answer.YES, Answer.NO, Answer.NOT_APPLICABLE, Answer.UNANSWERED}) {
            var button = new Button(choices, SWT.RADIO);
            button.setText(texts.get("step.answer." + answer.name()));
            button.setData("garboard.id", "step.answer." + answer.name());
            button.addListener(SWT.Selection, event -> {
                if (button.getSelection()) {
                    answered.accept(answer);
                }
            });
            answers.put(answer, button);
        }
        place = Leading.toPlaces(area, desk);
        fields = new Composite(area, SWT.NONE);
        fields.setLayout(new Stacked(0, 0));
        show(line);
    }

    private void explain(StartStep step) {
        new Said(area, desk, Tone.PLAIN).say(wording.whatToDo(step));
        wording.caution(step).ifPresent(words -> new CautionBox(area, desk, wording.hazard(step.hazard().orElseThrow()), words));
    }

    Control control() {
        return area;
    }

    void show(StartLine line) {
        answers.forEach((answer, button) -> button.setSelection(answer == line.answer()));
        order.say(remark(line));
        place.say(line.guided().flatMap(StartStep::place).map(this::leadTo).orElse(""));
        if (line.stored().isPresent() != rows.isPresent()) {
            rows.ifPresent(old -> old.control().dispose());
            rows = line.stored().map(this::rows);
            fields.setVisible(rows.isPresent());
            fields.requestLayout();
        }
    }

    private FieldRows rows(ProcedureStep step) {
        var made = new FieldRows(fields, record, desk);
        if (StartStep.of(step.getId() == null ? "" : step.getId()).isEmpty()) {
            made.field(Field.of(step, Literals.PROCEDURE_STEP__STEP));
        }
        return made.fields(step, Literals.PROCEDURE_STEP__AT, Literals.PROCEDURE_STEP__NOTE);
    }

    private String remark(StartLine line) {
        return line.concern().undecided().map(key -> texts.get("step.undecided", Places.name(desk, key))).orElse("");
    }

    private String leadTo(String key) {
        return texts.get("step.place", Leading.to(key, Places.name(desk, key)));
    }

    boolean reveal(String key) {
        return rows.filter(made -> made.reveal(key)).isPresent();
    }

    void focusAnswer() {
        answers.values().stream().filter(Button::getSelection).findFirst().ifPresent(Button::setFocus);
    }
}
