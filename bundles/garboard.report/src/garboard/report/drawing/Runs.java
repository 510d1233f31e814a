// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import garboard.report.drawing.PlacedPart.Circuit;

/** How the runs of the circuits are drawn: told apart by their dashes. */
final class Runs {

    private Runs() {
    }

    static void stroke(Pen pen, Circuit circuit) {
        switch (circuit) {
            case FUEL -> pen.ink(Ink.FUEL).stroke(Pen.FIRM, Pen.DASH_DOT);
            case RAW_WATER -> pen.ink(Ink.WATER).stroke(Pen.FIRM * 1.4, Pen.LONG_DASH);
            case EXHAUST -> pen.ink(Ink.EXHAUST).stroke(Pen.HEAVY, Pen.SOLID);
        }
    }
}
