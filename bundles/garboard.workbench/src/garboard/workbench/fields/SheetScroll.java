// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Layout;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.ScrollBar;
import org.eclipse.swt.widgets.Table;

import garboard.session.Listeners.Subscription;
import garboard.workbench.Desk;

/**
 * A sheet that is longer than the window: its parts stand below each other, as wide as the window; what gets the focus comes into view,
 * and the wheel turns the sheet wherever the pointer is.
 */
public final class SheetScroll {

    private static final int MARGIN = 12;
    private static final int BETWEEN = 6;
    private static final int WHEEL_LINES = 3;

    private final ScrolledComposite scrolled;
    private final Composite content;

    public SheetScroll(Composite parent, Desk desk) {
        scrolled = new ScrolledComposite(parent, SWT.V_SCROLL);
        content = new Composite(scrolled, SWT.NONE);
        content.setLayout(new Below());
        content.setBackgroundMode(SWT.INHERIT_DEFAULT);
        scrolled.setContent(content);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        colour(desk);
        Subscription palette = desk.onPalette(now -> colour(desk));
        Listener focus = this::follow;
        Listener wheel = this::wheel;
        content.getDisplay().addFilter(SWT.FocusIn, focus);
        content.getDisplay().addFilter(SWT.MouseWheel, wheel);
        content.addDisposeListener(event -> {
            palette.close();
            event.display.removeFilter(SWT.FocusIn, focus);
            event.display.removeFilter(SWT.MouseWheel, wheel);
        });
        scrolled.addListener(SWT.Resize, event -> step());
    }

    private void colour(Desk desk) {
        scrolled.setBackground(desk.palette().ground());
        content.setBackground(desk.palette().ground());
    }

    private void step() {
        ScrollBar bar = scrolled.getVerticalBar();
        bar.setIncrement(Math.max(1, WHEEL_LINES * scrolled.getFont().getFontData()[0].getHeight() * 2));
        bar.setPageIncrement(Math.max(1, scrolled.getClientArea().height * 9 / 10));
    }

    /** {@return the control that scrolls, for its layout data} */
    public Control control() {
        return scrolled;
    }

    /** {@return where the parts of the sheet are made: each stands below the one before, as wide as the sheet} */
    public Composite content() {
        return content;
    }

    private void follow(Event event) {
        if (event.widget instanceof Control control && isInside(control)) {
            if (control == control.getDisplay().getCursorControl() && isInSight(control)) {
                return; // it is being pressed: moved away under the pointer, it would never be let go
            }
            show(control);
            // What was made only now gets its place a little later.
            content.getDisplay().asyncExec(() -> {
                if (!control.isDisposed() && control.isFocusControl()) {
                    content.layout();
                    show(control);
                }
            });
        }
    }

    /**
     * Turning the wheel over a closed list of choices would change the record while somebody only scrolls, and over a table that has
     * nothing to scroll it would do nothing: the sheet scrolls instead.
     */
    private void wheel(Event event) {
        boolean takesIt = event.widget instanceof Combo
            || event.widget instanceof Table table && (table.getVerticalBar() == null || !table.getVerticalBar().isVisible());
        if (takesIt && isInside((Control) event.widget)) {
            event.doit = false;
            scrolled.setOrigin(0, scrolled.getOrigin().y - event.count * scrolled.getVerticalBar().getIncrement() / WHEEL_LINES);
        }
    }

    private boolean isInSight(Control control) {
        int top = content.getDisplay().map(control.getParent(), content, control.getBounds()).y;
        int origin = scrolled.getOrigin().y;
        return top >= origin && top + control.getBounds().height <= origin + scrolled.getClientArea().height;
    }

    private boolean isInside(Control control) {
        for (Control at = control; at != null; at = at.getParent()) {
            if (at == content) {
                return true;
            }
        }
        return false;
    }

    /** Brings a control into view, with a little of what is around it. */
    public void show(Control control) {
        Rectangle bounds = content.getDisplay().map(control.getParent(), content, control.getBounds());
        Rectangle view = scrolled.getClientArea();
        Point origin = scrolled.getOrigin();
        int above = bounds.y - 3 * MARGIN;
        int below = bounds.y + Math.min(bounds.height, view.height / 2) + Math.min(view.height / 4, 7 * MARGIN);
        if (above < origin.y) {
            scrolled.setOrigin(0, Math.max(0, above));
        } else if (below > origin.y + view.height) {
            scrolled.setOrigin(0, below - view.height);
        }
    }

    /** The parts below each other; tells the scroller how long the sheet is whenever that changes. */
    private final class Below extends Layout {

        @Override
        protected Point computeSize(Composite area, int widthHint, int heightHint, boolean flushCache) {
            int width = widthHint == SWT.DEFAULT ? scrolled.getClientArea().width : widthHint;
            return new Point(width, run(area, width, false, flushCache));
        }

        @Override
        protected void layout(Composite area, boolean flushCache) {
            int height = run(area, area.getClientArea().width, true, flushCache);
            if (height != scrolled.getMinHeight()) {
                scrolled.setMinHeight(height);
                // When the scroller itself is being laid out it does not hear this; then the sheet would end at the window's edge.
                scrolled.getDisplay().asyncExec(() -> {
                    if (!scrolled.isDisposed()) {
                        scrolled.layout(false);
                    }
                });
            }
        }

        @Override
        protected boolean flushCache(Control control) {
            return true;
        }

        private int run(Composite area, int width, boolean place, boolean flush) {
            int y = MARGIN;
            for (Control part : area.getChildren()) {
                if (part.getVisible()) {
                    int inner = Math.max(1, width - 2 * MARGIN);
                    int height = part.computeSize(inner, SWT.DEFAULT, flush).y;
                    if (place) {
                        part.setBounds(MARGIN, y, inner, height);
                    }
                    y += height + BETWEEN;
                }
            }
            return y + MARGIN;
        }
    }
}
