// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

import garboard.model.Answer;
import garboard.session.Field;

/**
 * An answer: yes, no, not applicable, side by side; none of them while it is unanswered. The arrow keys go from one to the next, the first
 * letter of an answer gives it, and the delete key or a second press takes it back.
 */
final class AnswerEditor implements Editor {

    private static final List<Answer> ANSWERS = List.of(Answer.YES, Answer.NO, Answer.NOT_APPLICABLE);

    private final Composite area;
    private final Field field;
    private final FieldContext context;
    private final Runnable changed;
    private final List<Button> buttons = new ArrayList<>();

    AnswerEditor(Composite parent, Field field, FieldContext context, Runnable changed) {
        this.field = field;
        this.context = context;
        this.changed = changed;
        area = new Composite(parent, SWT.NO_RADIO_GROUP);
        RowLayoutFactory.fillDefaults().wrap(false).spacing(10).center(true).applyTo(area);
        for (Answer answer : ANSWERS) {
            var button = new Button(area, SWT.RADIO);
            button.setText(context.texts().get("answer." + answer.name()));
            button.setData("garboard.id", "answer:" + answer.name());
            button.setData(FieldContext.FIELD, field);
            button.addListener(SWT.Selection, event -> pressed(answer));
            button.addListener(SWT.KeyDown, event -> key(event, answer));
            buttons.add(button);
        }
        show();
    }

    List<Button> buttons() {
        return buttons;
    }

    private void pressed(Answer answer) {
        give(field.value().equals(Optional.of(answer)) ? Answer.UNANSWERED : answer);
    }

    private void give(Answer answer) {
        if (answer == Answer.UNANSWERED) {
            context.edits().clear(field, context.step(field));
        } else {
            context.edits().set(field, answer, context.step(field));
        }
        show();
        changed.run();
    }

    private void key(Event event, Answer answer) {
        int here = ANSWERS.indexOf(answer);
        switch (event.keyCode) {
            case SWT.DEL, SWT.BS -> give(Answer.UNANSWERED);
            case SWT.ARROW_RIGHT, SWT.ARROW_DOWN -> buttons.get((here + 1) % buttons.size()).setFocus();
            case SWT.ARROW_LEFT, SWT.ARROW_UP -> buttons.get((here + buttons.size() - 1) % buttons.size()).setFocus();
            default -> letter(event);
        }
    }

    private void letter(Event event) {
        for (int index = 0; index < ANSWERS.size(); index++) {
            boolean begins = Character.isLetter(event.character) && (event.stateMask & SWT.MODIFIER_MASK & ~SWT.SHIFT) == 0
                && context.texts().get("answer.key." + ANSWERS.get(index).name()).charAt(0) == Character.toLowerCase(event.character);
            if (begins) {
                give(ANSWERS.get(index));
                buttons.get(index).setFocus();
            }
        }
    }

    @Override
    public Control control() {
        return area;
    }

    @Override
    public List<Field> fields() {
        return List.of(field);
    }

    @Override
    public void show() {
        Optional<Object> given = field.value();
        for (int index = 0; index < ANSWERS.size(); index++) {
            boolean on = given.equals(Optional.of(ANSWERS.get(index)));
            if (buttons.get(index).getSelection() != on) {
                buttons.get(index).setSelection(on);
            }
        }
        // Tab goes to the answer that is given.
        area.setTabList(new Control[] {given()});
    }

    private Button given() {
        return buttons.stream().filter(Button::getSelection).findFirst().orElse(buttons.getFirst());
    }

    @Override
    public Optional<Message> message() {
        return context.edits().unread(field).map(text -> new Message(context.texts().get("unread.other", text), true));
    }

    @Override
    public boolean setFocus(Field wanted) {
        return given().setFocus();
    }

    @Override
    public Room room() {
        return Room.CHOICE;
    }
}
