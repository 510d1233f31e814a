// SPDX-License-Identifier: EPL-2.0
import java.util.Map;
import org.eclipse.core.runtime.adaptor.EclipseStarter;

/**
 * Starts the OSGi framework from the class path and ends the JVM with the application's exit code.
 *
 * <p>The framework's own main method keeps the JVM alive instead, and the usual launcher loads the framework
 * through a class loader of its own, whose classes no cache of the JVM can hold; that costs a third of the
 * start-up time.
 */
final class Start {

    private Start() {
    }

    public static void main(String[] args) throws Exception {
        EclipseStarter.setInitialProperties(Map.of("eclipse.startTime", Long.toString(System.currentTimeMillis())));
        Object result = EclipseStarter.run(args, null);
        if (result instanceof Integer code) {
            System.exit(code);
        }
        System.err.println("The application did not run; why stands in the newest log of " + System.getProperty("osgi.configuration.area"));
        System.exit(70);
    }
}
