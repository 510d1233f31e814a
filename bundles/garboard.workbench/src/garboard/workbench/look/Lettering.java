// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.look;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontMetrics;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Control;

/** Letters made of the person's own system font, in proportion to it, so that a large font stays large and everything with it. */
public final class Lettering {

    private static final String ELLIPSIS = "…";

    private Lettering() {
    }

    /** Makes a control's letters bold. */
    public static void bold(Control control) {
        take(control, FontDescriptor.createFrom(control.getFont()).withStyle(SWT.BOLD));
    }

    /** Makes a control's letters larger or smaller. @param perCent of what they are */
    public static void scale(Control control, int perCent) {
        take(control, scaled(control.getFont(), perCent));
    }

    /** Makes a control's letters larger or smaller, and bold. */
    public static void heading(Control control, int perCent) {
        take(control, scaled(control.getFont(), perCent).withStyle(SWT.BOLD));
    }

    /** {@return a font in proportion to another, to be disposed by who asked} */
    public static Font font(Control control, int perCent, int style) {
        return scaled(control.getFont(), perCent).withStyle(style).createFont(control.getDisplay());
    }

    /** {@return the width of so many letters of a control's font, in points} */
    public static int width(Control control, double letters) {
        FontMetrics metrics = metrics(control);
        return (int) Math.round(metrics.getAverageCharacterWidth() * letters);
    }

    /** {@return the height of so many lines of a control's font, in points} */
    public static int height(Control control, double lines) {
        return (int) Math.round(metrics(control).getHeight() * lines);
    }

    /** {@return a text, cut short with an ellipsis where it is wider than there is room} */
    public static String cut(GC gc, String text, int room) {
        if (gc.textExtent(text).x <= room) {
            return text;
        }
        int low = 0;
        int high = text.length();
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (gc.textExtent(text.substring(0, middle) + ELLIPSIS).x <= room) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return text.substring(0, low).stripTrailing() + ELLIPSIS;
    }

    private static FontMetrics metrics(Control control) {
        var gc = new GC(control);
        try {
            return gc.getFontMetrics();
        } finally {
            gc.dispose();
        }
    }

    private static FontDescriptor scaled(Font font, int perCent) {
        int height = font.getFontData()[0].getHeight();
        return FontDescriptor.createFrom(font).setHeight(Math.max(1, Math.round(height * perCent / 100f)));
    }

    private static void take(Control control, FontDescriptor descriptor) {
        Font font = descriptor.createFont(control.getDisplay());
        control.setFont(font);
        control.addListener(SWT.Dispose, event -> font.dispose());
    }
}
