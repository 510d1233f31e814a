// SPDX-License-Identifier: EPL-2.0
package garboard.examples;

import java.io.IOException;
import java.io.InputStream;

/**
 * An example record.
 *
 * @param name by which it is asked for
 * @param title what it shows
 */
public record Example(String name, String title) {

    /** The record's file; the caller closes it. */
    public InputStream open() throws IOException {
        String path = "/records/" + name + ".garboard";
        InputStream in = Example.class.getResourceAsStream(path);
        if (in == null) {
            throw new IOException("The bundle of examples lacks " + path);
        }
        return in;
    }
}
