// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;

/** The single steps of replacing a file, each of which can fail. A seam for tests that make them fail. */
interface FileSteps {

    /** The file system itself. */
    FileSteps REAL = new FileSteps() {
    };

    /** {@return whether a file that exists may be replaced} */
    default boolean mayReplace(Path target) {
        return Files.isWritable(target);
    }

    /** Creates an empty file in a folder, with a name that nothing else has. */
    default Path createIn(Path folder) throws IOException {
        return Files.createFile(folder.resolve(".garboard-" + UUID.randomUUID() + ".tmp"));
    }

    default void write(Path file, byte[] bytes) throws IOException {
        Files.write(file, bytes);
    }

    /** Gives a file the permissions of another, where the file system knows such. */
    default void copyPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView source = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        if (source != null) {
            Files.setPosixFilePermissions(to, source.readAttributes().permissions());
        }
    }

    /** Waits until what was written is on the disk. */
    default void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Puts a file in the place of another, in one step that is done whole or not at all. */
    default void moveOver(Path file, Path target) throws IOException {
        Files.move(file, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Waits until the names in a folder are on the disk; some systems cannot. */
    default void forceFolder(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }

    default void delete(Path file) throws IOException {
        Files.deleteIfExists(file);
    }
}
