// SPDX-License-Identifier: EPL-2.0
/** Checks of the raw-water circuit: flow and temperature, suction, hull fitting and seacock, strainer, hoses, intake. */
package garboard.practice.rawwater;
