// SPDX-License-Identifier: EPL-2.0
package garboard.trial.store;

import garboard.trial.log.Channel;

/**
 * A channel of a store.
 *
 * @param number   within the store
 * @param channel  what it is
 * @param readings how many there are
 * @param missing  how often its sender said that there was none
 * @param isSilent whether it has no readings, or nothing but the 0 that senders write when they do not measure
 */
public record StoredChannel(int number, Channel channel, long readings, long missing, boolean isSilent) {
}
