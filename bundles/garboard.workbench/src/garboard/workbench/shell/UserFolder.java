// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.io.File;
import java.net.URL;
import java.nio.file.Path;

import org.eclipse.core.runtime.Platform;
import org.eclipse.osgi.service.datalocation.Location;

/** Where the program keeps what belongs to the person and to no record file: journals, the list of recent records. */
final class UserFolder {

    private UserFolder() {
    }

    /** {@return the folder} It need not exist yet. Without one from the launcher, a folder of the temporary files. */
    static Path find() {
        Location location = Platform.getInstanceLocation();
        URL url = location == null ? null : location.getURL();
        // Such a URL is not encoded: a blank in it is a blank, so it must not go through a URI.
        return url == null ? Path.of(System.getProperty("java.io.tmpdir"), "garboard-" + System.getProperty("user.name"))
            : new File(url.getPath()).toPath();
    }
}
