// SPDX-License-Identifier: EPL-2.0
/**
 * Drawings made from a record: elevations, runs, clearances. They show what is entered and say what is not; straight lines join places
 * whose true run is not known. Standings are told by the shape of a mark and by a word, never by colour alone.
 *
 * <p>On paper ({@code SideElevation} and the others) they are drawn with Java2D, in the attitudes designed for. In a window a
 * {@code LiveSheet} is laid out for the room there is and drawn on whatever {@code Board} the window has; it knows where on it what lies.
 */
package garboard.report.drawing;
