// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.io.PrintStream;
import java.time.Duration;

import garboard.report.excel.Progress;

/** Says how far long work is; says nothing of work that is done before a person would wonder. */
final class ProgressLine implements Progress {

    private static final Duration PATIENCE = Duration.ofMillis(1500);

    private final PrintStream err;
    private long last = System.nanoTime();

    ProgressLine(PrintStream err) {
        this.err = err;
    }

    @Override
    public void at(String what, int done, int total) {
        long now = System.nanoTime();
        if (done < total && now - last > PATIENCE.toNanos()) {
            last = now;
            err.println("garboard: " + what + " (" + done + " of " + total + ")");
        }
    }

    @Override
    public boolean cancelled() {
        return Thread.currentThread().isInterrupted();
    }
}
