// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

import java.io.IOException;
import java.io.InputStream;

/**
 * Reads the logs of one format. Whatever the bytes are, a reader comes to an end and throws nothing but the stream's own exceptions and
 * what the progress throws to stop it; what cannot be read is counted.
 */
public interface LogReader {

    /** Reads to the end and leaves the stream open. */
    void read(InputStream in, LogIntake intake, LogProgress progress) throws IOException;
}
