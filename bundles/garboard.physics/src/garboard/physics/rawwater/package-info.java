// SPDX-License-Identifier: EPL-2.0
/** Raw water: heat and flow, suction, ram, flooding, openings in the hull, and whether a siphon break is needed. */
package garboard.physics.rawwater;
