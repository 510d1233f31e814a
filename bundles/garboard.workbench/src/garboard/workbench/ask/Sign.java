// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.ask;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import garboard.checks.Standing;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Palette;

/** The sign beside a question, by its shape first: a disc for what is only told or asked, a triangle where something can be lost. */
final class Sign extends Canvas {

    private final Question.Tone tone;
    private final Palette palette;
    private final int size;
    private final Font letters;

    Sign(Composite parent, Question.Tone tone, Palette palette) {
        super(parent, SWT.NO_FOCUS);
        this.tone = tone;
        this.palette = palette;
        this.size = Lettering.height(parent, 2.4);
        this.letters = Lettering.font(parent, 160, SWT.BOLD);
        addPaintListener(event -> paint(event.gc));
        addListener(SWT.Dispose, event -> letters.dispose());
    }

    @Override
    public Point computeSize(int width, int height, boolean changed) {
        return new Point(size, size);
    }

    private boolean pointed() {
        return tone == Question.Tone.WARNING || tone == Question.Tone.FAULT;
    }

    private void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        Color colour = switch (tone) {
            case NOTE, QUESTION -> palette.accent();
            case WARNING -> palette.of(Standing.BORDERLINE);
            case FAULT -> palette.of(Standing.FALLS_SHORT);
        };
        gc.setBackground(colour);
        float inset = size / 24f;
        if (pointed()) {
            var triangle = new Path(getDisplay());
            triangle.moveTo(size / 2f, inset);
            triangle.lineTo(size - inset, size - 2 * inset);
            triangle.lineTo(inset, size - 2 * inset);
            triangle.close();
            gc.fillPath(triangle);
            gc.setForeground(colour);
            gc.setLineWidth(Math.max(1, size / 12));
            gc.setLineJoin(SWT.JOIN_ROUND);
            gc.drawPath(triangle);
            triangle.dispose();
        } else {
            gc.fillOval((int) inset, (int) inset, size - 2 * (int) inset, size - 2 * (int) inset);
        }
        String letter = tone == Question.Tone.QUESTION ? "?" : tone == Question.Tone.NOTE ? "i" : "!";
        gc.setFont(letters);
        gc.setForeground(palette.ground());
        Point extent = gc.textExtent(letter);
        gc.drawText(letter, (size - extent.x) / 2, (size - extent.y) / 2 + (pointed() ? size / 10 : 0), SWT.DRAW_TRANSPARENT);
    }
}
