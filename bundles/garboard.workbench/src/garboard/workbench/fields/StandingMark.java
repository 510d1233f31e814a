// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.workbench.look.Palette;

/** The worst standing that a field has part in, as a small mark beside its name: each standing has a shape of its own. */
final class StandingMark {

    private static final int TITLES = 6;

    private final Canvas canvas;
    private final FieldContext context;
    private Optional<Standing> standing = Optional.empty();

    StandingMark(Composite parent, FieldContext context) {
        this.context = context;
        canvas = new Canvas(parent, SWT.NO_FOCUS);
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
    }

    Canvas control() {
        return canvas;
    }

    Optional<Standing> standing() {
        return standing;
    }

    /** Shows the worst of some verdicts. */
    void show(List<Verdict> verdicts) {
        List<Verdict> told = verdicts.stream().filter(verdict -> verdict.standing() != Standing.DOES_NOT_APPLY).toList();
        Optional<Standing> worst = told.stream().findFirst().map(Verdict::standing);
        String tip = String.join("\n", told.stream().limit(TITLES)
            .map(verdict -> context.texts().get("mark.verdict", context.texts().get("standing." + verdict.standing().name()), verdict.check().title())).toList());
        String now = tip.isEmpty() ? null : tip;
        if (!java.util.Objects.equals(canvas.getToolTipText(), now)) {
            canvas.setToolTipText(now);
        }
        if (!worst.equals(standing)) {
            standing = worst;
            canvas.redraw();
        }
    }

    private void paint(GC gc) {
        standing.ifPresent(shown -> {
            Rectangle area = canvas.getClientArea();
            int size = Math.min(area.width, area.height) * 2 / 3 / 2 * 2;
            gc.setAntialias(SWT.ON);
            draw(gc, context.desk().palette(), shown, area.x + (area.width - size) / 2, area.y + (area.height - size) / 2, size);
        });
    }

    /** A dot for what is met; the worse, the more corners. */
    static void draw(GC gc, Palette palette, Standing shown, int x, int y, int size) {
        gc.setForeground(palette.of(shown));
        gc.setBackground(palette.of(shown));
        gc.setLineWidth(Math.max(1, size / 6));
        int half = size / 2;
        switch (shown) {
            case MEETS -> gc.fillOval(x + size / 4, y + size / 4, half, half);
            case CANNOT_TELL -> gc.drawOval(x + 1, y + 1, size - 2, size - 2);
            case ACCEPTED -> {
                gc.drawPolygon(new int[] {x + half, y, x + size, y + half, x + half, y + size, x, y + half});
                gc.fillOval(x + half - size / 6, y + half - size / 6, size / 3, size / 3);
            }
            case BORDERLINE -> gc.fillPolygon(new int[] {x + half, y, x + size, y + half, x + half, y + size, x, y + half});
            case FALLS_SHORT -> gc.fillPolygon(new int[] {x, y, x + size, y, x + half, y + size});
            case CHECK_BROKE -> {
                gc.drawLine(x, y, x + size, y + size);
                gc.drawLine(x + size, y, x, y + size);
            }
            case DOES_NOT_APPLY -> { }
        }
    }
}
