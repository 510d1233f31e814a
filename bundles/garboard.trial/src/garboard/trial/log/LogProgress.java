// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

/** Is told how far reading has come, every 64 kB or so, and may stop it. */
@FunctionalInterface
public interface LogProgress {

    /** For those who do not want to know. */
    LogProgress NONE = bytes -> { };

    /**
     * So many bytes have been read.
     *
     * @throws java.util.concurrent.CancellationException to stop; it comes out of the reading
     */
    void read(long bytes);
}
