// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.function.Supplier;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
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

import garboard.session.Listeners.Subscription;
import garboard.workbench.Desk;
import garboard.workbench.look.Palette;

/** The heading of a section: a mark that shows whether it is open, the words, a quiet note at the right. Pressed with mouse, Enter or space. */
final class SectionHead {

    private static final int BIGGER = 1;

    private final Desk desk;
    private String heading;
    private final Canvas canvas;
    private final Font font;
    private Supplier<String> note = () -> "";
    private String painted = "";
    private boolean open;

    SectionHead(Composite parent, Desk desk, String heading, Runnable pressed) {
        this.desk = desk;
        this.heading = heading;
        canvas = new Head(parent);
        var resources = new LocalResourceManager(JFaceResources.getResources(), canvas);
        font = resources.create(FontDescriptor.createFrom(canvas.getFont()).setStyle(SWT.BOLD).increaseHeight(BIGGER));
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.addListener(SWT.MouseDown, event -> pressed.run());
        canvas.addListener(SWT.KeyDown, event -> key(event, pressed));
        canvas.addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_RETURN);
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        Subscription palette = desk.onPalette(now -> canvas.redraw());
        canvas.addDisposeListener(event -> palette.close());
        makeKnown();
    }

    /** A canvas as high as the words. */
    private final class Head extends Canvas {
        Head(Composite parent) {
            super(parent, SWT.NONE);
        }

        @Override
        public Point computeSize(int widthHint, int heightHint, boolean changed) {
            var gc = new GC(this);
            gc.setFont(font);
            Point words = gc.textExtent(heading);
            gc.dispose();
            return new Point(widthHint == SWT.DEFAULT ? words.x + 3 * words.y : widthHint, words.y * 7 / 4);
        }

        @Override
        protected void checkSubclass() {
            // It only measures itself otherwise.
        }
    }

    private void makeKnown() {
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = heading;
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = note.get();
            }
        });
        canvas.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_PUSHBUTTON;
            }

            @Override
            public void getState(AccessibleControlEvent event) {
                event.detail = ACC.STATE_FOCUSABLE | (open ? ACC.STATE_EXPANDED : ACC.STATE_COLLAPSED);
            }
        });
    }

    Canvas control() {
        return canvas;
    }

    /** @param words asked for when they are painted, and only then */
    void note(Supplier<String> words) {
        note = words;
        canvas.redraw();
    }

    void heading(String words) {
        if (!heading.equals(words)) {
            heading = words;
            canvas.redraw();
        }
    }

    /** What is said beside the heading may have changed; only then it is painted anew. */
    void noteAgain() {
        if (canvas.isVisible() && !note.get().equals(painted)) {
            canvas.redraw();
        }
    }

    void setOpen(boolean now) {
        open = now;
        canvas.redraw();
    }

    private void key(Event event, Runnable pressed) {
        boolean press = event.character == ' ' || event.character == SWT.CR || event.keyCode == SWT.KEYPAD_CR
            || event.keyCode == SWT.ARROW_RIGHT && !open || event.keyCode == SWT.ARROW_LEFT && open;
        if (press) {
            pressed.run();
        }
    }

    private void paint(GC gc) {
        Palette palette = desk.palette();
        Rectangle area = canvas.getClientArea();
        gc.setAntialias(SWT.ON);
        gc.setFont(font);
        Point words = gc.textExtent(heading);
        int middle = area.height / 2;
        gc.setForeground(palette.line());
        gc.drawLine(0, area.height - 1, area.width, area.height - 1);
        gc.setBackground(palette.accent());
        int size = words.y / 4;
        int x = words.y / 2;
        gc.fillPolygon(open ? new int[] {x - size, middle - size / 2, x + size, middle - size / 2, x, middle + size / 2 + 1}
            : new int[] {x - size / 2, middle - size, x + size / 2 + 1, middle, x - size / 2, middle + size});
        gc.setForeground(palette.ink());
        gc.drawText(heading, words.y * 5 / 4, middle - words.y / 2, true);
        gc.setFont(canvas.getFont());
        gc.setForeground(palette.faint());
        String beside = note.get();
        painted = beside;
        Point quiet = gc.textExtent(beside);
        if (words.y * 2 + words.x + quiet.x < area.width) {
            gc.drawText(beside, area.width - quiet.x - words.y / 2, middle - quiet.y / 2, true);
        }
        if (canvas.isFocusControl()) {
            gc.setForeground(palette.accent());
            gc.drawRoundRectangle(0, 1, area.width - 1, area.height - 4, 6, 6);
        }
    }
}
