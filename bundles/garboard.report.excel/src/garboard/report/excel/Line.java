// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.time.LocalDate;
import java.util.List;

/**
 * One row of a sheet, ready to be written.
 *
 * @param heightPt height in points
 * @param keep whether it must not be the last on a page
 * @param breakBefore whether it must be the first on a page
 * @param cells from left to right
 */
record Line(double heightPt, boolean keep, boolean breakBefore, List<Placed> cells) {

    /** Highest row that spreadsheet programs know, in points. */
    static final double HIGHEST_PT = 400;

    /** Something in the columns of a span. */
    record Placed(SheetGrid.Span span, Content content, Look look) {
    }

    /** What is written. */
    sealed interface Content {
        /** Ground and lines only. */
        record Nothing() implements Content {
        }

        record Words(String text) implements Content {
        }

        record Figure(double value) implements Content {
        }

        /** @param cached what the cell shows before anything is recalculated */
        record Formula(String text, double cached) implements Content {
        }

        record Date(LocalDate day) implements Content {
        }
    }

    static final Content NOTHING = new Content.Nothing();

    static Line gap(double heightPt) {
        return new Line(heightPt, true, false, List.of());
    }
}
