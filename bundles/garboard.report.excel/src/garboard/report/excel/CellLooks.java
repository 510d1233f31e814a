// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import garboard.checks.Standing;
import garboard.report.Block;
import garboard.report.Cell;
import garboard.report.Table;

/** The look of the report: few sizes, one dark accent, grounds so light that they vanish on a copier without taking a word along. */
final class CellLooks {

    static final double TABLE_PT = 8;
    static final double SMALL_PT = 7.5;
    static final double LARGE_PT = 10.5;
    static final Look HEADING = Look.text(17).strong().ink(Look.ACCENT).oneLine().inTheMiddle();
    static final Look UNDER_HEADING = Look.text(8.5).ink(Look.FAINT_INK).oneLine().edges(Look.Edges.BELOW_FIRM);
    static final Look SECTION = Look.text(11).strong().ink(Look.ACCENT).oneLine();
    static final Look LABEL = Look.text(TABLE_PT).ink(Look.FAINT_INK).edges(Look.Edges.BELOW);
    static final Look VALUE = Look.text(9).edges(Look.Edges.BELOW);
    static final Look TO_WRITE_ON = Look.text(9).atTheBottom().edges(Look.Edges.TO_WRITE_ON);
    static final Look UNDER_LINE = Look.text(7).ink(Look.FAINT_INK);
    static final Look GROUP =
        Look.text(TABLE_PT + 0.5).strong().ink(Look.ACCENT).on(Look.GROUP_FILL).oneLine().inTheMiddle().edges(Look.Edges.BELOW);

    private static final Look HEAD = Look.text(TABLE_PT).strong().on(Look.HEAD_FILL).edges(Look.Edges.BELOW_FIRM);
    private static final Look BODY = Look.text(TABLE_PT).edges(Look.Edges.BELOW);
    private static final Look TOTAL = Look.text(TABLE_PT).strong().edges(Look.Edges.ABOVE_FIRM);
    static final String DAY_FORMAT = "yyyy-mm-dd";

    private CellLooks() {
    }

    static Look paragraph(Block.Style style) {
        return switch (style) {
            case BODY -> Look.text(9);
            case NOTE -> Look.text(7.5).ink(Look.FAINT_INK);
            case OUTCOME -> Look.text(11.5).strong().on(Look.HEAD_FILL).inTheMiddle().indented().edges(Look.Edges.BAR_LEFT);
            case CAUTION_LEAD -> Look.text(11).strong().indented().edges(Look.Edges.BAR_LEFT);
            case CAUTION -> Look.text(9.5).indented().edges(Look.Edges.BAR_LEFT);
        };
    }

    static Look head(Table.Kind kind, boolean afterNumber) {
        return kind == Table.Kind.NUMBER ? HEAD.across(Look.Across.RIGHT) : afterNumber ? HEAD.indented() : HEAD;
    }

    /** @param afterNumber whether a number stands right before it, against which it would lean */
    static Look cell(Cell cell, Table.Kind kind, Table.RowKind row, boolean afterNumber) {
        Look look = row == Table.RowKind.TOTAL ? TOTAL : BODY;
        if (kind == Table.Kind.NUMBER) {
            look = look.across(Look.Across.RIGHT);
        } else if (afterNumber) {
            look = look.indented();
        }
        return switch (cell) {
            case Cell.Number number -> look.format(decimals(number.decimals(), false)).oneLine();
            case Cell.Computed computed -> look.format(decimals(computed.decimals(), computed.signed())).oneLine();
            case Cell.Day day -> look.format(DAY_FORMAT).oneLine();
            case Cell.DayAfter day -> look.format(DAY_FORMAT).oneLine();
            case Cell.Stands stands -> standing(look, stands.standing());
            case Cell.Text text -> weight(look, text.weight());
            case Cell.Blank blank -> look;
        };
    }

    static Look weight(Look look, Cell.Weight weight) {
        return switch (weight) {
            case PLAIN -> look;
            case STRONG -> look.strong();
            case FAINT -> look.ink(Look.FAINT_INK);
        };
    }

    /** {@return mark and word} Whoever cannot see the ground reads the mark; whoever lacks the mark's font reads the word. */
    static String standingText(Standing standing) {
        return switch (standing) {
            case CHECK_BROKE -> "! ";
            case FALLS_SHORT -> "\u2717 ";
            case BORDERLINE -> "\u2248 ";
            case CANNOT_TELL -> "? ";
            case ACCEPTED -> "\u25c7 ";
            case MEETS -> "\u2713 ";
            case DOES_NOT_APPLY -> "\u2013 ";
        } + standing.label();
    }

    private static Look standing(Look look, Standing standing) {
        return switch (standing) {
            case CHECK_BROKE, FALLS_SHORT -> look.strong().on(0xF6DAD4);
            case BORDERLINE -> look.strong().on(0xFAEFD2);
            case CANNOT_TELL -> look.strong().on(0xEEF0F2);
            case ACCEPTED -> look.strong().on(0xE4EAF1);
            case MEETS -> look;
            case DOES_NOT_APPLY -> look.ink(Look.FAINT_INK);
        };
    }

    static String decimals(int decimals, boolean signed) {
        String plain = decimals <= 0 ? "0" : "0." + "0".repeat(decimals);
        return signed ? "+" + plain + ";-" + plain + ";" + plain : plain;
    }
}
