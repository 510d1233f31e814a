// SPDX-License-Identifier: EPL-2.0
/** Checks of the fuel supply: tank, lines and hoses, anti-siphon, separator, suction, pressures, endurance. */
package garboard.practice.fuel;
