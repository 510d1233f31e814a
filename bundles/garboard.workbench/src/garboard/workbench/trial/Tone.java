// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import org.eclipse.swt.graphics.Color;

import garboard.checks.Standing;
import garboard.workbench.look.Palette;

/** How a sentence is meant; its colour only underlines what its words say. */
enum Tone {
    PLAIN, QUIET, GOOD, OPEN, WARNING, DANGER;

    Color in(Palette palette) {
        return switch (this) {
            case PLAIN -> palette.ink();
            case QUIET -> palette.faint();
            case GOOD -> palette.of(Standing.MEETS);
            case OPEN -> palette.of(Standing.CANNOT_TELL);
            case WARNING -> palette.of(Standing.BORDERLINE);
            case DANGER -> palette.of(Standing.FALLS_SHORT);
        };
    }
}
