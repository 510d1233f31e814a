// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import garboard.session.handover.WritingTrouble.Kind;

class WritingTroubleTest {

    @TempDir
    private Path folder;

    @Test
    void isForeseenForAFolderAndInAFolderThatIsNotThere() throws IOException {
        assertThat(WritingTrouble.foreseen(folder)).contains(new WritingTrouble(Kind.FOLDER, ""));
        assertThat(WritingTrouble.foreseen(folder.resolve("gone").resolve("boat.xlsx"))).contains(new WritingTrouble(Kind.NO_FOLDER, ""));
        assertThat(WritingTrouble.foreseen(folder.resolve("boat.xlsx"))).isEmpty();
        Files.writeString(folder.resolve("boat.xlsx"), "older");
        assertThat(WritingTrouble.foreseen(folder.resolve("boat.xlsx"))).isEmpty();
    }

    @Test
    void isFoundBehindTheMessageOfTheWriter() {
        Path here = folder.resolve("boat.xlsx");
        Path gone = folder.resolve("gone").resolve("boat.xlsx");
        assertThat(WritingTrouble.of(here, new IOException("cannot", new AccessDeniedException("boat.xlsx"))).kind()).isEqualTo(Kind.FORBIDDEN);
        assertThat(WritingTrouble.of(gone, new IOException("cannot", new NoSuchFileException("boat.xlsx"))).kind()).isEqualTo(Kind.NO_FOLDER);
        // The folder is there, and nobody can make a file in it: so with the folders of processes on Linux.
        assertThat(WritingTrouble.of(here, new IOException("cannot", new NoSuchFileException("boat.xlsx"))).kind()).isEqualTo(Kind.FORBIDDEN);
        assertThat(WritingTrouble.of(here, new IOException("cannot", new FileSystemException("boat.xlsx", null, "No space left on device"))))
            .isEqualTo(new WritingTrouble(Kind.OTHER, "No space left on device"));
        assertThat(WritingTrouble.of(here, new IOException("cannot", new IOException("the line went dead"))))
            .isEqualTo(new WritingTrouble(Kind.OTHER, "the line went dead"));
    }
}
