// SPDX-License-Identifier: EPL-2.0
package garboard.trial.store;

/**
 * Some readings of one channel in the order of the log, and where they lie in the file.
 *
 * @param channel  number of the channel
 * @param offset   of the first byte in the file
 * @param length   in bytes
 * @param count    of readings
 * @param firstNs  earliest time
 * @param lastNs   latest time
 * @param checksum CRC-32C of the bytes
 */
record Chunk(int channel, long offset, int length, int count, long firstNs, long lastNs, int checksum) {

    /** As many readings as one chunk holds: small enough for a buffer for each channel, large enough to pack well. */
    static final int MOST = 4096;

    boolean touches(long fromNs, long toNs) {
        return lastNs >= fromNs && firstNs < toNs;
    }
}
