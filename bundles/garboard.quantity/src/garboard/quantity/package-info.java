// SPDX-License-Identifier: EPL-2.0
/**
 * Typed quantities: an SI double inside, and beside it the number and unit as the person gave them.
 */
package garboard.quantity;
