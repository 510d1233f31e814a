// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZonedDateTime;

import garboard.checks.Catalogue;
import garboard.checks.Evaluation;
import garboard.checks.Evaluator;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordWriteException;
import garboard.quantity.UnitSystem;
import garboard.report.Paper;
import garboard.report.Report;
import garboard.report.ReportOptions;
import garboard.report.Reports;
import garboard.session.OpenRecord;

/**
 * A copy of an open record, taken at one moment, from which a report or a form is written on another thread while the person works on. It is
 * judged and composed in the same way as by the console.
 */
public final class ReportSource {

    private final RecordFile copy;
    private final Catalogue catalogue;
    private final String fileName;
    private final ReportOptions options;
    private final LocalDate today;

    private ReportSource(RecordFile copy, Catalogue catalogue, String fileName, ReportOptions options, LocalDate today) {
        this.copy = copy;
        this.catalogue = catalogue;
        this.fileName = fileName;
        this.options = options;
        this.today = today;
    }

    /**
     * Copies an open record. To be called on the thread that edits it.
     *
     * @param fileName what the record is called inside the workbook, with {@link RecordFile#ENDING}
     * @param programVersion printed in the report
     */
    public static ReportSource of(OpenRecord open, String fileName, UnitSystem units, Paper paper, Clock clock, String programVersion) {
        return new ReportSource(open.content().copy(), open.verdicts().catalogue(), fileName,
            new ReportOptions(units, paper, ZonedDateTime.now(clock), programVersion), LocalDate.now(clock));
    }

    /** {@return the report} On any thread. */
    public Report compose() {
        Evaluation evaluation = new Evaluator(catalogue).evaluate(copy.record(), today);
        return Reports.compose(copy.record(), evaluation, options);
    }

    /** {@return the units for what is computed, and for empty fields of a form} */
    public UnitSystem units() {
        return options.units();
    }

    /** {@return the copy of the record} */
    public RecordFile record() {
        return copy;
    }

    /** {@return what the record is called inside the workbook} */
    public String fileName() {
        return fileName;
    }

    /** {@return the bytes of the record as its file would have them} On any thread. */
    public byte[] bytes() throws RecordWriteException {
        return copy.toBytes();
    }
}
