// SPDX-License-Identifier: EPL-2.0
/** The wet exhaust: gas, back pressure, lift, what drains back, and what cranking pumps in. */
package garboard.physics.exhaust;
