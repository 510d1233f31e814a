// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Display;
import org.osgi.service.log.LogEntry;
import org.osgi.service.log.LogLevel;
import org.osgi.service.log.LogListener;
import org.osgi.service.log.LogReaderService;

/**
 * Where every unexpected exception ends: in the log, and in one dialog. Those of the window's thread come from the display, those of other
 * threads from the virtual machine; what the platform catches itself, as in handlers, parts and jobs, it logs, and it is taken from there.
 */
final class Faults implements LogListener, Thread.UncaughtExceptionHandler, AutoCloseable {

    private static final String OURS = "garboard.";

    private final Display display;
    private final Optional<LogReaderService> log;
    private final Supplier<FaultDialog> dialog;
    private Optional<FaultDialog> shown = Optional.empty();
    private Optional<Throwable> latest = Optional.empty();

    /** @param dialog makes one to show */
    Faults(Display display, Optional<LogReaderService> log, Supplier<FaultDialog> dialog) {
        this.display = display;
        this.log = log;
        this.dialog = dialog;
        display.setRuntimeExceptionHandler(this::caught);
        display.setErrorHandler(this::caught);
        Thread.setDefaultUncaughtExceptionHandler(this);
        log.ifPresent(reader -> reader.addLogListener(this));
    }

    @Override
    public void close() {
        log.ifPresent(reader -> reader.removeLogListener(this));
    }

    @Override
    public void uncaughtException(Thread thread, Throwable thrown) {
        caught(thrown);
    }

    /** Logs an exception that nobody expected, and tells the person. On any thread. */
    void caught(Throwable thrown) {
        show(thrown);
        ILog.of(Faults.class).error("Unexpected " + thrown.getClass().getSimpleName(), thrown);
    }

    @Override
    public void logged(LogEntry entry) {
        Throwable thrown = entry.getException();
        if (entry.getLogLevel() == LogLevel.ERROR && thrown != null && isOurs(thrown)) {
            show(thrown);
        }
    }

    /** The platform also logs troubles that are none of a person's business; ours have a line of ours in their trace. */
    private static boolean isOurs(Throwable thrown) {
        return Arrays.stream(thrown.getStackTrace()).anyMatch(line -> line.getClassName().startsWith(OURS))
            || thrown.getCause() != null && thrown.getCause() != thrown && isOurs(thrown.getCause());
    }

    private void show(Throwable thrown) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> showNow(thrown));
        }
    }

    private void showNow(Throwable thrown) {
        if (latest.filter(one -> one == thrown || root(one) == root(thrown)).isPresent()) {
            return;
        }
        latest = Optional.of(thrown);
        if (shown.isPresent()) {
            shown.get().add(thrown);
            return;
        }
        FaultDialog one = dialog.get();
        shown = Optional.of(one);
        try {
            one.add(thrown);
            one.open();
        } finally {
            shown = Optional.empty();
        }
    }

    private static Throwable root(Throwable thrown) {
        return thrown.getCause() == null || thrown.getCause() == thrown ? thrown : root(thrown.getCause());
    }
}
