// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import garboard.checks.Catalogue;
import garboard.checks.Practice;
import garboard.session.Field;
import garboard.workbench.look.Palette;

/** The practices that the record is held against, each with what it speaks to; none chosen stands for all. */
final class PracticesEditor implements Editor {

    private static final int INDENT = 24;

    private final Composite area;
    private final Field field;
    private final FieldContext context;
    private final Map<String, Button> boxes = new LinkedHashMap<>();
    private final List<Label> explanations = new ArrayList<>();
    private final Runnable changed;

    PracticesEditor(Composite parent, Field field, FieldContext context, Runnable changed) {
        this.field = field;
        this.context = context;
        this.changed = changed;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(area);
        Catalogue catalogue = context.record().verdicts().catalogue();
        for (Practice practice : catalogue.practices()) {
            box(practice.id(), practice.name(), practice.appliesTo());
        }
        for (String absent : catalogue.notAtHand(chosen())) {
            box(absent, absent, context.texts().get("practice.notAtHand"));
        }
        show();
    }

    private void box(String id, String name, String appliesTo) {
        var box = new Button(area, SWT.CHECK | SWT.WRAP);
        box.setText(name);
        box.setData("garboard.id", "practice:" + id);
        box.setData(FieldContext.FIELD, field);
        box.addListener(SWT.Selection, event -> choose());
        boxes.put(id, box);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(box);
        var words = new Label(area, SWT.WRAP);
        words.setText(appliesTo);
        explanations.add(words);
        GridDataFactory.fillDefaults().indent(INDENT, 0).grab(true, false).hint(1, SWT.DEFAULT).applyTo(words);
    }

    private List<String> chosen() {
        return context.record().record().getPractices();
    }

    private void choose() {
        var ids = new ArrayList<String>();
        boxes.forEach((id, box) -> {
            if (box.getSelection()) {
                ids.add(id);
            }
        });
        if (ids.isEmpty()) {
            context.edits().clear(field, context.step(field));
        } else {
            context.edits().set(field, ids, context.step(field));
        }
        changed.run();
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
        List<String> chosen = chosen();
        boxes.forEach((id, box) -> {
            if (box.getSelection() != chosen.contains(id)) {
                box.setSelection(chosen.contains(id));
            }
        });
    }

    @Override
    public Optional<Message> message() {
        return chosen().isEmpty() ? Optional.of(new Message(context.texts().get("practice.all"), false)) : Optional.empty();
    }

    @Override
    public void colour(Palette palette) {
        explanations.forEach(words -> words.setForeground(palette.faint()));
    }

    @Override
    public boolean setFocus(Field wanted) {
        return boxes.values().stream().findFirst().map(Control::setFocus).orElse(false);
    }

    @Override
    public Room room() {
        return Room.ALL;
    }
}
