// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import java.util.Optional;

import garboard.session.OpenRecord;

/** Where the one open record is. */
public interface Bench {

    Optional<OpenRecord> open();

    /** Puts a record there in place of the one that is. Whether that one is saved was asked before. */
    void show(OpenRecord record);

    /** Clears it. */
    void close();
}
