// SPDX-License-Identifier: EPL-2.0
/**
 * What all physics shares: where a figure comes from, and what happens when an argument makes no sense. Formulas are pure functions over
 * typed quantities; inside they reckon in SI units, named in the variable. No formula extrapolates in silence: outside its range it throws
 * {@link garboard.physics.OutOfRangeException}.
 */
package garboard.physics;
