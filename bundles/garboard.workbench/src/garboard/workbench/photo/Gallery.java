// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.photo;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import garboard.model.Photograph;
import garboard.session.Listeners;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Palette;

/** Small pictures side by side, with caption and date; one of them is chosen, with the mouse or the arrow keys. */
final class Gallery extends Canvas {

    private static final int LETTERS_ACROSS = 24;
    private static final double LINES_BELOW = 2.4;
    private static final int GAP = 8;
    private static final int FRAME = 6;

    private final Desk desk;
    private final Thumbnails thumbnails;
    private final Listeners<Optional<Photograph>> chosen = new Listeners<>();
    private final int cellWidth;
    private final int pictureHeight;
    private final int cellHeight;
    private List<Photograph> photographs = List.of();
    private int current = -1;

    Gallery(Composite parent, Desk desk) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.desk = desk;
        cellWidth = Lettering.width(this, LETTERS_ACROSS) + 2 * FRAME;
        pictureHeight = cellWidth * 3 / 4;
        cellHeight = pictureHeight + Lettering.height(this, LINES_BELOW) + FRAME;
        thumbnails = new Thumbnails(this, cellWidth, this::redraw);
        setData("garboard.id", "photographs.gallery");
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.MouseDown, event -> press(event.x, event.y));
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_ARROW_NEXT && event.detail != SWT.TRAVERSE_ARROW_PREVIOUS);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        makeKnown();
    }

    private void makeKnown() {
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = spoken(event.childID);
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = event.childID == ACC.CHILDID_SELF ? ACC.ROLE_LIST : ACC.ROLE_LISTITEM;
            }

            @Override
            public void getChildCount(AccessibleControlEvent event) {
                event.detail = photographs.size();
            }

            @Override
            public void getState(AccessibleControlEvent event) {
                event.detail = ACC.STATE_FOCUSABLE | (event.childID == current ? ACC.STATE_SELECTED | ACC.STATE_FOCUSED : ACC.STATE_NORMAL);
            }
        });
    }

    private String spoken(int child) {
        if (child == ACC.CHILDID_SELF) {
            return desk.texts(Gallery.class).get("gallery.spoken", photographs.size()) + selected().map(photo -> ": " + caption(photo)).orElse("");
        }
        return child >= 0 && child < photographs.size() ? caption(photographs.get(child)) : "";
    }

    private String caption(Photograph photograph) {
        return Optional.ofNullable(photograph.getCaption()).filter(words -> !words.isBlank())
            .orElseGet(() -> desk.texts(Gallery.class).get("gallery.noCaption"));
    }

    @Override
    protected void checkSubclass() {
        // It only measures itself otherwise.
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        int width = widthHint == SWT.DEFAULT ? 4 * cellWidth : widthHint;
        int rows = (photographs.size() + across(width) - 1) / across(width);
        return new Point(width, rows == 0 ? 0 : rows * (cellHeight + GAP) + GAP);
    }

    private int across(int width) {
        return Math.max(1, (width + GAP) / (cellWidth + GAP));
    }

    /** Shows some photographs. What was chosen stays chosen while it is among them. */
    void show(List<Photograph> now) {
        Optional<Photograph> before = selected();
        boolean others = photographs.size() != now.size();
        photographs = List.copyOf(now);
        int stays = before.map(photographs::indexOf).orElse(-1);
        int next = stays >= 0 ? stays : Math.min(Math.max(current, photographs.isEmpty() ? -1 : 0), photographs.size() - 1);
        current = next;
        if (!before.equals(selected())) {
            chosen.tell(selected());
        }
        redraw();
        if (others) {
            requestLayout();
        }
    }

    Optional<Photograph> selected() {
        return current < 0 || current >= photographs.size() ? Optional.empty() : Optional.of(photographs.get(current));
    }

    void select(Photograph photograph) {
        choose(photographs.indexOf(photograph));
    }

    void onSelect(Consumer<? super Optional<Photograph>> listener) {
        chosen.add(listener);
    }

    private void choose(int index) {
        if (index >= 0 && index < photographs.size() && index != current) {
            current = index;
            chosen.tell(selected());
            redraw();
            getAccessible().setFocus(index);
        }
    }

    private void press(int x, int y) {
        setFocus();
        int column = x / (cellWidth + GAP);
        if (column < across(getClientArea().width)) {
            choose(y / (cellHeight + GAP) * across(getClientArea().width) + column);
        }
    }

    private void key(Event event) {
        int row = across(getClientArea().width);
        switch (event.keyCode) {
            case SWT.ARROW_RIGHT -> choose(current + 1);
            case SWT.ARROW_LEFT -> choose(current - 1);
            case SWT.ARROW_DOWN -> choose(current + row);
            case SWT.ARROW_UP -> choose(current - row);
            case SWT.HOME -> choose(0);
            case SWT.END -> choose(photographs.size() - 1);
            default -> { }
        }
    }

    private void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        gc.setInterpolation(SWT.HIGH);
        int row = across(getClientArea().width);
        for (int index = 0; index < photographs.size(); index++) {
            int x = index % row * (cellWidth + GAP);
            int y = index / row * (cellHeight + GAP) + GAP / 2;
            if (gc.getClipping().intersects(x, y, cellWidth, cellHeight)) {
                paint(gc, photographs.get(index), new Rectangle(x, y, cellWidth, cellHeight), index == current);
            }
        }
    }

    private void paint(GC gc, Photograph photograph, Rectangle cell, boolean isCurrent) {
        Palette palette = desk.palette();
        gc.setBackground(isCurrent ? palette.band() : palette.sheet());
        gc.fillRoundRectangle(cell.x, cell.y, cell.width, cell.height, FRAME, FRAME);
        gc.setForeground(isCurrent ? palette.accent() : palette.line());
        gc.setLineWidth(isCurrent && isFocusControl() ? 2 : 1);
        gc.drawRoundRectangle(cell.x, cell.y, cell.width - 1, cell.height - 1, FRAME, FRAME);
        var inside = new Rectangle(cell.x + FRAME, cell.y + FRAME, cell.width - 2 * FRAME, pictureHeight - 2 * FRAME);
        Optional<Image> image = thumbnails.of(photograph);
        image.ifPresent(picture -> LargeView.fit(gc, picture, inside));
        gc.setForeground(palette.faint());
        if (image.isEmpty()) {
            String words = desk.texts(Gallery.class).get(thumbnails.isBroken(photograph) ? "gallery.broken" : "gallery.coming");
            gc.drawText(words, inside.x, inside.y + inside.height / 2, true);
        }
        int line = gc.getFontMetrics().getHeight();
        int wordsY = cell.y + pictureHeight;
        gc.setForeground(photograph.getCaption() == null ? palette.faint() : palette.ink());
        gc.drawText(cut(gc, caption(photograph), inside.width), inside.x, wordsY, true);
        gc.setForeground(palette.faint());
        gc.drawText(photograph.getTakenOn() == null ? "" : photograph.getTakenOn().toString(), inside.x, wordsY + line, true);
    }

    /** {@return as much of a text as has room} */
    static String cut(GC gc, String words, int room) {
        String line = words.replace('\n', ' ');
        if (gc.textExtent(line).x <= room) {
            return line;
        }
        int end = line.length();
        while (end > 0 && gc.textExtent(line.substring(0, end) + "\u2026").x > room) {
            end--;
        }
        return line.substring(0, end) + "\u2026";
    }
}
