// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.drawing;

import java.awt.geom.Point2D;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import garboard.quantity.Length;
import garboard.report.drawing.Emphasis;
import garboard.report.drawing.LiveSheet;
import garboard.report.drawing.Spot;
import garboard.report.drawing.View;
import garboard.session.Listeners.Subscription;
import garboard.session.drawing.DrawingState;
import garboard.session.drawing.PointMove;
import garboard.workbench.Desk;

/** The canvas on which a sheet of drawings lies. It paints what is to be seen now, and knows where on it what lies. */
final class DrawingSurface {

    /** A value written beside a part while it is moved. */
    record Value(String id, String text) {
    }

    private final Canvas canvas;
    private final Desk desk;
    private final Subscription palette;
    private Optional<DrawingState> state = Optional.empty();
    private Optional<Subscription> following = Optional.empty();
    private Optional<LiveSheet> sheet = Optional.empty();
    private Optional<Value> value = Optional.empty();
    private Optional<String> pointedAt = Optional.empty();
    private PaletteInks inks;
    private BoardFonts fonts;
    private boolean held;
    private boolean stale = true;

    DrawingSurface(Composite parent, Desk desk) {
        this.desk = desk;
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED);
        canvas.setData("garboard.id", "drawing.sheet");
        inks = new PaletteInks(desk.palette());
        palette = desk.onPalette(now -> {
            inks = new PaletteInks(now);
            canvas.redraw();
        });
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.addListener(SWT.Resize, event -> outdated());
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        canvas.addListener(SWT.Dispose, event -> end());
    }

    Canvas canvas() {
        return canvas;
    }

    /** Shows another record, or none. */
    void show(Optional<DrawingState> now) {
        following.ifPresent(Subscription::close);
        state = now;
        sheet = Optional.empty();
        value = Optional.empty();
        pointedAt = Optional.empty();
        held = false;
        following = now.map(shown -> shown.onChange(changed -> outdated()));
        outdated();
    }

    Optional<DrawingState> state() {
        return state;
    }

    /** What is to be seen has changed; it is laid out when it is painted next. */
    void outdated() {
        stale = true;
        if (!canvas.isDisposed()) {
            canvas.redraw();
        }
    }

    private void paint(GC gc) {
        gc.setBackground(desk.palette().sheet());
        gc.fillRectangle(canvas.getClientArea());
        if (state.isEmpty()) {
            return;
        }
        var board = board(gc);
        LiveSheet shown = laidOut(board);
        boolean focused = canvas.isFocusControl();
        shown.paint(board, inks, new Emphasis(state.get().chosen(), focused, pointedAt));
        value.ifPresent(written -> shown.spots().stream().filter(spot -> spot.id().equals(written.id)).findFirst().flatMap(Spot::mark)
            .ifPresent(at -> shown.paintValue(board, inks, at, written.text)));
        if (focused) {
            paintFocus(gc);
        }
    }

    private void paintFocus(GC gc) {
        Rectangle area = canvas.getClientArea();
        gc.setForeground(desk.palette().accent());
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth(1);
        gc.drawRectangle(area.x, area.y, area.width - 1, area.height - 1);
    }

    private GcBoard board(GC gc) {
        if (fonts == null || fonts.outdated()) {
            Optional.ofNullable(fonts).ifPresent(BoardFonts::dispose);
            fonts = new BoardFonts(canvas);
            stale = true;
        }
        return new GcBoard(gc, fonts, canvas.getMonitor().getZoom() / 100.0);
    }

    private LiveSheet laidOut(GcBoard board) {
        if (stale || sheet.isEmpty()) {
            Rectangle area = canvas.getClientArea();
            DrawingState now = state.orElseThrow();
            sheet = Optional.of(LiveSheet.of(now.showing(desk.settings().units(), value.isPresent()), now.view(), Math.max(area.width, 1) / fonts.unit(),
                Math.max(area.height, 1) / fonts.unit(), board, sheet, held));
            stale = false;
        }
        return sheet.get();
    }

    /** {@return the sheet as it should be painted now, laid out if need be} */
    Optional<LiveSheet> sheet() {
        if (state.isPresent() && (stale || sheet.isEmpty())) {
            var gc = new GC(canvas);
            try {
                laidOut(board(gc));
            } finally {
                gc.dispose();
            }
        }
        return state.isPresent() ? sheet : Optional.empty();
    }

    /** {@return points to a unit of the sheet} */
    double unit() {
        return fonts == null ? 1 : fonts.unit();
    }

    /** {@return the place on the sheet of a place on the canvas} */
    Point2D onSheet(int x, int y) {
        return new Point2D.Double(x / unit(), y / unit());
    }

    Optional<Spot> spotAt(int x, int y) {
        return sheet().flatMap(shown -> shown.spotAt(x / unit(), y / unit()));
    }

    /** {@return what is chosen, as far as it can be seen} */
    Optional<Spot> chosenSpot() {
        return state.flatMap(DrawingState::chosen).flatMap(id -> sheet().flatMap(shown ->
            shown.spots().stream().filter(spot -> spot.id().equals(id)).findFirst()));
    }

    void pointAt(Optional<String> id) {
        if (!id.equals(pointedAt)) {
            pointedAt = id;
            canvas.redraw();
        }
    }

    /** Keeps what is seen of the world as it is, while a part is moved. */
    void hold(boolean keep) {
        held = keep;
        outdated();
    }

    void tell(Optional<Value> now) {
        if (!now.equals(value)) {
            value = now;
            outdated();
        }
    }

    /** What is written beside a part that is moved: its height, and what runs across where that moves, too, in the person's own units. */
    static String text(PointMove move, View view, boolean across) {
        String height = text(move.height());
        return across && move.across().isPresent() ? "z " + height + ", " + (view == View.SIDE ? "x " : "y ") + text(move.across().get()) : height;
    }

    private static String text(Length length) {
        String given = length.toString();
        int accuracy = given.indexOf('\u00b1');
        return accuracy < 0 ? given : given.substring(0, accuracy).strip();
    }

    private void end() {
        palette.close();
        following.ifPresent(Subscription::close);
        Optional.ofNullable(fonts).ifPresent(BoardFonts::dispose);
    }
}
