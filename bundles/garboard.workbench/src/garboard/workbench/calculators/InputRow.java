// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.calculators;

import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import garboard.checks.Standing;
import garboard.quantity.Quantity;
import garboard.session.Listeners.Subscription;
import garboard.session.calculators.Calculator;
import garboard.session.calculators.CalculatorInput;
import garboard.session.entry.EntryReader;
import garboard.session.entry.Reading;
import garboard.session.entry.Refusal;
import garboard.workbench.Desk;
import garboard.workbench.fields.FieldRows;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Spoken;
import garboard.workbench.text.Texts;

/** One input: its name, where it is typed, the converted value, a way to take it from the record; below, what it means and what is wrong with it. */
final class InputRow {

    static final int COLUMNS = 4;
    private static final int LETTERS = 14;
    private static final int NAME_LETTERS = 14;
    private static final int LONGEST = 200;

    private final Desk desk;
    private final Texts.Of texts;
    private final Calculator calculator;
    private final CalculatorInput input;
    private final Supplier<EntryReader> reader;
    private final Runnable changed;
    private final Label name;
    private final Control editor;
    private final Label beside;
    private final Label meaning;
    private final Label fault;
    private Optional<String> refused = Optional.empty();
    private boolean showing;

    /** @param changed told after each letter @param take asked for when the value is to come from the record */
    InputRow(Composite parent, Desk desk, Calculator calculator, CalculatorInput input, Supplier<EntryReader> reader, Runnable changed, Runnable take) {
        this.desk = desk;
        this.texts = desk.texts(InputRow.class);
        this.calculator = calculator;
        this.input = input;
        this.reader = reader;
        this.changed = changed;
        name = new Label(parent, SWT.WRAP);
        name.setText(input.title());
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.CENTER).hint(Lettering.width(name, NAME_LETTERS), SWT.DEFAULT).applyTo(name);
        editor = input.choices().isEmpty() ? text(parent) : combo(parent);
        editor.setData("garboard.id", "calculator.input:" + input.name());
        Spoken.name(editor, input.title() + ". " + input.meaning());
        beside = new Label(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(1, SWT.DEFAULT).applyTo(beside);
        var button = new Button(parent, SWT.PUSH);
        button.setText(texts.get("input.take"));
        button.setToolTipText(texts.get("input.take.tip"));
        button.setData("garboard.id", "calculator.take:" + input.name());
        Spoken.name(button, texts.get("input.take.spoken", input.title()));
        button.addListener(SWT.Selection, event -> take.run());
        new Label(parent, SWT.NONE);
        meaning = new Label(parent, SWT.WRAP);
        meaning.setText((input.meaning() + rest()).replace("&", "&&"));
        GridDataFactory.fillDefaults().span(COLUMNS - 1, 1).grab(true, false).hint(1, SWT.DEFAULT).applyTo(meaning);
        new Label(parent, SWT.NONE).setLayoutData(GridDataFactory.swtDefaults().exclude(true).create());
        fault = new Label(parent, SWT.WRAP);
        fault.setData("garboard.id", "calculator.fault:" + input.name());
        GridDataFactory.fillDefaults().span(COLUMNS, 1).indent(Lettering.width(name, NAME_LETTERS + 1), 0).grab(true, false)
            .hint(1, SWT.DEFAULT).exclude(true).applyTo(fault);
        fault.setVisible(false);
        Subscription palette = desk.onPalette(now -> colour());
        name.addDisposeListener(event -> palette.close());
        colour();
    }

    private Text text(Composite parent) {
        var text = new Text(parent, SWT.SINGLE | SWT.BORDER);
        text.setTextLimit(LONGEST);
        GridDataFactory.swtDefaults().hint(Lettering.width(text, LETTERS), SWT.DEFAULT).applyTo(text);
        text.addListener(SWT.Modify, event -> typed(text.getText()));
        text.addListener(SWT.FocusIn, event -> say());
        text.addListener(SWT.FocusOut, event -> finish(text));
        return text;
    }

    private Combo combo(Composite parent) {
        var combo = new Combo(parent, SWT.DROP_DOWN | SWT.READ_ONLY);
        combo.add("");
        input.choices().forEach(combo::add);
        GridDataFactory.swtDefaults().hint(Lettering.width(combo, LETTERS), SWT.DEFAULT).applyTo(combo);
        combo.addListener(SWT.Selection, event -> typed(combo.getText()));
        return combo;
    }

    /** Whether it can be left out, and what is taken then. */
    private String rest() {
        return input.taken().map(text -> "; " + texts.get("input.taken", text)).orElse(input.required() ? "" : "; " + texts.get("input.optional"));
    }

    CalculatorInput input() {
        return input;
    }

    void setFocus() {
        editor.setFocus();
    }

    /** Shows what the calculator has. */
    void show() {
        showing = true;
        String now = calculator.text(input);
        if (editor instanceof Combo combo) {
            combo.setText(now);
        } else if (editor instanceof Text text) {
            text.setMessage(input.unit(reader.get().system()).orElse(""));
            if (!text.getText().equals(now)) {
                text.setText(now);
            }
        }
        showing = false;
        say();
    }

    private void typed(String text) {
        if (!showing) {
            calculator.type(input, text);
            changed.run();
            say();
        }
    }

    /** The person goes on: the unit that a bare number was taken in is written out. */
    private void finish(Text text) {
        if (input.read(text.getText(), reader.get()) instanceof Reading.Entered(Quantity<?> quantity, Optional<String> added) && added.isPresent()) {
            text.setText(quantity.toString());
        }
        say();
    }

    /** Tells what the calculation says against this input; nothing when it takes it. */
    void refuse(Optional<String> why) {
        refused = why;
        say();
    }

    private void say() {
        Reading reading = input.read(calculator.text(input), reader.get());
        String now = reading instanceof Reading.Entered(Quantity<?> quantity, Optional<String> added)
            ? reader.get().converted(quantity).map(other -> texts.get("input.converted", other)).orElse("") : "";
        if (!beside.getText().equals(now)) {
            beside.setText(now);
            beside.setToolTipText(now);
        }
        String wrong = switch (reading) {
            case Reading.Refused one -> words(one.why());
            case Reading.Begun begun -> editor.isFocusControl() ? goesOn(begun) : words(begun.asItStands());
            default -> refused.orElse("");
        };
        if (!fault.getText().equals(wrong)) {
            fault.setText(wrong.replace("&", "&&"));
            fault.setVisible(!wrong.isEmpty());
            ((GridData) fault.getLayoutData()).exclude = wrong.isEmpty();
            fault.requestLayout();
        }
        colour();
    }

    private String goesOn(Reading.Begun begun) {
        return begun.goesOn().isEmpty() ? "" : texts.get("input.goesOn", String.join(", ", begun.goesOn()));
    }

    /** In the same words as in the fields of the record. */
    private String words(Refusal refusal) {
        String key = "refused." + refusal.reason().name();
        Object[] facts = refusal.facts().toArray();
        return desk.texts(FieldRows.class).get(key, facts);
    }

    private void colour() {
        boolean begun = editor.isFocusControl() && input.read(calculator.text(input), reader.get()) instanceof Reading.Begun;
        name.setForeground(desk.palette().ink());
        beside.setForeground(desk.palette().faint());
        meaning.setForeground(desk.palette().faint());
        fault.setForeground(begun ? desk.palette().faint() : desk.palette().of(Standing.FALLS_SHORT));
    }
}
