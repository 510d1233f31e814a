// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import garboard.session.Listeners.Subscription;
import garboard.workbench.Desk;

/**
 * The sections of a hull as a builder draws them, the forward ones to the right, the after ones to the left; the garboard, the first plank
 * next to the keel, in copper.
 */
public final class Emblem extends Canvas {

    /** Half breadth of the sections against the widest, the widest first. */
    private static final float[] FORWARD = { 1f, 0.8f, 0.54f, 0.27f };
    private static final float[] AFT = { 1f, 0.93f, 0.82f, 0.68f };
    /** How far the section has risen from the keel line at its foot, against the depth of the hull. */
    private static final float[] FORWARD_FOOT = { 0f, 0.015f, 0.06f, 0.2f };
    private static final float[] AFT_FOOT = { 0f, 0.06f, 0.16f, 0.28f };
    private static final float WATERLINE = 0.47f;
    private static final float GARBOARD = 0.33f;

    private final Desk desk;

    public Emblem(Composite parent, Desk desk) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.desk = desk;
        addPaintListener(event -> paint(event.gc));
        Subscription repainted = desk.onPalette(palette -> redraw());
        addListener(SWT.Dispose, event -> repainted.close());
        sayThatItIsAPicture();
    }

    private void sayThatItIsAPicture() {
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = "Garboard";
            }
        });
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_GRAPHIC;
            }
        });
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        float depth = Math.min(area.height * 0.82f, area.width * 0.44f / 0.9f);
        var drawing = new Drawing(gc, area.width / 2f, area.height * 0.5f + depth * 0.5f, depth);
        gc.setAntialias(SWT.ON);
        gc.setLineCap(SWT.CAP_ROUND);
        gc.setLineJoin(SWT.JOIN_ROUND);
        Palette palette = desk.palette();
        gc.setForeground(palette.line());
        drawing.width(0.008f);
        for (float height : new float[] { 0.16f, 0.32f, 0.62f, 0.78f }) {
            drawing.level(height, 1.06f);
        }
        drawing.stem();
        gc.setForeground(palette.faint());
        drawing.width(0.014f);
        for (int station = 1; station < FORWARD.length; station++) {
            drawing.section(1, FORWARD[station], FORWARD_FOOT[station], 1f);
            drawing.section(-1, AFT[station], AFT_FOOT[station], 1f);
        }
        gc.setForeground(palette.accent());
        drawing.width(0.018f);
        gc.setLineStyle(SWT.LINE_DASH);
        drawing.level(WATERLINE, 1.2f);
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setForeground(palette.ink());
        drawing.width(0.03f);
        drawing.section(1, 1f, 0f, 1f);
        drawing.section(-1, 1f, 0f, 1f);
        gc.setForeground(palette.copper());
        drawing.width(0.075f);
        drawing.section(1, 1f, 0f, GARBOARD);
        drawing.section(-1, 1f, 0f, GARBOARD);
        gc.setForeground(palette.ink());
        drawing.width(0.05f);
        drawing.keel();
    }

    /** Lines in the frame of the hull: breadth from its middle, height from its keel, both against its depth. */
    private record Drawing(GC gc, float middle, float keelLine, float depth) {

        private static final float HALF_BREADTH = 0.9f;

        void width(float againstDepth) {
            gc.setLineWidth(Math.max(1, Math.round(depth * againstDepth)));
        }

        private float x(float breadth) {
            return middle + breadth * HALF_BREADTH * depth;
        }

        private float y(float height) {
            return keelLine - height * depth;
        }

        void level(float height, float breadth) {
            line(-breadth, height, breadth, height);
        }

        void stem() {
            line(0, 0, 0, 1.02f);
        }

        void keel() {
            line(0, 0, 0, -0.1f);
        }

        private void line(float fromBreadth, float fromHeight, float toBreadth, float toHeight) {
            var path = new Path(gc.getDevice());
            path.moveTo(x(fromBreadth), y(fromHeight));
            path.lineTo(x(toBreadth), y(toHeight));
            gc.drawPath(path);
            path.dispose();
        }

        /** From the foot over the turn of the bilge to the sheer. @param part of the way to the bilge; 1 for all of it and the topside */
        void section(int side, float breadth, float foot, float part) {
            float turn = foot + (0.66f - foot) * (0.9f + 0.1f * breadth);
            float[] xs = { 0, 0.62f * breadth, 0.99f * breadth, breadth };
            float[] ys = { foot, foot + 0.05f, foot + 0.2f, turn };
            cut(xs, part);
            cut(ys, part);
            var path = new Path(gc.getDevice());
            path.moveTo(x(side * xs[0]), y(ys[0]));
            path.cubicTo(x(side * xs[1]), y(ys[1]), x(side * xs[2]), y(ys[2]), x(side * xs[3]), y(ys[3]));
            if (part >= 1) {
                path.lineTo(x(side * breadth * 1.02f), y(1f - 0.06f * breadth));
            }
            gc.drawPath(path);
            path.dispose();
        }

        /** The first part of a curve of Bezier's, by de Casteljau. */
        private static void cut(float[] points, float part) {
            for (int round = 1; round < points.length; round++) {
                for (int at = points.length - 1; at >= round; at--) {
                    points[at] = points[at - 1] + (points[at] - points[at - 1]) * part;
                }
            }
        }
    }
}
