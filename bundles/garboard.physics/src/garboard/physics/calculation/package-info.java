// SPDX-License-Identifier: EPL-2.0
/** The formulas as named calculations that take text and answer named results, for a person who asks for one. */
package garboard.physics.calculation;
