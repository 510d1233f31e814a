// SPDX-License-Identifier: EPL-2.0
/**
 * The verdicts of an open record as a person goes through them: which are listed and in what order, where each leads to, what an edit
 * changed in them, what applying a remedy did, who accepts a shortfall.
 */
package garboard.session.verdicts;
