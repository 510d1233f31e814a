// SPDX-License-Identifier: EPL-2.0
package garboard.session.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;

/**
 * What a file was like when it was read or written last, to tell whether another program has changed it since.
 *
 * @param size in bytes
 * @param sha256 of its content, in hexadecimal digits
 */
public record FileStamp(long size, Instant modified, String sha256) {

    /** What has become of a file. */
    public enum Since {
        SAME, CHANGED, GONE
    }

    /** Takes the stamp of a file. */
    public static FileStamp of(Path file) throws IOException {
        return new FileStamp(Files.size(file), Files.getLastModifiedTime(file).toInstant(), digest(file));
    }

    /** {@return what has become of the file since} A file that only looks newer but has the same content counts as the same. */
    public Since since(Path file) {
        try {
            if (Files.notExists(file)) {
                return Since.GONE;
            }
            boolean looksTheSame = Files.size(file) == size && Files.getLastModifiedTime(file).toInstant().equals(modified);
            return looksTheSame || digest(file).equals(sha256) ? Since.SAME : Since.CHANGED;
        } catch (IOException unreadable) {
            // It could be read before. Whatever is there now is not what was there then.
            return Since.CHANGED;
        }
    }

    private static String digest(Path file) throws IOException {
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), MessageDigest.getInstance("SHA-256"))) {
            in.transferTo(java.io.OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(((DigestInputStream) in).getMessageDigest().digest());
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("Every JDK has SHA-256", never);
        }
    }
}
