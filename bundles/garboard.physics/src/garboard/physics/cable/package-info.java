// SPDX-License-Identifier: EPL-2.0
/** Copper conductors: sizes, resistance, voltage drop, permitted current, overcurrent devices, grounding conductors, terminals. */
package garboard.physics.cable;
