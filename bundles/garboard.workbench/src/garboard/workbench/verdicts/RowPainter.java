// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.verdicts;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;

import garboard.checks.Gravity;
import garboard.checks.Verdict;
import garboard.session.verdicts.VerdictList.Heading;
import garboard.session.verdicts.VerdictList.Line;
import garboard.session.verdicts.VerdictList.Row;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Mark;
import garboard.workbench.look.Palette;
import garboard.workbench.text.Texts;

/** Draws the rows of the list of verdicts, and says them. */
final class RowPainter {

    private final Table table;
    private final Desk desk;
    private final Texts.Of texts;
    private final Recent recent;
    private final Font bold;
    private final Font small;
    private int width;
    private int line;
    private int inset;

    RowPainter(Table table, Desk desk, Recent recent) {
        this.table = table;
        this.desk = desk;
        this.texts = desk.texts(RowPainter.class);
        this.recent = recent;
        this.bold = Lettering.font(table, 100, SWT.BOLD);
        this.small = Lettering.font(table, 90, SWT.NORMAL);
        table.addListener(SWT.Dispose, event -> {
            bold.dispose();
            small.dispose();
        });
    }

    /** Takes the colours and the size of the letters of now. */
    void turn() {
        Palette palette = desk.palette();
        table.setBackground(palette.sheet());
        table.setForeground(palette.ink());
        line = Lettering.height(table, 1);
        inset = Lettering.width(table, 0.8);
    }

    /** @param now how wide the rows are; to ask the table for each row would cost more than to draw it */
    void fit(int now) {
        width = now;
    }

    void measure(Event event) {
        event.height = line * 5 / 2;
    }

    /** The row's own ground: the band when it is chosen, with a bar at its edge, so that it is not told by colour alone. */
    void erase(Event event) {
        event.detail &= ~SWT.FOREGROUND;
        boolean selected = (event.detail & SWT.SELECTED) != 0;
        event.detail &= ~(SWT.SELECTED | SWT.HOT | SWT.BACKGROUND);
        GC gc = event.gc;
        gc.setBackground(selected ? desk.palette().band() : desk.palette().sheet());
        gc.fillRectangle(0, event.y, width, event.height);
        if (selected) {
            gc.setBackground(desk.palette().accent());
            gc.fillRectangle(0, event.y, Math.max(3, inset / 3), event.height);
        }
    }

    void paint(Event event, Row row, VerdictWords words) {
        switch (row) {
            case Heading heading -> paint(event, heading, words);
            case Line one -> paint(event, one, words);
        }
    }

    private void paint(Event event, Heading heading, VerdictWords words) {
        GC gc = event.gc;
        Palette palette = desk.palette();
        gc.setForeground(palette.line());
        if (event.y > 0) {
            gc.drawLine(0, event.y, width, event.y);
        }
        int size = line;
        int y = event.y + line / 3;
        Mark.draw(gc, palette, heading.standing(), inset, y, size);
        gc.setFont(bold);
        gc.setForeground(palette.of(heading.standing()));
        text(gc, texts.get("group", words.standing(heading.standing()), heading.count()), 2 * inset + size, y, room());
        gc.setFont(small);
        gc.setForeground(palette.faint());
        text(gc, texts.get("means." + heading.standing().name()), 2 * inset + size, y + line, room());
    }

    private void paint(Event event, Line one, VerdictWords words) {
        GC gc = event.gc;
        Palette palette = desk.palette();
        Verdict verdict = one.verdict();
        int size = line * 4 / 5;
        int x = 2 * inset + line;
        int y = event.y + line / 4;
        Mark.draw(gc, palette, verdict.standing(), inset + (line - size) / 2, y + (line - size) / 2, size);
        int end = room();
        if (recent.contains(one.key())) {
            gc.setFont(small);
            gc.setForeground(palette.copper());
            String changed = texts.get("row.changed");
            int needed = gc.textExtent(changed).x;
            gc.drawText(changed, end - needed, y, true);
            gc.setBackground(palette.copper());
            gc.fillRectangle(end + inset / 2, event.y + line / 4, Math.max(2, inset / 3), event.height - line / 2);
            end -= needed + inset;
        }
        gc.setFont(verdict.check().gravity() == Gravity.DANGER_TO_PEOPLE && verdict.needsAction() ? bold : table.getFont());
        gc.setForeground(palette.ink());
        text(gc, verdict.check().title(), x, y, end);
        gc.setFont(small);
        Optional<String> figures = words.figures(verdict);
        int right = room();
        if (figures.isPresent()) {
            int needed = gc.textExtent(figures.get()).x;
            gc.setForeground(palette.of(verdict.standing()));
            gc.drawText(figures.get(), right - needed, y + line, true);
            right -= needed + inset;
        }
        gc.setForeground(palette.faint());
        text(gc, words.subject(verdict), x, y + line, right);
    }

    private int room() {
        return width - inset;
    }

    /** Draws a text, cut short where there is no room for it. */
    private static void text(GC gc, String text, int x, int y, int end) {
        if (end > x) {
            gc.drawText(Lettering.cut(gc, text, end - x), x, y, true);
        }
    }

    /** {@return a row as a screen reader says it} */
    String spoken(Row row, VerdictWords words) {
        return switch (row) {
            case Heading heading -> texts.get("group.spoken", words.standing(heading.standing()), heading.count(),
                texts.get("means." + heading.standing().name()));
            case Line one -> {
                String said = texts.get("row.spoken", words.standing(one.verdict().standing()), one.verdict().check().title(),
                    words.subject(one.verdict()), words.sentence(one.verdict()));
                yield recent.contains(one.key()) ? texts.get("row.spoken.changed", said) : said;
            }
        };
    }
}
