// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.ask;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Which file?
 *
 * @param id what is asked, for tests: {@code open}, {@code saveAs}
 * @param title what stands above the chooser
 * @param folder where to begin to look
 * @param name the name proposed for a file to write, with its ending
 * @param kinds the kinds of files to offer, the usual one first; with none, any file
 */
public record FileQuestion(String id, String title, Optional<Path> folder, Optional<String> name, List<Kind> kinds) {

    /** A kind of file. @param endings as {@code .garboard}, with the dot */
    public record Kind(String label, List<String> endings) {
        public Kind {
            endings = List.copyOf(endings);
        }
    }

    public FileQuestion {
        kinds = List.copyOf(kinds);
    }

    /** {@return a question for files to read} */
    public static FileQuestion toOpen(String id, String title, Optional<Path> folder, Kind... kinds) {
        return new FileQuestion(id, title, folder, Optional.empty(), List.of(kinds));
    }

    /** {@return a question for a file to write} An ending is added to what the person enters when it is missing. */
    public static FileQuestion toWrite(String id, String title, Optional<Path> folder, String name, Kind kind) {
        return new FileQuestion(id, title, folder, Optional.of(name), List.of(kind));
    }
}
