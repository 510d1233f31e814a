// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

/** Practice of the set itself: its plate, its rating against its hours, its fuel, its label, its upkeep. */
