// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import garboard.session.OpenRecord;

/** What a person is asked and told while records are opened, saved and closed. */
public interface FilingQuestions {

    /** What to do with what is not saved. */
    enum Leave {
        SAVE, DISCARD, STAY
    }

    /** What to do about a file that is not as it was. */
    enum Clash {
        REPLACE, OTHER_NAME, STAY
    }

    /** {@return the file to open} */
    Optional<Path> fileToOpen(Optional<Path> folder);

    /** {@return the file to save a record to} */
    Optional<Path> fileToSave(OpenRecord record, Optional<Path> folder);

    /** Closing a record would lose something. */
    Leave unsaved(OpenRecord record);

    /** Another program changed the file of the open record. */
    Clash changedMeanwhile(Path file);

    /** The file of the open record is no longer there. */
    Clash goneMeanwhile(Path file);

    /** {@return whether an existing file may be replaced that the person did not name in full} */
    boolean mayReplace(Path file);

    /** A file cannot be opened. */
    void unreadable(UnreadableException why);

    /** {@return whether to try under another name} */
    boolean unwritable(UnwritableException why);

    /** What the reader of a file should know, a sentence each. */
    void notes(Path file, List<String> notes);
}
