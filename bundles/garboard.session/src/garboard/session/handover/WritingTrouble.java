// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Optional;

/**
 * Why a workbook could not be written.
 *
 * @param detail what the system says, where there is nothing better to say
 */
public record WritingTrouble(Kind kind, String detail) {

    /** What it can be, to be worded in the person's language. */
    public enum Kind {
        /** What was named is a folder. */
        FOLDER,
        /** Its folder is not there. */
        NO_FOLDER,
        /** The person may not write there. */
        FORBIDDEN,
        /** Anything else: the disk is full, the file is open elsewhere; told by the detail. */
        OTHER
    }

    /** {@return what would keep a file from being written, before anything is} */
    public static Optional<WritingTrouble> foreseen(Path target) {
        Path folder = target.toAbsolutePath().getParent();
        if (Files.isDirectory(target)) {
            return Optional.of(new WritingTrouble(Kind.FOLDER, ""));
        }
        return Files.isDirectory(folder) ? Optional.empty() : Optional.of(new WritingTrouble(Kind.NO_FOLDER, ""));
    }

    /** {@return what a failure to write a file means} */
    public static WritingTrouble of(Path target, Throwable failed) {
        for (Throwable cause = failed; cause != null; cause = cause.getCause()) {
            switch (cause) {
                case AccessDeniedException denied -> {
                    return new WritingTrouble(Kind.FORBIDDEN, "");
                }
                case ReadOnlyFileSystemException readOnly -> {
                    return new WritingTrouble(Kind.FORBIDDEN, "");
                }
                case NoSuchFileException missing -> {
                    // A system that lets nobody make a file in a folder that is there says the same.
                    return new WritingTrouble(Files.isDirectory(target.toAbsolutePath().getParent()) ? Kind.FORBIDDEN : Kind.NO_FOLDER, "");
                }
                case FileSystemException system when system.getReason() != null -> {
                    return new WritingTrouble(Kind.OTHER, system.getReason());
                }
                default -> { }
            }
        }
        return new WritingTrouble(Kind.OTHER, innermost(failed));
    }

    private static String innermost(Throwable failed) {
        Throwable cause = failed;
        while (cause.getCause() instanceof IOException deeper) {
            cause = deeper;
        }
        return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    }
}
