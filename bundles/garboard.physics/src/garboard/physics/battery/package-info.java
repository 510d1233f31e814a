// SPDX-License-Identifier: EPL-2.0
/** Lead-acid starting batteries: state of charge, cranking, cold, banks, charging, hydrogen, holding down. */
package garboard.physics.battery;
