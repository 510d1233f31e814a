// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

/**
 * One mistake in a filled form.
 *
 * @param sheet name of the sheet
 * @param cell such as {@code C14}
 * @param field what the row asks for
 * @param problem what stood there and what would be right
 */
public record FormMistake(String sheet, String cell, String field, String problem) {

    /** In one line, for a person with the form open beside it. */
    @Override
    public String toString() {
        return sheet + "!" + cell + " (" + field + "): " + problem;
    }
}
