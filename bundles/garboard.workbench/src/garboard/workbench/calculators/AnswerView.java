// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.calculators;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import garboard.checks.Standing;
import garboard.session.Listeners.Subscription;
import garboard.session.calculators.Answering;
import garboard.session.calculators.Answering.Line;
import garboard.session.calculators.CalculatorInput;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Spoken;
import garboard.workbench.text.Texts;

/** The answer of a calculation on a band of its own; or what is still needed, or why there is none. */
final class AnswerView {

    private static final int FIGURE = 125;
    /** Share of the height, in per cent. */
    private static final int MOST = 45;

    private final Desk desk;
    private final Texts.Of texts;
    private final Consumer<Line> put;
    private final ScrolledComposite scrolled;
    private final Composite band;
    private final Composite area;
    private Answering shown = new Answering.Answered(List.of(), List.of());
    private final Label told;

    /** @param put asked for when a result is to go into the record */
    AnswerView(Composite parent, Desk desk, Consumer<Line> put) {
        this.desk = desk;
        this.texts = desk.texts(AnswerView.class);
        this.put = put;
        scrolled = new ScrolledComposite(parent, SWT.V_SCROLL);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        GridDataFactory.fillDefaults().grab(true, false).hint(1, 1).applyTo(scrolled);
        band = new Composite(scrolled, SWT.NONE);
        scrolled.setContent(band);
        int margin = Lettering.height(parent, 0.6);
        GridLayoutFactory.fillDefaults().margins(margin, margin).spacing(0, margin / 2).applyTo(band);
        area = new Composite(band, SWT.NONE);
        area.setData("garboard.id", "calculator.answer");
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(Lettering.width(parent, 2), margin / 2).applyTo(area);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(area);
        told = new Label(band, SWT.WRAP);
        told.setData("garboard.id", "calculator.told");
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).exclude(true).applyTo(told);
        told.setVisible(false);
        colour();
        Subscription palette = desk.onPalette(now -> {
            colour();
            fill();
        });
        scrolled.addListener(SWT.Resize, event -> fit());
        parent.addListener(SWT.Resize, event -> fit());
        band.addDisposeListener(event -> palette.close());
    }

    /** As high as the answer, but never so high that the inputs have no room. */
    private void fit() {
        int width = scrolled.getClientArea().width;
        if (width <= 0) {
            return;
        }
        int wanted = band.computeSize(width, SWT.DEFAULT).y;
        int height = Math.min(wanted, Math.max(scrolled.getParent().getClientArea().height * MOST / 100, 1));
        scrolled.setMinHeight(wanted);
        var place = (GridData) scrolled.getLayoutData();
        if (place.heightHint != height) {
            place.heightHint = height;
            scrolled.requestLayout();
        }
    }

    private void colour() {
        scrolled.setBackground(desk.palette().band());
        band.setBackground(desk.palette().band());
        area.setBackground(desk.palette().band());
        told.setBackground(desk.palette().band());
        told.setForeground(desk.palette().of(Standing.MEETS));
    }

    void show(Answering now) {
        if (!now.equals(shown)) {
            shown = now;
            tell("");
            fill();
        }
    }

    /** Says what was done with the answer. */
    void tell(String words) {
        told.setText(words.replace("&", "&&"));
        told.setVisible(!words.isEmpty());
        ((GridData) told.getLayoutData()).exclude = words.isEmpty();
        told.requestLayout();
        fit();
    }

    /** {@return the answer as lines of text} */
    List<String> written() {
        var lines = new ArrayList<String>();
        if (shown instanceof Answering.Answered answered) {
            answered.lines().forEach(line -> lines.add(line.name() + ": " + String.join(" = ", line.shown())));
            answered.warnings().forEach(warning -> lines.add(texts.get("answer.note", warning)));
        }
        return lines;
    }

    private void fill() {
        for (Control child : area.getChildren()) {
            child.dispose();
        }
        switch (shown) {
            case Answering.Waiting waiting -> sentence(texts.get("answer.needed",
                waiting.needed().stream().map(CalculatorInput::title).collect(Collectors.joining(", "))), false);
            case Answering.Unread unread -> sentence(texts.get("answer.unread",
                unread.inputs().stream().map(CalculatorInput::title).collect(Collectors.joining(", "))), true);
            case Answering.Refused refused -> sentence(refused.why(), true);
            case Answering.Answered answered -> {
                answered.lines().forEach(this::line);
                answered.warnings().forEach(warning -> sentence(texts.get("answer.note", warning), true));
            }
        }
        area.requestLayout();
        fit();
    }

    private void sentence(String words, boolean wrong) {
        Label label = label(words, SWT.WRAP);
        label.setForeground(wrong ? desk.palette().of(Standing.BORDERLINE) : desk.palette().faint());
        GridDataFactory.fillDefaults().span(3, 1).grab(true, false).hint(1, SWT.DEFAULT).applyTo(label);
    }

    private void line(Line line) {
        Label name = label(line.name(), SWT.WRAP);
        name.setForeground(desk.palette().ink());
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(name);
        var values = new Composite(area, SWT.NONE);
        values.setBackground(desk.palette().band());
        GridLayoutFactory.fillDefaults().numColumns(1).spacing(0, 0).applyTo(values);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(values);
        var first = new Label(values, SWT.WRAP);
        first.setText(line.shown().getFirst().replace("&", "&&"));
        first.setBackground(desk.palette().band());
        first.setForeground(desk.palette().ink());
        Lettering.heading(first, line.quantity().isPresent() ? FIGURE : 100);
        first.setData("garboard.id", "calculator.result:" + line.name());
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(first);
        if (line.shown().size() > 1) {
            var others = new Label(values, SWT.WRAP);
            others.setText("= " + String.join(" = ", line.shown().subList(1, line.shown().size())));
            others.setBackground(desk.palette().band());
            others.setForeground(desk.palette().faint());
            GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(others);
        }
        if (line.quantity().isPresent()) {
            var button = new Button(area, SWT.PUSH);
            button.setText(texts.get("answer.put"));
            button.setToolTipText(texts.get("answer.put.tip"));
            button.setData("garboard.id", "calculator.put:" + line.name());
            Spoken.name(button, texts.get("answer.put.spoken", line.name()));
            button.addListener(SWT.Selection, event -> put.accept(line));
        } else {
            label("", SWT.NONE);
        }
    }

    private Label label(String words, int style) {
        var label = new Label(area, style);
        label.setText(words.replace("&", "&&"));
        label.setBackground(desk.palette().band());
        return label;
    }
}
