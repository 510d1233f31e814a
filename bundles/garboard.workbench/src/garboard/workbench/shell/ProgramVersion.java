// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import org.osgi.framework.Bundle;
import org.osgi.framework.Version;

/** The version of the program, as people say it. */
public final class ProgramVersion {

    private ProgramVersion() {
    }

    /** {@return the three numbers of a bundle's version} */
    public static String of(Bundle bundle) {
        Version version = bundle.getVersion();
        return version.getMajor() + "." + version.getMinor() + "." + version.getMicro();
    }
}
