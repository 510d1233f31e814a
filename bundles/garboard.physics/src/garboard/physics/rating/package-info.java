// SPDX-License-Identifier: EPL-2.0
/** What is left of a rating: heat, height, hot compartments, averages over the day, overload. */
package garboard.physics.rating;
