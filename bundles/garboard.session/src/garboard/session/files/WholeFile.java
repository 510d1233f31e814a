// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes small files of the program's own so that a reader finds the old content or the new, never half of it. */
public final class WholeFile {

    private WholeFile() {
    }

    /** Writes a file beside its place and puts it there in one step. Missing folders are made. */
    public static void write(Path file, byte[] content) throws IOException {
        Path folder = Files.createDirectories(file.toAbsolutePath().getParent());
        Path fresh = Files.createTempFile(folder, ".garboard-", ".tmp");
        try {
            Files.write(fresh, content);
            move(fresh, file);
        } catch (IOException failed) {
            Files.deleteIfExists(fresh);
            throw failed;
        }
    }

    private static void move(Path fresh, Path file) throws IOException {
        try {
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException notHere) {
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
