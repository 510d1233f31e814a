// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleActionAdapter;
import org.eclipse.swt.accessibility.AccessibleActionEvent;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.graphics.TextStyle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import garboard.workbench.look.Lettering;
import garboard.workbench.look.Palette;

/** Something to press: a picture, what it does, and a line about it. A button to keyboard, screen reader and tests. */
final class Tile extends Canvas {

    private final String title;
    private final String about;
    private final Optional<Image> picture;
    private String name;
    private boolean quiet;
    private final Palette palette;
    private final Font bold;
    private final int pad;
    private boolean under;
    private boolean pressed;

    /** @param about may be empty */
    Tile(Composite parent, String id, Optional<Image> picture, String title, String about, Palette palette) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.title = title;
        this.name = title;
        this.about = about;
        this.picture = picture;
        this.palette = palette;
        this.bold = Lettering.font(parent, 100, SWT.BOLD);
        this.pad = Lettering.width(parent, 1);
        setData("garboard.id", id);
        setCursor(getDisplay().getSystemCursor(SWT.CURSOR_HAND));
        addPaintListener(event -> paint(event.gc));
        for (int kind : new int[] { SWT.MouseEnter, SWT.MouseExit, SWT.MouseDown, SWT.MouseUp, SWT.KeyDown, SWT.Traverse, SWT.FocusIn, SWT.FocusOut,
            SWT.Dispose }) {
            addListener(kind, this::handle);
        }
        beAButton();
    }

    /** Does this when it is pressed. */
    Tile onPress(Runnable action) {
        addListener(SWT.Selection, event -> action.run());
        return this;
    }

    /** Gives a tile without a title a name for screen readers and the tool tip. */
    Tile named(String spoken) {
        name = spoken;
        setToolTipText(spoken);
        return this;
    }

    /** Writes its title in plain letters: it is one of many. */
    Tile quiet() {
        quiet = true;
        return this;
    }

    private void handle(Event event) {
        switch (event.type) {
            case SWT.MouseEnter -> under = true;
            case SWT.MouseExit -> under = false;
            case SWT.MouseDown -> pressed = event.button == 1;
            case SWT.MouseUp -> release(event);
            case SWT.KeyDown -> key(event);
            case SWT.Traverse -> event.doit = event.detail != SWT.TRAVERSE_RETURN;
            case SWT.Dispose -> bold.dispose();
            default -> { }
        }
        if (!isDisposed() && event.type != SWT.Dispose) {
            redraw();
        }
    }

    private void release(Event event) {
        boolean meant = pressed && getClientArea().contains(event.x, event.y);
        pressed = false;
        if (meant) {
            setFocus();
            press();
        }
    }

    private void key(Event event) {
        if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR || event.character == ' ') {
            press();
        }
    }

    private void press() {
        // What is pressed may open a window, and then nobody tells that the pointer has gone.
        under = false;
        notifyListeners(SWT.Selection, new Event());
    }

    private int indent() {
        return picture.map(image -> image.getBounds().width + (title.isEmpty() ? 0 : 3 * pad / 2)).orElse(0);
    }

    private TextLayout words(int width) {
        var words = new TextLayout(getDisplay());
        words.setFont(getFont());
        words.setText(about.isEmpty() ? title : title + "\n" + about);
        if (!title.isEmpty()) {
            words.setStyle(new TextStyle(quiet ? getFont() : bold, palette.ink(), null), 0, title.length() - 1);
        }
        if (!about.isEmpty()) {
            words.setStyle(new TextStyle(getFont(), palette.faint(), null), title.length(), title.length() + about.length());
        }
        words.setSpacing(pad / 6);
        if (width > 0) {
            words.setWidth(width);
        }
        return words;
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        int sides = 2 * pad + indent();
        TextLayout words = words(widthHint == SWT.DEFAULT ? SWT.DEFAULT : Math.max(pad, widthHint - sides));
        Rectangle size = words.getBounds();
        words.dispose();
        int high = Math.max(size.height, picture.map(image -> image.getBounds().height).orElse(0)) + pad;
        return new Point(widthHint == SWT.DEFAULT ? size.width + sides : widthHint, heightHint == SWT.DEFAULT ? high : heightHint);
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setAntialias(SWT.ON);
        int round = pad;
        if (under || isFocusControl()) {
            gc.setBackground(palette.band());
            gc.fillRoundRectangle(0, 0, area.width, area.height, round, round);
        }
        if (isFocusControl()) {
            gc.setForeground(palette.accent());
            gc.setLineWidth(2);
            gc.drawRoundRectangle(1, 1, area.width - 2, area.height - 2, round, round);
        }
        picture.ifPresent(image -> gc.drawImage(image, pad, Math.min((area.height - image.getBounds().height) / 2, pad)));
        TextLayout words = words(Math.max(pad, area.width - 2 * pad - indent()));
        words.draw(gc, pad + indent(), Math.max(pad / 2, (area.height - words.getBounds().height) / 2));
        words.dispose();
    }

    private void beAButton() {
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name;
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = about;
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_PUSHBUTTON;
            }

            @Override
            public void getState(AccessibleControlEvent event) {
                event.detail = ACC.STATE_FOCUSABLE | (isFocusControl() ? ACC.STATE_FOCUSED : 0);
            }
        });
        getAccessible().addAccessibleActionListener(new AccessibleActionAdapter() {
            @Override
            public void getActionCount(AccessibleActionEvent event) {
                event.count = 1;
            }

            @Override
            public void doAction(AccessibleActionEvent event) {
                press();
                event.result = ACC.OK;
            }
        });
    }
}
