// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

import garboard.workbench.Desk;

/** A part of a sheet under a heading that opens and closes it. What is in it is made when it is opened first. */
public final class Section {

    private final Composite area;
    private final SectionHead head;
    private final Consumer<Composite> maker;
    private Optional<Composite> body = Optional.empty();
    private boolean open;

    /**
     * @param id a word that stays the same, for tests and for what is remembered
     * @param maker fills the body, which has a layout of its own to be set
     */
    public Section(Composite parent, Desk desk, String id, String heading, Consumer<Composite> maker) {
        this.maker = maker;
        area = new Composite(parent, SWT.NONE);
        area.setLayout(new HeadAndBody());
        area.setData("garboard.id", "group:" + id);
        head = new SectionHead(area, desk, heading, () -> {
            setOpen(!open);
            desk.settings().leaveOpen(id, open);
        });
    }

    public Control control() {
        return area;
    }

    public boolean isOpen() {
        return open;
    }

    /** Calls the section by other words. */
    public void heading(String words) {
        head.heading(words);
    }

    /** Says something beside the heading, quietly. @param words asked for whenever they are painted */
    public void note(Supplier<String> words) {
        head.note(words);
    }

    /** What is said beside the heading may have changed. */
    public void noteAgain() {
        head.noteAgain();
    }

    public void setOpen(boolean now) {
        if (open == now) {
            return;
        }
        open = now;
        head.setOpen(now);
        if (now) {
            make();
        }
        body.ifPresent(made -> made.setVisible(now));
        head.control().requestLayout();
    }

    /** Opens it, but leaves it to {@link #make} to make what is in it: a page is there sooner when it makes first what is seen first. */
    public void openLater() {
        open = true;
        head.setOpen(true);
    }

    /** {@return whether what is in it is still to be made} */
    public boolean isToBeMade() {
        return open && body.isEmpty();
    }

    /** Makes what is in it, if it is not made. */
    public void make() {
        if (body.isEmpty()) {
            var made = new Composite(area, SWT.NONE);
            body = Optional.of(made);
            maker.accept(made);
            head.control().requestLayout();
        }
    }

    /** The heading, and below it the body while it is open. */
    private final class HeadAndBody extends Layout {

        @Override
        protected Point computeSize(Composite parent, int widthHint, int heightHint, boolean flushCache) {
            return new Point(widthHint, run(parent, widthHint, false, flushCache));
        }

        @Override
        protected void layout(Composite parent, boolean flushCache) {
            run(parent, parent.getClientArea().width, true, flushCache);
        }

        @Override
        protected boolean flushCache(Control control) {
            return true;
        }

        private int run(Composite parent, int width, boolean place, boolean flush) {
            int y = head.control().computeSize(width, SWT.DEFAULT, flush).y;
            if (place) {
                head.control().setBounds(0, 0, width, y);
            }
            if (open && body.isPresent()) {
                int height = body.get().computeSize(width, SWT.DEFAULT, flush).y;
                if (place) {
                    body.get().setBounds(0, y, width, height);
                }
                y += height;
            }
            return y;
        }
    }
}
