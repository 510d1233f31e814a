// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/** The program's version, as printed on reports. */
final class Version {

    private Version() {
    }

    /** The bundle's version; "development" outside a framework, as in a test on a plain class path. */
    static String ofProgram() {
        Bundle bundle = FrameworkUtil.getBundle(Version.class);
        // without the qualifier, which tells when it was built and crowds the foot of a page
        return bundle == null ? "development"
                : bundle.getVersion().getMajor() + "." + bundle.getVersion().getMinor() + "." + bundle.getVersion().getMicro();
    }
}
