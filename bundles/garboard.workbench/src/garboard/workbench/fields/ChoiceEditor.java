// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import garboard.session.Field;
import garboard.session.entry.Reading;

/** A field with a choice, as the trade names it; the first says that nothing is entered. */
final class ChoiceEditor implements Editor {

    private static final int LONG_NAME = 34;

    private final Combo combo;
    private final Field field;
    private final FieldContext context;
    private final Runnable changed;
    private final int longest;
    private final List<Enumerator> choices = new ArrayList<>();

    ChoiceEditor(Composite parent, Field field, FieldContext context, Runnable changed) {
        this.field = field;
        this.context = context;
        this.changed = changed;
        combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        var names = new ArrayList<String>();
        for (EEnumLiteral literal : ((EEnum) field.attribute().getEAttributeType()).getELiterals()) {
            choices.add(literal.getInstance());
            names.add(context.desk().labels().label(literal.getInstance()));
        }
        longest = names.stream().mapToInt(String::length).max().orElse(0);
        combo.setItems(names.toArray(String[]::new));
        combo.setVisibleItemCount(choices.size());
        combo.addListener(SWT.Selection, event -> choose());
        combo.addListener(SWT.KeyDown, event -> {
            boolean plain = (event.stateMask & SWT.MODIFIER_MASK & ~SWT.SHIFT) == 0;
            if (plain && Character.isLetterOrDigit(event.character) && jump(event.character)) {
                event.doit = false;
                choose();
            }
        });
        combo.addListener(SWT.MouseWheel, event -> event.doit = false);
        show();
    }

    /** Goes to the next choice that begins with a letter. */
    private boolean jump(char letter) {
        int count = combo.getItemCount();
        for (int step = 1; step <= count; step++) {
            int index = (Math.max(0, combo.getSelectionIndex()) + step) % count;
            String name = combo.getItem(index);
            if (!name.isEmpty() && Character.toLowerCase(name.charAt(0)) == Character.toLowerCase(letter)) {
                combo.select(index);
                return true;
            }
        }
        return false;
    }

    /** Takes a letter as one that was typed here. */
    void type(char letter) {
        if (jump(letter)) {
            choose();
        }
    }

    private void choose() {
        int index = combo.getSelectionIndex();
        if (index <= 0) {
            context.edits().clear(field, context.step(field));
        } else if (!field.value().equals(Optional.of(choices.get(index))) || context.edits().unread(field).isPresent()) {
            context.edits().set(field, choices.get(index), context.step(field));
        }
        changed.run();
    }

    @Override
    public Control control() {
        return combo;
    }

    @Override
    public List<Field> fields() {
        return List.of(field);
    }

    @Override
    public void show() {
        int index = field.value().map(choices::indexOf).orElse(0);
        if (combo.getSelectionIndex() != index) {
            combo.select(index);
        }
    }

    /** What a file or a form had here that is none of the choices. */
    @Override
    public Optional<Message> message() {
        return context.edits().unread(field).map(text -> new Message(
            context.reader().read(field.attribute(), text) instanceof Reading.Refused refused
                ? context.texts().get("unread.choice", text, context.words(refused.why())) : context.texts().get("unread.other", text), true));
    }

    @Override
    public boolean setFocus(Field wanted) {
        return combo.setFocus();
    }

    @Override
    public Room room() {
        return longest > LONG_NAME ? Room.ALL : Room.CHOICE;
    }
}
