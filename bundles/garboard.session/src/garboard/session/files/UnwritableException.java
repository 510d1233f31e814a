// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;

import garboard.model.io.RecordWriteException;

/** A record cannot be written to a file. What stood in the file before still stands there. */
public final class UnwritableException extends Exception {

    private static final long serialVersionUID = 1L;

    /** Why. */
    public enum Fault {
        /** It is a folder. */
        FOLDER,
        /** The folder that it should go to is not there. */
        NO_FOLDER,
        /** The person may not write there. */
        FORBIDDEN,
        /** Something in the record can stand in no file. */
        CONTENT,
        /** Anything else, the disk being full for example. */
        OTHER
    }

    private final Fault fault;
    private final transient Path file;

    private UnwritableException(Fault fault, Path file, RecordWriteException cause) {
        super(cause.getMessage(), cause);
        this.fault = fault;
        this.file = file;
    }

    static UnwritableException of(Path file, RecordWriteException failed) {
        Throwable reason = failed.getCause();
        Fault fault = Files.isDirectory(file) ? Fault.FOLDER
            : reason == null ? Fault.CONTENT
            : reason instanceof AccessDeniedException || reason instanceof ReadOnlyFileSystemException ? Fault.FORBIDDEN
            : reason instanceof NoSuchFileException ? Fault.NO_FOLDER : Fault.OTHER;
        return new UnwritableException(fault, file, failed);
    }

    public Fault fault() {
        return fault;
    }

    public Path file() {
        return file;
    }
}
