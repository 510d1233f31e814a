// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.List;

import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import garboard.report.excel.EmbeddedRecord;
import garboard.report.excel.WorkbookReadException;
import garboard.report.excel.WorkbookReader;
import garboard.report.excel.form.FormMistake;
import garboard.report.excel.form.FormReadException;
import garboard.report.excel.form.FormReader;
import garboard.session.files.UnreadableException;
import garboard.session.files.UnreadableException.Fault;
import garboard.session.files.WorkbookReading;

/** Takes the record out of a report workbook, or the entries out of a filled form. */
final class SentWorkbooks implements WorkbookReading {

    @Override
    public RecordFile read(Path workbook) throws UnreadableException {
        var forms = new FormReader();
        try {
            return forms.isForm(workbook) ? forms.read(workbook) : fromReport(workbook);
        } catch (FormReadException wrong) {
            Fault fault = wrong.mistakes().isEmpty() ? Fault.WORKBOOK : Fault.FORM;
            throw new UnreadableException(fault, workbook,
                wrong.mistakes().isEmpty() ? List.of(wrong.getMessage()) : wrong.mistakes().stream().map(FormMistake::toString).toList(), wrong);
        } catch (WorkbookReadException | RecordReadException wrong) {
            throw new UnreadableException(Fault.WORKBOOK, workbook, List.of(wrong.getMessage()), wrong);
        }
    }

    private static RecordFile fromReport(Path workbook) throws WorkbookReadException, RecordReadException {
        EmbeddedRecord embedded = new WorkbookReader().readEnclosedFile(workbook);
        return RecordFile.read(new ByteArrayInputStream(embedded.bytes()), embedded.fileName() + " in " + workbook.getFileName());
    }
}
