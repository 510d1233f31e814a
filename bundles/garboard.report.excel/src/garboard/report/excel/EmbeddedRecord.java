// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.util.Objects;

/**
 * The file of a record as it is carried inside a workbook, byte for byte.
 *
 * @param fileName name of the file it came from, or the name that it is to have
 * @param bytes content of the file, not to be changed
 */
public record EmbeddedRecord(String fileName, byte[] bytes) {
    public EmbeddedRecord {
        Objects.requireNonNull(fileName, "fileName");
        Objects.requireNonNull(bytes, "bytes");
    }
}
