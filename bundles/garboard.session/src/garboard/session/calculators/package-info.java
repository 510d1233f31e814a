// SPDX-License-Identifier: EPL-2.0
/**
 * The named calculations as small pages without a window: found by subject and by search, filled in letter by letter, answered at once, with
 * values taken from the record and put into it.
 */
package garboard.session.calculators;
