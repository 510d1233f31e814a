// SPDX-License-Identifier: EPL-2.0
/** Checks of the wet exhaust: heights, falls and bores, muffler and drain-back, back pressure, hoses and clamps, heat, outlet, cranking. */
package garboard.practice.exhaust;
