// SPDX-License-Identifier: EPL-2.0
/**
 * Tables of readings with a mapping of columns: proposed ({@link garboard.trial.csv.CsvProposal}), settled by a person, remembered ({@link
 * garboard.trial.csv.CsvMappings}).
 */
package garboard.trial.csv;
