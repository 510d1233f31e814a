// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

import garboard.model.io.RecordFile;
import garboard.model.io.RecordWriteException;

/** Writes what a command made, all of it or nothing. */
final class RecordOutput {

    /** Writes the content of a file. */
    interface Content {
        void to(OutputStream out) throws IOException, CommandFailure;
    }

    private RecordOutput() {
    }

    static void save(RecordFile record, Path file) throws CommandFailure {
        try {
            record.save(file);
        } catch (RecordWriteException failed) {
            throw new CommandFailure(failed.getMessage(), failed);
        }
    }

    /** Writes beside the target first and moves it into place when it is whole. */
    static void write(Path file, Content content) throws CommandFailure {
        if (Files.isDirectory(file)) {
            throw new CommandFailure(file + " is a folder; name a file to write");
        }
        Path beside = null;
        try {
            beside = Files.createTempFile(file.getParent(), "." + file.getFileName(), ".part");
            try (OutputStream out = Files.newOutputStream(beside)) {
                content.to(out);
            }
            move(beside, file);
            beside = null;
        } catch (NoSuchFileException noFolder) {
            throw new CommandFailure(file + " cannot be written: the folder " + file.getParent() + " does not exist", noFolder);
        } catch (IOException failed) {
            throw new CommandFailure(file + " cannot be written: " + reason(failed), failed);
        } finally {
            remove(beside);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException | FileAlreadyExistsException notHere) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void remove(Path beside) {
        if (beside != null) {
            try {
                Files.deleteIfExists(beside);
            } catch (IOException left) {
                // It is only a leftover beside the target; the failure that led here is what the person must hear of.
            }
        }
    }

    private static String reason(IOException failed) {
        return failed instanceof java.nio.file.AccessDeniedException ? "permission is denied"
            : failed.getMessage() == null ? failed.getClass().getSimpleName() : failed.getMessage();
    }
}
