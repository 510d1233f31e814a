// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Replaces a file so that at any moment, also when the program or the machine stops, the old content stands there or the new one: a
 * new file beside it, forced to the disk, put in its place in one step, the folder forced to the disk.
 */
final class AtomicFile {

    private final FileSteps steps;

    AtomicFile(FileSteps steps) {
        this.steps = steps;
    }

    /**
     * @throws IOException when the new content is not in place; the old one then stands untouched
     */
    void replace(Path target, byte[] content) throws IOException {
        boolean exists = Files.exists(target);
        // through a symbolic link the file it leads to is replaced, not the link
        Path place = exists ? target.toRealPath() : target.toAbsolutePath();
        if (exists && !steps.mayReplace(place)) {
            throw new AccessDeniedException(place.toString());
        }
        Path fresh = steps.createIn(place.getParent());
        try {
            steps.write(fresh, content);
            if (exists) {
                steps.copyPermissions(place, fresh);
            }
            steps.force(fresh);
            steps.moveOver(fresh, place);
        } catch (IOException failed) {
            removed(fresh, failed);
            throw failed;
        }
        try {
            steps.forceFolder(place.getParent());
        } catch (IOException cannot) {
            // the file is whole and in place; only whether its name outlives a power cut is left to the system
        }
    }

    private void removed(Path fresh, IOException failed) {
        try {
            steps.delete(fresh);
        } catch (IOException alsoFailed) {
            failed.addSuppressed(alsoFailed);
        }
    }
}
