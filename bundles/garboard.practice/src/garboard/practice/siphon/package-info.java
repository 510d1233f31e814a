// SPDX-License-Identifier: EPL-2.0
/** Checks of the siphon break: whether one is needed, how high it stands upright and heeled, its place, its vent, its upkeep. */
package garboard.practice.siphon;
