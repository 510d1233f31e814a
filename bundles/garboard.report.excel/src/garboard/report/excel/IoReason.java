// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Says in words why a file cannot be read or written. */
final class IoReason {

    private IoReason() {
    }

    static String of(IOException failed) {
        return switch (failed) {
            case NoSuchFileException missing -> "there is no such file or folder";
            case AccessDeniedException denied -> "access is denied";
            case FileSystemException other when other.getReason() != null -> other.getReason();
            default -> failed.getMessage() == null ? failed.getClass().getSimpleName() : failed.getMessage();
        };
    }
}
