// SPDX-License-Identifier: EPL-2.0
/**
 * Typed quantities: an SI double inside, and beside it the number, unit and accuracy as the person gave them, so that 38 psi stays
 * 38 psi on paper. Gauge and absolute pressure, temperature and temperature difference, active, apparent and reactive power are
 * different types.
 *
 * <h2>What may be written</h2>
 * A number, a unit, and if known an accuracy: {@code 38 psi}, {@code 1 1/2 in}, {@code 12.74 V ±0.5 %}.
 * <ul>
 * <li>Numbers: {@code 12}, {@code 12.5}, {@code 12,5}, {@code .5}, {@code 1e-3}, {@code -3}, {@code 3/4}, {@code 1 1/2},
 * {@code 1-1/2}; lengths also {@code 5 ft 3 in} and {@code 5' 3 1/2"}. The Unicode minus is understood. There are no thousands
 * separators, and {@code 1,500} is refused because it has two readings.</li>
 * <li>Units: those of {@link garboard.quantity.Kind#units()}, in ASCII ({@code degC}, {@code mm2}, {@code uohm}, {@code mohm}) or with
 * the signs ({@code °C}, {@code mm²}, {@code µΩ}, {@code mΩ}). The exact symbol goes first, then the same letters in another case;
 * but {@code m} and {@code M} at the head of a symbol are milli and mega and never stand for each other. A space before the unit may
 * be left out. The unit itself may be left out for a {@link garboard.quantity.Ratio} only.</li>
 * <li>Accuracy: {@code ±0.5 psi} in a unit of the kind, or {@code ±2 %} of the reading; {@code +-} and {@code +/-} do for the sign.</li>
 * </ul>
 * What else is written is refused with a {@link garboard.quantity.QuantityFormatException}, one sentence that names the kind, what
 * was found and what would be right.
 *
 * <p>The text of a quantity reads back as an equal quantity with the same SI number, to the last bit. A computed quantity is written
 * in its SI unit with the shortest decimal that does so.
 *
 * <p>Units and conversions are those of JSR 385; the units the trade uses beside SI are built from their defined factors in one
 * place. No class here holds state; every object is immutable and may be shared between threads.
 */
package garboard.quantity;
