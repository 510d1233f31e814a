// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.ask;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Everything that a person is asked outside of the parts of the window: which file, and what to do. In the context of the application, so
 * that a handler gets it injected, and a test can answer in the person's place. Called on the window's thread; returns when answered.
 */
public interface Ask {

    /** {@return the file to read, nothing when the person thought better of it} */
    Optional<Path> fileToOpen(FileQuestion question);

    /** {@return the files to read, none when the person thought better of it} */
    List<Path> filesToOpen(FileQuestion question);

    /** {@return the file to write, nothing when the person thought better of it} That an existing file is to be replaced was agreed to. */
    Optional<Path> fileToWrite(FileQuestion question);

    /** {@return the id of the answer that was chosen} Closing the dialog is the last answer. */
    String choose(Question question);
}
