// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.io.IOException;
import java.net.URL;

import org.eclipse.osgi.service.datalocation.Location;

/**
 * The person's folder, open to several windows at once. The platform locks it for one process and refuses the second; here two windows may
 * well work on two records, and what they keep in the folder is made for that.
 */
record SharedLocation(Location location) implements Location {

    @Override
    public boolean lock() {
        return true;
    }

    @Override
    public void release() {
        // Nothing is held.
    }

    @Override
    public boolean isLocked() {
        return false;
    }

    @Override
    public boolean allowsDefault() {
        return location.allowsDefault();
    }

    @Override
    public URL getDefault() {
        return location.getDefault();
    }

    @Override
    public Location getParentLocation() {
        return location.getParentLocation();
    }

    @Override
    public URL getURL() {
        return location.getURL();
    }

    @Override
    public boolean isSet() {
        return location.isSet();
    }

    @Override
    public boolean isReadOnly() {
        return location.isReadOnly();
    }

    @Override
    @Deprecated
    public boolean setURL(URL value, boolean lock) {
        return location.setURL(value, false);
    }

    @Override
    public boolean set(URL value, boolean lock) throws IOException {
        return location.set(value, false);
    }

    @Override
    public boolean set(URL value, boolean lock, String lockFilePath) throws IOException {
        return location.set(value, false, lockFilePath);
    }

    @Override
    public Location createLocation(Location parent, URL defaultValue, boolean readonly) {
        return location.createLocation(parent, defaultValue, readonly);
    }

    @Override
    public URL getDataArea(String path) throws IOException {
        return location.getDataArea(path);
    }
}
