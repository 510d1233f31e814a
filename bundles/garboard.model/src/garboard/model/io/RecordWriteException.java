// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

/**
 * A record could not be written. The message is one sentence for the person who chose the place: which file, why not. What stood in
 * the file before still stands there.
 */
public final class RecordWriteException extends Exception {

    private static final long serialVersionUID = 1L;

    /** Takes the sentence as it will be shown. */
    public RecordWriteException(String message) {
        super(message);
    }

    /** Takes the sentence as it will be shown, and what lies behind it. */
    public RecordWriteException(String message, Throwable cause) {
        super(message, cause);
    }
}
