// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.List;
import java.util.Optional;

/**
 * A report, ready to be written.
 *
 * @param title what the report is
 * @param recordNumber number of the record, or an empty text
 * @param subject vessel and set in one line, or an empty text
 * @param sheets in the order of reading; those without data are not there
 * @param verdicts the verdicts of the day, to be kept beside the record
 * @param options what it was composed for
 */
public record Report(String title, String recordNumber, String subject, List<Sheet> sheets, List<VerdictOfTheDay> verdicts,
        ReportOptions options) {

    public Report {
        sheets = List.copyOf(sheets);
        verdicts = List.copyOf(verdicts);
    }

    /** The sheet of this name. */
    public Optional<Sheet> sheet(String name) {
        return sheets.stream().filter(sheet -> sheet.name().equals(name)).findFirst();
    }
}
