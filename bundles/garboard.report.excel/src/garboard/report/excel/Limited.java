// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** A stream that gives out after so many bytes: what a file says of its own size is not to be trusted. */
final class Limited extends FilterInputStream {

    private final String what;
    private long left;

    Limited(InputStream in, long most, String what) {
        super(in);
        this.left = most;
        this.what = what;
    }

    @Override
    public int read() throws IOException {
        int read = super.read();
        if (read >= 0) {
            count(1);
        }
        return read;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
        int read = super.read(into, from, length);
        if (read > 0) {
            count(read);
        }
        return read;
    }

    private void count(int read) throws IOException {
        left -= read;
        if (left < 0) {
            throw new IOException(what + " unpacks to more than it can be worth");
        }
    }
}
