// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.util.logging.ConsoleHandler;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;

import org.eclipse.core.runtime.ILog;

/** Takes what the bundles without a window log through the JDK into the log file of the platform. */
final class LogBridge extends Handler {

    private final ILog log = ILog.of(LogBridge.class);

    private LogBridge() {
    }

    /** Puts it in place of the console, where nobody looks while a window is open. */
    static void build() {
        Logger root = Logger.getLogger("");
        for (Handler handler : root.getHandlers()) {
            if (handler instanceof ConsoleHandler || handler instanceof LogBridge) {
                root.removeHandler(handler);
            }
        }
        root.addHandler(new LogBridge());
    }

    @Override
    public void publish(LogRecord entry) {
        if (entry.getLevel().intValue() < Level.INFO.intValue()) {
            return;
        }
        String text = entry.getLoggerName() + ": " + entry.getMessage();
        if (entry.getLevel().intValue() >= Level.SEVERE.intValue()) {
            log.error(text, entry.getThrown());
        } else if (entry.getLevel().intValue() >= Level.WARNING.intValue()) {
            log.warn(text, entry.getThrown());
        } else {
            log.info(text, entry.getThrown());
        }
    }

    @Override
    public void flush() {
        // The platform writes at once.
    }

    @Override
    public void close() {
        // Nothing is held.
    }
}
