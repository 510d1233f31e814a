// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.drawing;

import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleValueAdapter;
import org.eclipse.swt.accessibility.AccessibleValueEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import garboard.workbench.look.Lettering;
import garboard.workbench.look.Palette;

/**
 * A slider for an angle to either side of none, which a desktop's own slider cannot mark: strokes where the vessel is designed to go to, a
 * lozenge where the point in question comes lowest. Degrees throughout.
 */
final class AngleBar {

    private static final double STEP = 1;
    private static final double FINE = 0.1;
    private static final double LEAP = 5;
    /** So near in points, the pointer takes to none and to the marks. */
    private static final int MAGNET = 4;

    /** What is shown. @param designed 0 where no angle is designed for */
    record Marks(double reach, double designed, OptionalDouble worst) {
    }

    private final Canvas canvas;
    private final DoubleConsumer moved;
    private final int radius;
    private Palette palette;
    private Marks marks = new Marks(30, 0, OptionalDouble.empty());
    private double value;
    private String name = "";
    private String said = "";

    AngleBar(Composite parent, Palette palette, DoubleConsumer moved) {
        this.palette = palette;
        this.moved = moved;
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED) {
            @Override
            public Point computeSize(int widthHint, int heightHint, boolean changed) {
                return new Point(widthHint == SWT.DEFAULT ? Lettering.width(this, 16) : widthHint,
                    heightHint == SWT.DEFAULT ? Lettering.height(this, 1.6) : heightHint);
            }
        };
        radius = Math.max(4, Lettering.height(canvas, 0.36));
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS
            || event.detail == SWT.TRAVERSE_MNEMONIC || event.detail == SWT.TRAVERSE_ESCAPE);
        canvas.addListener(SWT.MouseDown, event -> press(event));
        canvas.addListener(SWT.MouseMove, event -> {
            if ((event.stateMask & SWT.BUTTON1) != 0) {
                point(event.x);
            }
        });
        canvas.addListener(SWT.MouseVerticalWheel, event -> {
            if (canvas.isFocusControl()) {
                move(value + Integer.signum(event.count) * STEP);
                event.doit = false;
            }
        });
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        speak();
    }

    Canvas canvas() {
        return canvas;
    }

    /** @param words the value as it is said to those who do not see it */
    void show(double degrees, Marks now, String words) {
        boolean other = degrees != value || !now.equals(marks);
        value = degrees;
        marks = now;
        said = words;
        if (other) {
            canvas.redraw();
            canvas.getAccessible().sendEvent(ACC.EVENT_VALUE_CHANGED, null);
        }
    }

    void name(String called) {
        name = called;
    }

    void paintIn(Palette now) {
        palette = now;
        canvas.redraw();
    }

    private void paint(GC gc) {
        Rectangle area = canvas.getClientArea();
        int middle = area.y + area.height / 2;
        gc.setAntialias(SWT.ON);
        gc.setForeground(palette.faint());
        gc.setLineWidth(1);
        gc.drawLine(x(-marks.reach), middle, x(marks.reach), middle);
        tick(gc, 0, radius, middle);
        if (marks.designed > 0) {
            gc.setForeground(palette.ink());
            gc.setLineWidth(2);
            gc.drawLine(x(-marks.designed), middle, x(marks.designed), middle);
            tick(gc, -marks.designed, radius * 3 / 2, middle);
            tick(gc, marks.designed, radius * 3 / 2, middle);
        }
        marks.worst.ifPresent(worst -> lozenge(gc, x(worst), middle));
        gc.setBackground(palette.sheet());
        gc.fillOval(x(value) - radius, middle - radius, 2 * radius, 2 * radius);
        gc.setForeground(palette.accent());
        gc.setLineWidth(2);
        gc.drawOval(x(value) - radius, middle - radius, 2 * radius, 2 * radius);
        if (canvas.isFocusControl()) {
            gc.setBackground(palette.accent());
            gc.fillOval(x(value) - radius / 2, middle - radius / 2, radius, radius);
            gc.setLineWidth(1);
            gc.drawRectangle(area.x, area.y, area.width - 1, area.height - 1);
        }
    }

    private void tick(GC gc, double degrees, int half, int middle) {
        gc.drawLine(x(degrees), middle - half, x(degrees), middle + half);
    }

    private void lozenge(GC gc, int x, int middle) {
        int half = radius;
        int y = middle + radius;
        gc.setBackground(palette.copper());
        gc.fillPolygon(new int[] {x, y - half, x + half, y, x, y + half, x - half, y});
    }

    private int x(double degrees) {
        Rectangle area = canvas.getClientArea();
        int room = area.width - 4 * radius;
        return (int) Math.round(area.x + 2 * radius + room * (degrees + marks.reach) / (2 * marks.reach));
    }

    private void press(Event event) {
        if (event.button == 1) {
            canvas.setFocus();
            point(event.x);
        }
    }

    private void point(int x) {
        Rectangle area = canvas.getClientArea();
        double degrees = (x - area.x - 2.0 * radius) / Math.max(1, area.width - 4 * radius) * 2 * marks.reach - marks.reach;
        for (double mark : new double[] {0, marks.designed, -marks.designed, marks.worst.orElse(0)}) {
            if (Math.abs(x - x(mark)) <= MAGNET) {
                move(mark);
                return;
            }
        }
        move(marks.reach > 15 ? Math.rint(degrees) : Math.rint(degrees * 2) / 2);
    }

    private void key(Event event) {
        double step = (event.stateMask & SWT.MOD1) != 0 ? FINE : STEP;
        double end = marks.designed > 0 ? marks.designed : marks.reach;
        switch (event.keyCode) {
            case SWT.ARROW_LEFT, SWT.ARROW_DOWN -> move(value - step);
            case SWT.ARROW_RIGHT, SWT.ARROW_UP -> move(value + step);
            case SWT.PAGE_DOWN -> move(value - LEAP);
            case SWT.PAGE_UP -> move(value + LEAP);
            case SWT.HOME -> move(-end);
            case SWT.END -> move(end);
            case SWT.DEL, SWT.BS, '0', SWT.KEYPAD_0 -> move(0);
            default -> { }
        }
    }

    private void move(double degrees) {
        moved.accept(Math.clamp(Math.rint(degrees * 10) / 10, -marks.reach, marks.reach));
    }

    private void speak() {
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name;
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = said;
            }
        });
        canvas.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_SLIDER;
            }

            @Override
            public void getState(AccessibleControlEvent event) {
                event.detail = ACC.STATE_FOCUSABLE | (canvas.isFocusControl() ? ACC.STATE_FOCUSED : 0);
            }

            @Override
            public void getValue(AccessibleControlEvent event) {
                event.result = said;
            }
        });
        canvas.getAccessible().addAccessibleValueListener(new AccessibleValueAdapter() {
            @Override
            public void getCurrentValue(AccessibleValueEvent event) {
                event.value = value;
            }

            @Override
            public void setCurrentValue(AccessibleValueEvent event) {
                move(event.value.doubleValue());
            }

            @Override
            public void getMaximumValue(AccessibleValueEvent event) {
                event.value = marks.reach;
            }

            @Override
            public void getMinimumValue(AccessibleValueEvent event) {
                event.value = -marks.reach;
            }
        });
    }
}
