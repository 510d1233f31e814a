// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.drawing;

import java.util.HashMap;
import java.util.Map;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontMetrics;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Control;

import garboard.report.drawing.Letters;

/** The letters of drawings: those of the control, in proportion. Kept, because a drawing asks for the same ones again and again. */
final class BoardFonts {

    /** Size of letters, in units of a drawing, that are as large as the control's own. */
    private static final double USUAL = 2.7;
    /** A line of the control's letters in units of a drawing. */
    private static final double LINE = 3.3;
    private static final int MOST_WIDTHS = 4000;

    /** A font and where its base line is, from the top, in points. */
    record Sized(Font font, int ascent) {
    }

    private record Kind(int height, boolean bold) {
    }

    private record Text(String text, Kind kind) {
    }

    private final Control control;
    private final Font own;
    private final int height;
    private final double unit;
    private final Map<Kind, Sized> fonts = new HashMap<>();
    private final Map<Text, Integer> widths = new HashMap<>();

    BoardFonts(Control control) {
        this.control = control;
        this.own = control.getFont();
        this.height = own.getFontData()[0].getHeight();
        var gc = new GC(control);
        try {
            unit = gc.getFontMetrics().getHeight() / LINE;
        } finally {
            gc.dispose();
        }
    }

    /** {@return points to a unit of a drawing, so that its letters are as large as those of the control} */
    double unit() {
        return unit;
    }

    /** {@return whether the control has other letters by now} */
    boolean outdated() {
        return !control.getFont().equals(own);
    }

    Sized of(Letters letters, GC gc) {
        return fonts.computeIfAbsent(kind(letters), kind -> make(kind, gc));
    }

    private Sized make(Kind kind, GC gc) {
        Font font = FontDescriptor.createFrom(own).setHeight(kind.height).setStyle(kind.bold ? SWT.BOLD : SWT.NORMAL)
            .createFont(control.getDisplay());
        gc.setFont(font);
        FontMetrics metrics = gc.getFontMetrics();
        return new Sized(font, metrics.getAscent() + metrics.getLeading());
    }

    int width(String text, Letters letters, GC gc) {
        if (widths.size() > MOST_WIDTHS) {
            widths.clear();
        }
        return widths.computeIfAbsent(new Text(text, kind(letters)), none -> {
            gc.setFont(of(letters, gc).font());
            return gc.stringExtent(text).x;
        });
    }

    private Kind kind(Letters letters) {
        return new Kind(Math.max(5, (int) Math.round(height * letters.size() / USUAL)), letters.bold());
    }

    void dispose() {
        fonts.values().forEach(sized -> sized.font().dispose());
        fonts.clear();
    }
}
