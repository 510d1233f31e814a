// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import java.nio.file.Path;
import java.util.List;

/** A file cannot be opened as a record. Says why in a way that can be told in any language, with the reader's own words as detail. */
public final class UnreadableException extends Exception {

    private static final long serialVersionUID = 1L;

    /** Why. */
    public enum Fault {
        /** There is no such file any more. */
        GONE,
        /** It is a folder. */
        FOLDER,
        /** The person may not read it. */
        FORBIDDEN,
        /** It holds nothing. */
        EMPTY,
        /** It is neither a record nor a workbook. */
        FOREIGN,
        /** It begins like a record, but is cut off or damaged. */
        DAMAGED,
        /** It is a workbook that carries no record, or one that cannot be read. */
        WORKBOOK,
        /** It is a form with entries that cannot be read. */
        FORM
    }

    private final Fault fault;
    private final transient Path file;
    private final transient List<String> details;

    /** @param details what the reader says, a sentence each */
    public UnreadableException(Fault fault, Path file, List<String> details, Throwable cause) {
        super(fault + " " + file + (details.isEmpty() ? "" : ": " + details.getFirst()), cause);
        this.fault = fault;
        this.file = file;
        this.details = List.copyOf(details);
    }

    public Fault fault() {
        return fault;
    }

    public Path file() {
        return file;
    }

    public List<String> details() {
        return details;
    }
}
