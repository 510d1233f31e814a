// SPDX-License-Identifier: EPL-2.0
/** Checks of cables: cranking circuit, voltage drop, permitted current, overcurrent devices, support and terminals. */
package garboard.practice.cable;
