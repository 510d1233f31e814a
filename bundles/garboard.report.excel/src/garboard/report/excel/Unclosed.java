// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** A stream that belongs to somebody else and is not to be closed. */
final class Unclosed extends FilterOutputStream {

    Unclosed(OutputStream out) {
        super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        out.write(bytes, from, length);
    }

    @Override
    public void close() throws IOException {
        flush();
    }
}
