// SPDX-License-Identifier: EPL-2.0
/**
 * The engine alone: what a check is, how it is declared, how a record is held against a catalogue of them. No rule of any
 * practice stands here, no arithmetic, no user interface.
 */
package garboard.checks;
