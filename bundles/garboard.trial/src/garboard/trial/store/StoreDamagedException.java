// SPDX-License-Identifier: EPL-2.0
package garboard.trial.store;

import java.io.IOException;

/** A file is no store of readings, was cut off, or was changed since it was written. The message says what was found. */
public final class StoreDamagedException extends IOException {

    private static final long serialVersionUID = 1L;

    StoreDamagedException(String message) {
        super(message);
    }

    StoreDamagedException(String message, Throwable cause) {
        super(message, cause);
    }
}
