// SPDX-License-Identifier: EPL-2.0
/** The alternating-current side: frequency and voltage of the set, performance classes, motors, load lists, protection and insulation. */
package garboard.physics.ac;
