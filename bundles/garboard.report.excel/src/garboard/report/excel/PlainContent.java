// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import garboard.report.Cell;
import garboard.report.excel.Line.Content;

/** Cells that stand outside a table and so cannot refer to others. */
final class PlainContent {

    private PlainContent() {
    }

    static Content of(Cell cell) {
        return switch (cell) {
            case Cell.Blank blank -> Line.NOTHING;
            case Cell.Text text -> new Content.Words(text.text());
            case Cell.Number number -> new Content.Figure(number.value());
            case Cell.Day day -> new Content.Date(day.day());
            case Cell.Stands stands -> new Content.Words(CellLooks.standingText(stands.standing()));
            case Cell.Computed computed -> throw new IllegalArgumentException("A formula outside a table: " + computed);
            case Cell.DayAfter after -> throw new IllegalArgumentException("A formula outside a table: " + after);
        };
    }

    static Look look(Cell cell, Look usual) {
        return switch (cell) {
            case Cell.Text text -> CellLooks.weight(usual, text.weight());
            case Cell.Number number -> usual.format(CellLooks.decimals(number.decimals(), false)).oneLine();
            case Cell.Day day -> usual.format(CellLooks.DAY_FORMAT).oneLine();
            default -> usual;
        };
    }
}
