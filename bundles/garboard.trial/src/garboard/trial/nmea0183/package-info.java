// SPDX-License-Identifier: EPL-2.0
/** NMEA 0183 sentences: engine speed, transducers, sea temperature, time and position. */
package garboard.trial.nmea0183;
