// SPDX-License-Identifier: EPL-2.0
/** Checks of the starting battery: charge, cranking, cold, bank, charging, place and holding down. */
package garboard.practice.battery;
