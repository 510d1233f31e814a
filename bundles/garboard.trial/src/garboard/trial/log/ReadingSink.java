// SPDX-License-Identifier: EPL-2.0
package garboard.trial.log;

/**
 * Takes the readings of a log as they come. Called from one thread; readings of one log come in the order of the file, and their times
 * may step back where those of the file do.
 */
public interface ReadingSink {

    /** Announces a channel. Numbers count from 0, and each is announced once, before its first reading; it may never get one. */
    void open(int number, Channel channel);

    /**
     * One reading.
     *
     * @param timeNs nanoseconds since 1970-01-01T00:00Z; since the start of the log where {@link LogTally#isTimeRelative()}
     * @param number of the channel
     * @param si     the value in the SI unit of the kind of quantity, always finite; a code where the measurand has no kind
     */
    void reading(long timeNs, int number, double si);
}
