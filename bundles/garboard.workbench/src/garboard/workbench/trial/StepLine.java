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
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.session.Listeners.Subscription;
import garboard.workbench.Desk;
import garboard.workbench.look.Palette;

/**
 * A step of the procedure on one line: a ring with its number that is ticked with a press, what it is called, what to beware of, when it was
 * done. Pressed beside the ring it opens. With the keyboard: arrows go on, Enter opens, and letters answer.
 */
final class StepLine extends Canvas {

    /** What a line asks of the list that it stands in. */
    interface Wish {
        void open(StepLine line);

        void answer(StepLine line, Answer answer);

        void step(StepLine line, int by);
    }

    /**
     * What a line shows.
     *
     * @param title what the step is called
     * @param hazard what to beware of, in a word or two
     * @param state how it stands, in words
     * @param remark what is odd about it: out of order, or no longer concerning the installation
     */
    record Look(int number, String title, String hazard, Answer answer, String state, String remark, boolean next) {
    }

    private final Desk desk;
    private final Wish wish;
    private final Font strong;
    private Look look = new Look(0, "", "", Answer.UNANSWERED, "", "", false);
    private boolean open;
    private boolean measured;
    private int lineHeight;
    private int titleWidth;
    private int rightWidth;

    StepLine(Composite parent, Desk desk, Wish wish) {
        super(parent, SWT.NONE);
        this.desk = desk;
        this.wish = wish;
        strong = FontDescriptor.createFrom(getFont()).withStyle(SWT.BOLD).createFont(getDisplay());
        Subscription palette = desk.onPalette(now -> redraw());
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.MouseDown, this::press);
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Traverse, this::traverse);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addDisposeListener(event -> {
            palette.close();
            strong.dispose();
        });
        makeKnown();
    }

    private void makeKnown() {
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = said();
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_LISTITEM;
            }

            @Override
            public void getState(AccessibleControlEvent event) {
                event.detail = ACC.STATE_FOCUSABLE | (open ? ACC.STATE_EXPANDED : ACC.STATE_COLLAPSED);
            }
        });
    }

    /** {@return the line in words} */
    String said() {
        return String.join(". ", java.util.stream.Stream.of(look.number() + " " + look.title(), look.state(), look.hazard(), look.remark())
            .filter(words -> !words.isEmpty()).toList());
    }

    void show(Look now) {
        if (!now.equals(look)) {
            look = now;
            measured = false;
            redraw();
            Room.fit(this, true);
        }
    }

    void setOpen(boolean now) {
        open = now;
        redraw();
    }

    boolean isOpen() {
        return open;
    }

    private void press(Event event) {
        setFocus();
        if (event.x < ring().x + ring().width + ring().width / 2) {
            wish.answer(this, look.answer() == Answer.YES ? Answer.UNANSWERED : Answer.YES);
        } else {
            wish.open(this);
        }
    }

    private void key(Event event) {
        if ((event.stateMask & SWT.MODIFIER_MASK) != 0) {
            return;
        }
        var texts = desk.texts(StepLine.class);
        String typed = String.valueOf(Character.toLowerCase(event.character));
        if (event.character == SWT.CR || event.keyCode == SWT.KEYPAD_CR || event.keyCode == SWT.ARROW_RIGHT && !open
            || event.keyCode == SWT.ARROW_LEFT && open) {
            wish.open(this);
        } else if (event.character == ' ') {
            wish.answer(this, look.answer() == Answer.YES ? Answer.UNANSWERED : Answer.YES);
        } else if (event.keyCode == SWT.DEL || event.keyCode == SWT.BS) {
            wish.answer(this, Answer.UNANSWERED);
        } else if (typed.equals(texts.get("answer.key.YES"))) {
            wish.answer(this, Answer.YES);
        } else if (typed.equals(texts.get("answer.key.NO"))) {
            wish.answer(this, Answer.NO);
        } else if (typed.equals(texts.get("answer.key.NOT_APPLICABLE"))) {
            wish.answer(this, Answer.NOT_APPLICABLE);
        }
    }

    private void traverse(Event event) {
        if (event.detail == SWT.TRAVERSE_ARROW_NEXT || event.detail == SWT.TRAVERSE_ARROW_PREVIOUS) {
            event.doit = false;
            if (event.keyCode == SWT.ARROW_DOWN || event.keyCode == SWT.ARROW_UP) {
                wish.step(this, event.keyCode == SWT.ARROW_DOWN ? 1 : -1);
            }
        } else {
            event.doit = event.detail != SWT.TRAVERSE_RETURN;
        }
    }

    // How it looks ----------------------------------------------------------------------------------------------------

    private int line() {
        measure();
        return lineHeight;
    }

    /** Texts are measured when they change, and not with each layout of the sheet. */
    private void measure() {
        if (measured) {
            return;
        }
        var gc = new GC(this);
        gc.setFont(strong);
        lineHeight = gc.getFontMetrics().getHeight();
        titleWidth = gc.textExtent(look.title()).x;
        gc.setFont(getFont());
        rightWidth = gc.textExtent(right()).x;
        gc.dispose();
        measured = true;
    }

    private Rectangle ring() {
        int line = line();
        int size = line * 4 / 3 / 2 * 2;
        return new Rectangle(line / 3, (line * 2 - size) / 2, size, size);
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        int line = line();
        int width = widthHint == SWT.DEFAULT ? 30 * line : widthHint;
        return new Point(width, line * 2 + (aside(width) ? 0 : line) + (look.remark().isEmpty() ? 0 : line));
    }

    /** Whether hazard and state stand beside the title. */
    private boolean aside(int width) {
        measure();
        return rightWidth == 0 || lineHeight * 9 / 2 + titleWidth + rightWidth <= width;
    }

    private String right() {
        return look.hazard().isEmpty() ? look.state() : look.state().isEmpty() ? look.hazard() : look.hazard() + "   " + look.state();
    }

    private void paint(GC gc) {
        Palette palette = desk.palette();
        Rectangle area = getClientArea();
        gc.setAntialias(SWT.ON);
        int line = line();
        if (open || isFocusControl()) {
            gc.setBackground(palette.band());
            gc.fillRectangle(area);
        }
        paintRing(gc, palette);
        boolean done = look.answer() == Answer.YES || look.answer() == Answer.NOT_APPLICABLE;
        gc.setFont(look.next() || open ? strong : getFont());
        gc.setForeground(done ? palette.faint() : palette.ink());
        gc.drawText(look.title(), line * 5 / 2, line / 2, true);
        gc.setFont(getFont());
        boolean aside = aside(area.width);
        int y = aside ? line / 2 : line * 3 / 2;
        int x = aside ? area.width - gc.textExtent(right()).x - line / 2 : line * 5 / 2;
        if (!look.hazard().isEmpty()) {
            gc.setForeground(done ? palette.faint() : palette.of(Standing.BORDERLINE));
            gc.drawText(look.hazard(), x, y, true);
            x += gc.textExtent(look.hazard() + "   ").x;
        }
        gc.setForeground(look.answer() == Answer.NO ? palette.of(Standing.FALLS_SHORT) : palette.faint());
        gc.drawText(look.state(), x, y, true);
        gc.setForeground(palette.of(Standing.BORDERLINE));
        gc.drawText(look.remark(), line * 5 / 2, y + (aside ? line * 5 / 4 : line), true);
        if (isFocusControl()) {
            gc.setForeground(palette.accent());
            gc.drawRoundRectangle(0, 0, area.width - 1, area.height - 1, 6, 6);
        }
    }

    private void paintRing(GC gc, Palette palette) {
        Rectangle ring = ring();
        int half = ring.width / 2;
        gc.setLineWidth(Math.max(1, ring.width / 12));
        gc.setForeground(switch (look.answer()) {
            case YES -> palette.of(Standing.MEETS);
            case NO -> palette.of(Standing.FALLS_SHORT);
            case NOT_APPLICABLE -> palette.of(Standing.DOES_NOT_APPLY);
            case UNANSWERED -> look.next() ? palette.accent() : palette.faint();
        });
        gc.setBackground(gc.getForeground());
        gc.drawOval(ring.x, ring.y, ring.width, ring.height);
        switch (look.answer()) {
            case YES -> {
                gc.fillOval(ring.x, ring.y, ring.width, ring.height);
                gc.setForeground(palette.ground());
                gc.setLineWidth(Math.max(2, ring.width / 8));
                gc.drawPolyline(new int[] {ring.x + half / 2, ring.y + half, ring.x + half * 7 / 8, ring.y + half * 11 / 8, ring.x + half * 3 / 2,
                    ring.y + half * 5 / 8});
            }
            case NO -> {
                gc.setLineWidth(Math.max(2, ring.width / 8));
                gc.drawLine(ring.x + half * 5 / 8, ring.y + half * 5 / 8, ring.x + half * 11 / 8, ring.y + half * 11 / 8);
                gc.drawLine(ring.x + half * 11 / 8, ring.y + half * 5 / 8, ring.x + half * 5 / 8, ring.y + half * 11 / 8);
            }
            case NOT_APPLICABLE -> gc.drawLine(ring.x + half / 2, ring.y + half, ring.x + half * 3 / 2, ring.y + half);
            case UNANSWERED -> {
                gc.setFont(look.next() ? strong : getFont());
                String number = String.valueOf(look.number());
                Point extent = gc.textExtent(number);
                gc.drawText(number, ring.x + half - extent.x / 2, ring.y + half - extent.y / 2, true);
            }
        }
        gc.setLineWidth(1);
    }

    @Override
    protected void checkSubclass() {
        // It only measures itself otherwise.
    }
}
