// SPDX-License-Identifier: EPL-2.0
package garboard.trial;

import java.io.IOException;

/** A file is no log that is read here. The message says what was found and what would be right. */
public final class LogFormatException extends IOException {

    private static final long serialVersionUID = 1L;

    LogFormatException(String message) {
        super(message);
    }
}
