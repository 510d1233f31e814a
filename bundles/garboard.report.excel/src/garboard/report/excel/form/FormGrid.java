// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

/** The columns of a form's sheet and the marks in its hidden column, by which the reader finds its way whatever was moved. */
final class FormGrid {

    static final int LABEL = 0;
    static final int UNIT = 1;
    /** The first of the columns for values; a field that is there once uses this one. */
    static final int VALUE = 2;
    /** How many items of a list stand side by side. */
    static final int ITEMS = 4;
    static final int HOW = VALUE + ITEMS;
    /** Hidden. */
    static final int KEY = HOW + 1;

    /** A field that is there once; the key follows. */
    static final String FIELD = "field ";
    /** The row with the numbers of the items of a list; the list's key follows. */
    static final String ITEMS_OF = "items ";
    /** The row that says to which item of the list above each item belongs. */
    static final String BELONGS = "belongs ";
    /** A field of the items above; list and field follow. */
    static final String ITEM_FIELD = "each ";

    /** Hidden sheet with the choices of drop-down lists. */
    static final String CHOICES = "garboard-choices";
    /** Hidden sheet with the record that the form was made from. */
    static final String BASE = "garboard-record";
    /** First cell of the hidden sheet: what this is. */
    static final String BASE_MARK = "garboard form 1";
    /** A cell holds at most 32,767 characters. */
    static final int BASE_CHUNK = 32_000;

    private FormGrid() {
    }
}
