// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

import garboard.workbench.look.Lettering;

/** Moves a page up and down by the keyboard, since not everything that is to be read on it can have the focus. */
final class PageKeys {

    private static final int LINES = 3;

    private final ScrolledComposite page;

    private PageKeys(ScrolledComposite page) {
        this.page = page;
    }

    /** Lets the keys work wherever the focus is in a part of the window. */
    static void work(Composite in, ScrolledComposite page) {
        new PageKeys(page).listen(in);
    }

    /** Not on what only holds others: it would take the focus that it listens with. */
    private void listen(Control control) {
        if (control instanceof Composite composite && !(control instanceof Tile)) {
            for (Control child : composite.getChildren()) {
                listen(child);
            }
        } else {
            control.addListener(SWT.KeyDown, this::move);
        }
    }

    private void move(Event event) {
        int height = page.getClientArea().height;
        int line = LINES * Lettering.height(page, 1);
        int by = switch (event.keyCode) {
            case SWT.PAGE_DOWN -> height - line;
            case SWT.PAGE_UP -> line - height;
            case SWT.ARROW_DOWN -> line;
            case SWT.ARROW_UP -> -line;
            case SWT.HOME -> Integer.MIN_VALUE / 2;
            case SWT.END -> Integer.MAX_VALUE / 2;
            default -> 0;
        };
        if (by != 0 && event.stateMask == 0) {
            page.setOrigin(0, Math.clamp((long) page.getOrigin().y + by, 0, Math.max(0, page.getContent().getSize().y - height)));
        }
    }
}
