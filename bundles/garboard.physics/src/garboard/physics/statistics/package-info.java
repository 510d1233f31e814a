// SPDX-License-Identifier: EPL-2.0
/** What readings are worth: uncertainty, decisions with a guard band, steadiness, droop by regression. */
package garboard.physics.statistics;
