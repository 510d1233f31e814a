// SPDX-License-Identifier: EPL-2.0
/** Air: what the engine breathes, what carries the heat away, ducts and blowers, and the figures of the rules for them. */
package garboard.physics.air;
