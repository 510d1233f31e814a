// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.drawing;

import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import garboard.checks.Standing;
import garboard.session.drawing.AngleText;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Palette;
import garboard.workbench.look.Spoken;
import garboard.workbench.text.Texts;

/** An angle of heel or trim: its name, a slider, and the number, which can be typed. */
final class AngleField {

    private final Composite row;
    private final Label label;
    private final AngleBar bar;
    private final Text number;
    private final Label side;
    private final AngleText kind;
    private final Texts.Of texts;
    private final DoubleConsumer moved;
    private Palette palette;
    private double value;
    private boolean showing;

    /** @param id what it is called in {@code garboard.id}: {@code drawing.heel} */
    AngleField(Composite parent, String id, AngleText kind, Texts.Of texts, Palette palette, DoubleConsumer moved) {
        this.kind = kind;
        this.texts = texts;
        this.moved = moved;
        this.palette = palette;
        row = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).spacing(4, 0).applyTo(row);
        label = new Label(row, SWT.NONE);
        bar = new AngleBar(row, palette, moved);
        bar.canvas().setData("garboard.id", id);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(bar.canvas());
        number = new Text(row, SWT.BORDER | SWT.RIGHT);
        number.setData("garboard.id", id + ".number");
        GridDataFactory.fillDefaults().hint(Lettering.width(number, 8), SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(number);
        side = new Label(row, SWT.NONE);
        GridDataFactory.fillDefaults().hint(widest(), SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(side);
        number.addListener(SWT.Modify, event -> typed());
        number.addListener(SWT.FocusOut, event -> write());
        number.addListener(SWT.FocusIn, event -> number.selectAll());
        number.addListener(SWT.DefaultSelection, event -> write());
        number.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_ESCAPE) {
                event.doit = false;
                write();
                number.selectAll();
            }
        });
    }

    private int widest() {
        var gc = new GC(side);
        try {
            return 2 + Stream.of("angle.side." + kind + ".positive", "angle.side." + kind + ".negative", "angle.none")
                .mapToInt(key -> gc.textExtent(texts.get(key)).x).max().orElse(0);
        } finally {
            gc.dispose();
        }
    }

    Composite control() {
        return row;
    }

    void name(String called) {
        if (!called.equals(label.getText())) {
            label.setText(called);
            bar.name(called.replace("&", ""));
            Spoken.name(number, texts.get("angle.number", called.replace("&", "")));
            row.layout();
        }
    }

    void show(double degrees, AngleBar.Marks marks, String tip) {
        value = degrees;
        bar.show(degrees, marks, AngleText.written(degrees) + sideWord());
        tip(bar.canvas(), tip);
        if (!number.isFocusControl() || read().orElse(Double.NaN) != degrees) {
            write();
        }
        tellSide();
    }

    private void write() {
        showing = true;
        String text = AngleText.written(value);
        if (!text.equals(number.getText())) {
            number.setText(text);
        }
        showing = false;
        tellSide();
    }

    /** The number without a sign lies on the side on which the boat lies, when there is one. */
    private OptionalDouble read() {
        String text = number.getText();
        OptionalDouble read = kind.read(text);
        boolean bare = text.strip().matches("[\\d.,]+\\s*(\u00b0|deg)?");
        return bare && value < 0 && read.isPresent() ? OptionalDouble.of(-read.getAsDouble()) : read;
    }

    private void typed() {
        if (showing) {
            return;
        }
        OptionalDouble read = read();
        if (read.isPresent()) {
            moved.accept(read.getAsDouble());
            tellSide();
        } else if (number.getText().isBlank()) {
            tellSide();
        } else {
            side.setForeground(palette.of(Standing.FALLS_SHORT));
            side.setText(texts.get("angle.none"));
            tip(number, texts.get("angle.none." + kind));
        }
    }

    private static void tip(Control control, String text) {
        if (!text.equals(control.getToolTipText())) {
            control.setToolTipText(text);
        }
    }

    private void tellSide() {
        tip(number, texts.get("angle.tip." + kind));
        side.setForeground(palette.ink());
        String text = sideWord();
        if (!text.equals(side.getText())) {
            side.setText(text);
        }
    }

    private String sideWord() {
        return value == 0 ? "\u00b0" : texts.get("angle.side." + kind + (value > 0 ? ".positive" : ".negative"));
    }

    void paintIn(Palette now) {
        palette = now;
        bar.paintIn(now);
        tellSide();
    }
}
