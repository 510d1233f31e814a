// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.io.IOException;

/** A workbook could not be written; the message says in one sentence where and why. */
public class WorkbookWriteException extends IOException {

    private static final long serialVersionUID = 1L;

    public WorkbookWriteException(String message, Throwable cause) {
        super(message, cause);
    }
}
