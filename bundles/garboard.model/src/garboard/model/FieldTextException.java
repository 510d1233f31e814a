// SPDX-License-Identifier: EPL-2.0
package garboard.model;

/** A text is no value of the field it was meant for. The message tells what was found and what would be right. */
public final class FieldTextException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    FieldTextException(String message) {
        super(message);
    }

    FieldTextException(String message, Throwable cause) {
        super(message, cause);
    }
}
