// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Saving is cut short at each of its steps: by a fault that the program sees, and by a crash after which it does nothing more. */
class SaveSurvivesCrashTest {

    private enum Step {
        CREATE, WRITE_HALF, COPY_PERMISSIONS, FORCE, MOVE, FORCE_FOLDER
    }

    /** The power goes: no clean-up runs after this. */
    private static final class Crash extends Error {
        private static final long serialVersionUID = 1L;
    }

    @TempDir
    Path folder;
    private Path boat;

    @BeforeEach
    void saveAnOldRecord() throws RecordWriteException {
        boat = folder.resolve("boat.garboard");
        titled("old").save(boat);
    }

    private static RecordFile titled(String title) {
        RecordFile file = RecordFile.create();
        file.record().setTitle(title);
        return file;
    }

    private String title() throws RecordReadException {
        return RecordFile.open(boat).record().getTitle();
    }

    private List<String> names() throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }

    @ParameterizedTest
    @EnumSource(Step.class)
    void aCrashLeavesTheOldContentOrTheNew(Step step) throws Exception {
        assertThatThrownBy(() -> titled("new").save(boat, new Failing(step, true))).isInstanceOf(Crash.class);

        assertThat(title()).isEqualTo(step == Step.FORCE_FOLDER ? "new" : "old");
        titled("newer").save(boat);
        assertThat(title()).isEqualTo("newer");
    }

    @ParameterizedTest
    @EnumSource(value = Step.class, names = "FORCE_FOLDER", mode = EnumSource.Mode.EXCLUDE)
    void aFaultLeavesTheOldContentAndNothingBesideIt(Step step) throws Exception {
        assertThatThrownBy(() -> titled("new").save(boat, new Failing(step, false))).isInstanceOf(RecordWriteException.class)
            .hasMessage(boat + " cannot be written: No space left on device");

        assertThat(title()).isEqualTo("old");
        assertThat(names()).containsExactly("boat.garboard");
    }

    @Test
    void aFolderThatCannotBeForcedIsNoFault() throws Exception {
        titled("new").save(boat, new Failing(Step.FORCE_FOLDER, false));

        assertThat(title()).isEqualTo("new");
    }

    @Test
    void theContentIsOnTheDiskBeforeItTakesThePlaceOfTheOld() throws Exception {
        Failing steps = new Failing(null, false);
        titled("new").save(boat, steps);

        assertThat(steps.done).containsExactly(Step.CREATE, Step.WRITE_HALF, Step.COPY_PERMISSIONS, Step.FORCE, Step.MOVE, Step.FORCE_FOLDER);
        assertThat(names()).containsExactly("boat.garboard");
    }

    @Test
    void aFileThatMayNotBeReplacedIsLeft() throws Exception {
        FileSteps readOnly = new FileSteps() {
            @Override
            public boolean mayReplace(Path target) {
                return false;
            }
        };
        assertThatThrownBy(() -> titled("new").save(boat, readOnly)).isInstanceOf(RecordWriteException.class)
            .hasMessage(boat + " cannot be written: there is no permission to write the file or in its folder");
        assertThat(title()).isEqualTo("old");
    }

    @Test
    void aFolderThatMayNotBeWrittenIsTold() {
        FileSteps denied = new FileSteps() {
            @Override
            public Path createIn(Path target) throws IOException {
                throw new AccessDeniedException(target.toString());
            }
        };
        assertThatThrownBy(() -> titled("new").save(boat, denied)).isInstanceOf(RecordWriteException.class)
            .hasMessage(boat + " cannot be written: there is no permission to write the file or in its folder");
    }

    @Test
    void permissionsStay() throws Exception {
        Assumptions.assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"), "a file system with permissions");
        Files.setPosixFilePermissions(boat, PosixFilePermissions.fromString("rw-rw-r--"));
        titled("new").save(boat);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(boat))).isEqualTo("rw-rw-r--");
    }

    @Test
    void aLinkStaysALink() throws Exception {
        Path link;
        try {
            link = Files.createSymbolicLink(folder.resolve("link.garboard"), boat);
        } catch (IOException | UnsupportedOperationException noLinks) {
            Assumptions.abort("a file system with links");
            return;
        }
        titled("new").save(link);
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(title()).isEqualTo("new");
    }

    /** Does each step, up to the one that fails. */
    private static final class Failing implements FileSteps {

        private final Step failing;
        private final boolean crash;
        private final List<Step> done = new ArrayList<>();
        private boolean crashed;

        Failing(Step failing, boolean crash) {
            this.failing = failing;
            this.crash = crash;
        }

        private void reach(Step step) throws IOException {
            if (crashed) {
                throw new AssertionError("nothing runs after the crash");
            }
            if (step == failing) {
                crashed = crash;
                if (crash) {
                    throw new Crash();
                }
                throw new FileSystemException("boat.garboard", null, "No space left on device");
            }
            done.add(step);
        }

        @Override
        public Path createIn(Path in) throws IOException {
            reach(Step.CREATE);
            return FileSteps.super.createIn(in);
        }

        @Override
        public void write(Path file, byte[] bytes) throws IOException {
            FileSteps.super.write(file, Arrays.copyOf(bytes, bytes.length / 2));
            reach(Step.WRITE_HALF);
            FileSteps.super.write(file, bytes);
        }

        @Override
        public void copyPermissions(Path from, Path to) throws IOException {
            reach(Step.COPY_PERMISSIONS);
            FileSteps.super.copyPermissions(from, to);
        }

        @Override
        public void force(Path file) throws IOException {
            reach(Step.FORCE);
            FileSteps.super.force(file);
        }

        @Override
        public void moveOver(Path file, Path target) throws IOException {
            reach(Step.MOVE);
            FileSteps.super.moveOver(file, target);
        }

        @Override
        public void forceFolder(Path of) throws IOException {
            reach(Step.FORCE_FOLDER);
            FileSteps.super.forceFolder(of);
        }

        @Override
        public void delete(Path file) throws IOException {
            if (crashed) {
                throw new AssertionError("nothing runs after the crash");
            }
            FileSteps.super.delete(file);
        }
    }
}
