// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import garboard.checks.Standing;
import garboard.session.Listeners.Subscription;
import garboard.workbench.Desk;
import garboard.workbench.fields.StandingMark;

/** A line of words behind the mark of a standing: what it is about, then how it stands. */
final class MarkLine extends Canvas {

    private final Desk desk;
    private final Font strong;
    private String about = "";
    private String words = "";
    private Standing standing = Standing.MEETS;
    private boolean measured;
    private int line;
    private int aboutWidth;
    private int wordsWidth;

    MarkLine(Composite parent, Desk desk) {
        super(parent, SWT.NO_FOCUS);
        this.desk = desk;
        strong = FontDescriptor.createFrom(getFont()).withStyle(SWT.BOLD).createFont(getDisplay());
        Subscription palette = desk.onPalette(now -> redraw());
        addListener(SWT.Paint, event -> paint(event.gc));
        addDisposeListener(event -> {
            palette.close();
            strong.dispose();
        });
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = about + ": " + words;
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_LABEL;
            }
        });
    }

    void show(String what, Standing how, String said) {
        if (!what.equals(about) || how != standing || !said.equals(words)) {
            about = what;
            standing = how;
            words = said;
            measured = false;
            redraw();
            Room.fit(this, true);
        }
    }

    /** Texts are measured when they change, and not with each layout of the sheet. */
    private void measure(GC gc) {
        gc.setFont(strong);
        line = gc.getFontMetrics().getHeight();
        aboutWidth = gc.textExtent(about).x;
        gc.setFont(getFont());
        wordsWidth = gc.textExtent(words).x;
        measured = true;
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        if (!measured) {
            var gc = new GC(this);
            measure(gc);
            gc.dispose();
        }
        int width = widthHint == SWT.DEFAULT ? 40 * line : widthHint;
        if (oneLine(width)) {
            return new Point(width, line * 3 / 2);
        }
        TextLayout below = below(width);
        int height = below.getBounds().height;
        below.dispose();
        return new Point(width, line * 3 / 2 + height);
    }

    /** The words below what they are about, in as many lines as they need. */
    private TextLayout below(int width) {
        var layout = new TextLayout(getDisplay());
        layout.setFont(getFont());
        layout.setText(words);
        layout.setWidth(Math.max(1, width - line * 2));
        return layout;
    }

    private boolean oneLine(int room) {
        return line * 5 / 2 + aboutWidth + wordsWidth <= room;
    }

    private void paint(GC gc) {
        if (!measured) {
            measure(gc);
        }
        boolean one = oneLine(getClientArea().width);
        int size = line * 2 / 3 / 2 * 2;
        StandingMark.draw(gc, desk.palette().of(standing), standing, line / 4, line / 4 + (line - size) / 2, size);
        gc.setForeground(desk.palette().ink());
        gc.setFont(strong);
        gc.drawText(about, line * 3 / 2, line / 4, true);
        gc.setFont(getFont());
        gc.setForeground(desk.palette().of(standing));
        if (one) {
            gc.drawText(words, line * 3 / 2 + aboutWidth + line * 2 / 3, line / 4, true);
        } else {
            TextLayout below = below(getClientArea().width);
            below.draw(gc, line * 3 / 2, line * 5 / 4);
            below.dispose();
        }
    }

    @Override
    protected void checkSubclass() {
        // It only measures itself otherwise.
    }
}
