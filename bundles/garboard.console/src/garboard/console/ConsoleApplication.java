// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** The headless application. */
public final class ConsoleApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        System.err.println("The console has no commands yet.");
        return 2;
    }

    @Override
    public void stop() {
        // The commands run on the calling thread and end by themselves.
    }
}
