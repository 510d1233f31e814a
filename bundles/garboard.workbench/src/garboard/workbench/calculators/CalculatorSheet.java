// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.calculators;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import garboard.physics.calculation.Calculation;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.calculators.Answering;
import garboard.session.calculators.Calculator;
import garboard.session.calculators.CalculatorInput;
import garboard.session.calculators.CalculatorList;
import garboard.session.calculators.RecordFigures;
import garboard.session.entry.EntryReader;
import garboard.workbench.Desk;
import garboard.workbench.fields.SheetScroll;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** One calculation: what it is for, its inputs, its answer as one types, its formula and where that comes from. */
final class CalculatorSheet {

    private static final int TITLE = 125;

    private final OpenRecord record;
    private final Desk desk;
    private final Texts.Of texts;
    private final Calculator calculator;
    private final RecordFigures figures;
    private final Composite page;
    private final SheetScroll sheet;
    private final List<Label> quiet = new ArrayList<>();
    private final List<Label> plain = new ArrayList<>();
    private final List<InputRow> inputs = new ArrayList<>();
    private final AnswerView answer;
    private EntryReader reader;

    CalculatorSheet(Composite parent, OpenRecord record, Desk desk, Calculator calculator) {
        this.record = record;
        this.desk = desk;
        this.texts = desk.texts(CalculatorSheet.class);
        this.calculator = calculator;
        this.figures = new RecordFigures(record, desk.labels());
        reader = reader();
        page = new Composite(parent, SWT.NONE);
        page.setData("garboard.id", "calculator:" + calculator.calculation().name());
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
        sheet = new SheetScroll(page, desk);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sheet.control());
        Calculation calculation = calculator.calculation();
        Label title = words(sheet.content(), calculation.title(), plain);
        Lettering.heading(title, TITLE);
        words(sheet.content(), calculation.explanation() + (calculation.explanation().endsWith(".") ? "" : "."), plain);
        var rows = new Composite(sheet.content(), SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(InputRow.COLUMNS).spacing(Lettering.width(rows, 1), Lettering.height(rows, 0.25)).applyTo(rows);
        for (CalculatorInput input : calculator.inputs()) {
            inputs.add(new InputRow(rows, desk, calculator, input, () -> reader, this::answer, () -> take(input)));
        }
        basis();
        // Below the sheet and not on it, so that the answer is in sight whichever input is typed into.
        answer = new AnswerView(page, desk, this::put);
        buttons();
        List<Subscription> subscriptions = List.of(desk.onPalette(now -> colour()), desk.settings().onChange(settings -> {
            reader = reader();
            show();
        }));
        sheet.control().addDisposeListener(event -> subscriptions.forEach(Subscription::close));
        colour();
        show();
    }

    private EntryReader reader() {
        return new EntryReader(desk.settings().units(), desk.labels(), desk.clock());
    }

    boolean isOf(CalculatorList.Entry entry) {
        return calculator.calculation().name().equals(entry.calculation().name());
    }

    private static Label words(Composite parent, String sentence, List<Label> into) {
        var label = new Label(parent, SWT.WRAP);
        label.setText(sentence.replace("&", "&&"));
        into.add(label);
        return label;
    }

    private void buttons() {
        var row = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).extendedMargins(0, 0, Lettering.height(row, 0.4), 0).applyTo(row);
        button(row, "copy", this::copy);
        button(row, "clear", this::clear);
    }

    private void button(Composite row, String key, Runnable pressed) {
        var button = new Button(row, SWT.PUSH);
        String word = "sheet." + key;
        button.setText(texts.get(word));
        button.setData("garboard.id", "calculator." + key);
        button.addListener(SWT.Selection, event -> pressed.run());
    }

    private void basis() {
        Calculation calculation = calculator.calculation();
        var area = new Composite(sheet.content(), SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(Lettering.width(area, 2), Lettering.height(area, 0.3))
            .extendedMargins(0, 0, Lettering.height(area, 0.6), 0).applyTo(area);
        line(area, texts.get("sheet.formula"), calculation.formula());
        line(area, texts.get("sheet.valid"), calculation.validity());
        line(area, texts.get("sheet.source"), calculation.source().citation());
        line(area, texts.get("sheet.status"), texts.get("status." + calculation.source().status().name()));
        if (!calculation.source().note().isEmpty()) {
            line(area, texts.get("sheet.note"), calculation.source().note());
        }
        line(area, texts.get("sheet.console"), calculation.name());
    }

    private void line(Composite area, String called, String said) {
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(words(area, called, quiet));
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(words(area, said, plain));
    }

    private void colour() {
        quiet.forEach(label -> label.setForeground(desk.palette().faint()));
        plain.forEach(label -> label.setForeground(desk.palette().ink()));
    }

    /** Shows what is typed, and the answer to it. */
    void show() {
        inputs.forEach(InputRow::show);
        answer();
    }

    private void answer() {
        Answering now = calculator.answer(reader);
        Optional<CalculatorInput> refused = now instanceof Answering.Refused one ? one.input() : Optional.empty();
        for (InputRow row : inputs) {
            row.refuse(refused.filter(row.input()::equals).map(input -> ((Answering.Refused) now).why()));
        }
        answer.show(now);
    }

    private void clear() {
        calculator.clear();
        show();
        inputs.getFirst().setFocus();
    }

    private void take(CalculatorInput input) {
        var picker = new FieldPicker(sheet.control().getShell(), desk, texts.get("take.title", input.title()), texts.get("take.sentence"),
            texts.get("take.take"), figures.toTake(calculator, input));
        picker.ask().ifPresent(figure -> {
            calculator.type(input, figure.text());
            show();
        });
    }

    private void put(Answering.Line line) {
        var picker = new FieldPicker(sheet.control().getShell(), desk, texts.get("put.title", line.shown().getFirst()), texts.get("put.sentence"),
            texts.get("put.put"), figures.toPut(calculator, line));
        picker.ask().ifPresent(figure -> {
            figures.put(line, figure.field(), texts.get("step.put", figure.words()));
            answer.tell(texts.get("put.done", line.shown().getFirst(), figure.words()));
        });
    }

    /** As one would write it down: what was asked, what was put in, what came out, and where the formula comes from. */
    private void copy() {
        var lines = new ArrayList<String>();
        lines.add(calculator.calculation().title());
        for (CalculatorInput input : calculator.inputs()) {
            String text = calculator.text(input).strip();
            if (!text.isEmpty() || input.taken().isPresent()) {
                lines.add("  " + input.title() + ": " + (text.isEmpty() ? input.taken().get() : text));
            }
        }
        lines.addAll(answer.written());
        lines.add(texts.get("sheet.formula") + ": " + calculator.calculation().formula());
        lines.add(texts.get("sheet.source") + ": " + calculator.calculation().source());
        var clipboard = new Clipboard(sheet.control().getDisplay());
        clipboard.setContents(new Object[] {String.join(System.lineSeparator(), lines)}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
        answer.tell(texts.get("copied"));
    }
}
