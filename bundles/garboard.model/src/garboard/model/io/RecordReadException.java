// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

/**
 * A record could not be read. The message is one sentence for the person who chose the file: which file, which line and field where
 * known, what was found, what would be right. Nothing was half-read.
 */
public final class RecordReadException extends Exception {

    private static final long serialVersionUID = 1L;

    /** Takes the sentence as it will be shown. */
    public RecordReadException(String message) {
        super(message);
    }

    /** Takes the sentence as it will be shown, and what lies behind it. */
    public RecordReadException(String message, Throwable cause) {
        super(message, cause);
    }
}
