// SPDX-License-Identifier: EPL-2.0
package garboard.quantity;

import java.util.List;

/**
 * One unit a kind accepts.
 *
 * @param symbol     the symbol as we write it, ASCII
 * @param spellings  other ways people write it
 * @param conversion to the SI unit of the kind and back
 */
record AcceptedUnit(String symbol, List<String> spellings, Conversion conversion) {
}
