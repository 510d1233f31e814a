// SPDX-License-Identifier: EPL-2.0
/**
 * Drawings made from a record with Java2D: elevations, runs, clearances. They show what is entered and say what is not; straight lines
 * join places whose true run is not known. Standings are told by the shape of a mark and by a word, never by colour alone.
 */
package garboard.report.drawing;
