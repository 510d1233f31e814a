// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.look;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;

import garboard.checks.Standing;

/** The colours of the window, in a light and a dark set. A standing is never told by its colour alone. */
public enum Palette {
    LIGHT(false, 0xFBFAF7, 0xFFFFFF, 0x1D2326, 0x5F686D, 0xD9D6CE, 0x1F5F7A, 0xEFEBE2, 0xA6551E),
    DARK(true, 0x1F2426, 0x272D30, 0xE6E4DE, 0xA3ABAE, 0x434B4F, 0x7FC1D6, 0x30383C, 0xE2A06A);

    private final boolean dark;
    private final int ground;
    private final int sheet;
    private final int ink;
    private final int faint;
    private final int line;
    private final int accent;
    private final int band;
    private final int copper;

    Palette(boolean dark, int ground, int sheet, int ink, int faint, int line, int accent, int band, int copper) {
        this.dark = dark;
        this.ground = ground;
        this.sheet = sheet;
        this.ink = ink;
        this.faint = faint;
        this.line = line;
        this.accent = accent;
        this.band = band;
        this.copper = copper;
    }

    public boolean dark() {
        return dark;
    }

    /** Behind everything. */
    public Color ground() {
        return color(ground);
    }

    /** Behind fields and lists. */
    public Color sheet() {
        return color(sheet);
    }

    public Color ink() {
        return color(ink);
    }

    /** Texts that may be overlooked. */
    public Color faint() {
        return color(faint);
    }

    /** Rules and frames. */
    public Color line() {
        return color(line);
    }

    /** Links and what is chosen. */
    public Color accent() {
        return color(accent);
    }

    /** Behind headings and chosen rows. */
    public Color band() {
        return color(band);
    }

    /** The mark of the house: the plank next to the keel, and what is meant to catch the eye once. */
    public Color copper() {
        return color(copper);
    }

    // What is drawn --------------------------------------------------------------------------------------------------

    /** Surfaces of water, and what runs through raw-water hoses. */
    public Color water() {
        return color(dark ? 0x7DB8E0 : 0x1B5E85);
    }

    /** The body of the water. */
    public Color sea() {
        return color(dark ? 0x223640 : 0xE8F0F4);
    }

    public Color fuel() {
        return color(dark ? 0xD9B25C : 0x7A5B12);
    }

    public Color exhaust() {
        return color(dark ? 0xAEB6BA : 0x565C60);
    }

    /** One curve among others. */
    public Color ember() {
        return color(dark ? 0xE09A7A : 0x9A4B2E);
    }

    /** The outline of the hull, hair lines behind what is drawn. */
    public Color hull() {
        return color(dark ? 0x5C666B : 0xB5B8B4);
    }

    public Color of(Standing standing) {
        return color(switch (standing) {
            case CHECK_BROKE -> dark ? 0xE08AC0 : 0x8A1F62;
            case FALLS_SHORT -> dark ? 0xF0917C : 0xA8341C;
            case BORDERLINE -> dark ? 0xE3BD62 : 0x8C6100;
            case CANNOT_TELL -> dark ? 0x9DB7E8 : 0x3F5B96;
            case ACCEPTED -> dark ? 0xC4ADE3 : 0x64498F;
            case MEETS -> dark ? 0x7CC9A6 : 0x22694A;
            case DOES_NOT_APPLY -> dark ? 0x8F979A : 0x757D81;
        });
    }

    private static Color color(int rgb) {
        return new Color(new RGB(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF));
    }
}
