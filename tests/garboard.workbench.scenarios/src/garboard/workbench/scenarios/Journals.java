// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The journal as it lies on the disk. */
final class Journals {

    private Journals() {
    }

    /** {@return whether a text is in any file of the journal below the user's folder} */
    static boolean hold(Path userFolder, String text) {
        Path folder = userFolder.resolve("journal");
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).anyMatch(file -> contains(file, text));
        } catch (IOException | UncheckedIOException moved) {
            // Files come and go while the journal is written; the next look tells.
            return false;
        }
    }

    private static boolean contains(Path file, String text) {
        try {
            return new String(Files.readAllBytes(file), StandardCharsets.UTF_8).contains(text);
        } catch (IOException gone) {
            return false;
        }
    }
}
