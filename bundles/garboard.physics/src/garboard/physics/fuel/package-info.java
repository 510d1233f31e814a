// SPDX-License-Identifier: EPL-2.0
/** The engine as a burner of fuel, the fuel line, and the figures of the rules for it. */
package garboard.physics.fuel;
