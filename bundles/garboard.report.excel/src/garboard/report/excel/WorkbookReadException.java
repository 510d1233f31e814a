// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.io.IOException;

/** A workbook could not be read; the message says in one sentence which one and why. */
public class WorkbookReadException extends IOException {

    private static final long serialVersionUID = 1L;

    public WorkbookReadException(String message) {
        super(message);
    }

    public WorkbookReadException(String message, Throwable cause) {
        super(message, cause);
    }
}
