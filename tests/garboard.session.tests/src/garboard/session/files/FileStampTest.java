// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import garboard.session.files.FileStamp.Since;

class FileStampTest {

    @TempDir
    private Path folder;

    private Path file(String content) throws Exception {
        return Files.writeString(folder.resolve("boat.garboard"), content);
    }

    @Test
    void knowsAnUntouchedFile() throws Exception {
        Path file = file("one");
        assertThat(FileStamp.of(file).since(file)).isEqualTo(Since.SAME);
    }

    @Test
    void takesAFileThatOnlyLooksNewerForTheSame() throws Exception {
        Path file = file("one");
        FileStamp stamp = FileStamp.of(file);
        Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2031-01-01T00:00:00Z")));
        assertThat(stamp.since(file)).isEqualTo(Since.SAME);
    }

    @Test
    void seesAChangeOfTheSameLength() throws Exception {
        Path file = file("one");
        FileStamp stamp = FileStamp.of(file);
        file("two");
        Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2031-01-01T00:00:00Z")));
        assertThat(stamp.since(file)).isEqualTo(Since.CHANGED);
    }

    @Test
    void seesThatItIsGoneOrAFolder() throws Exception {
        Path file = file("one");
        FileStamp stamp = FileStamp.of(file);
        Files.delete(file);
        assertThat(stamp.since(file)).isEqualTo(Since.GONE);
        Files.createDirectory(file);
        assertThat(stamp.since(file)).isEqualTo(Since.CHANGED);
    }

    // SHA-256 of "abc": FIPS 180-4, example B.1 of its predecessor FIPS 180-2
    @Test
    void digestsByTheStandard() throws Exception {
        assertThat(FileStamp.of(file("abc")).sha256()).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
