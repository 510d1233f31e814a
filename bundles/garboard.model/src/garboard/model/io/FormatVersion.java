// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Version of the form of record files. Within one major number, which also stands in the namespace of the files, old and new
 * programs read each other's files.
 */
record FormatVersion(int major, int minor) implements Comparable<FormatVersion> {

    /** What this program writes. */
    static final FormatVersion CURRENT = new FormatVersion(1, 0);

    private static final Pattern WRITTEN = Pattern.compile("([0-9]{1,4})\\.([0-9]{1,4})");

    static Optional<FormatVersion> of(String text) {
        Matcher written = WRITTEN.matcher(text);
        return written.matches() ? Optional.of(new FormatVersion(Integer.parseInt(written.group(1)), Integer.parseInt(written.group(2))))
            : Optional.empty();
    }

    @Override
    public int compareTo(FormatVersion other) {
        return Comparator.comparingInt(FormatVersion::major).thenComparingInt(FormatVersion::minor).compare(this, other);
    }

    @Override
    public String toString() {
        return major + "." + minor;
    }
}
