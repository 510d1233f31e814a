// SPDX-License-Identifier: EPL-2.0
/**
 * Logs of CAN buses: lines to frames ({@link garboard.trial.nmea2000.CandumpLine}), frames to messages
 * ({@link garboard.trial.nmea2000.FastPackets}), messages to readings by the table {@code layouts.csv}. Text is read as bytes and
 * nothing is made for each frame, so that a million frames take less than a second.
 */
package garboard.trial.nmea2000;
