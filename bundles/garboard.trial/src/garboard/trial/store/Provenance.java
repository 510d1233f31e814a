// SPDX-License-Identifier: EPL-2.0
package garboard.trial.store;

import java.util.List;

/**
 * Where the readings of a store came from, kept with them.
 *
 * @param file       name of the log, without folder
 * @param format     in words
 * @param bytes      its size
 * @param sha256     of all its bytes, in hexadecimal digits
 * @param isRelative whether times count from the start of the log because nobody told when that was
 * @param told       what was wrong with it, one sentence each
 */
public record Provenance(String file, String format, long bytes, String sha256, boolean isRelative, List<String> told) {

    public Provenance {
        told = List.copyOf(told);
    }
}
