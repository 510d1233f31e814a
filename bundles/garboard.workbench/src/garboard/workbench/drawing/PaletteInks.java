// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.drawing;

import java.util.EnumMap;
import java.util.Map;

import org.eclipse.swt.graphics.Color;

import garboard.checks.Standing;
import garboard.report.drawing.Ink;
import garboard.report.drawing.Inks;
import garboard.workbench.look.Palette;

/** The inks of drawings in the colours of the window. */
final class PaletteInks implements Inks {

    private final Map<Ink, Integer> inks = new EnumMap<>(Ink.class);

    PaletteInks(Palette palette) {
        for (Ink ink : Ink.values()) {
            Color color = color(palette, ink);
            inks.put(ink, color.getRed() << 16 | color.getGreen() << 8 | color.getBlue());
        }
    }

    private static Color color(Palette palette, Ink ink) {
        return switch (ink) {
            case INK -> palette.ink();
            case FAINT -> palette.faint();
            case PALE -> palette.hull();
            case WATER -> palette.water();
            case SEA -> palette.sea();
            case FUEL -> palette.fuel();
            case EXHAUST -> palette.exhaust();
            case EMBER -> palette.ember();
            case BLANK -> palette.sheet();
            case CHOSEN -> palette.accent();
            case CHECK_BROKE -> palette.of(Standing.CHECK_BROKE);
            case FALLS_SHORT -> palette.of(Standing.FALLS_SHORT);
            case BORDERLINE -> palette.of(Standing.BORDERLINE);
            case CANNOT_TELL -> palette.of(Standing.CANNOT_TELL);
            case ACCEPTED -> palette.of(Standing.ACCEPTED);
            case MEETS -> palette.ink();
        };
    }

    @Override
    public int rgb(Ink ink) {
        return inks.get(ink);
    }
}
