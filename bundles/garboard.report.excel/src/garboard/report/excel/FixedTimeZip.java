// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;

import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;

/** A zip whose entries all bear one time, so that the same report becomes the same bytes. */
final class FixedTimeZip extends ZipArchiveOutputStream {

    private final LocalDateTime time;

    FixedTimeZip(OutputStream out, LocalDateTime time) {
        super(out);
        this.time = time;
    }

    @Override
    public void putArchiveEntry(ZipArchiveEntry entry) throws IOException {
        entry.setTimeLocal(time);
        super.putArchiveEntry(entry);
    }
}
