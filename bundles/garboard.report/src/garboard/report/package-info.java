// SPDX-License-Identifier: EPL-2.0
/**
 * The report on a commissioning record as plain, immutable values: sheets of paragraphs, tables, pictures and lines to sign. Nothing
 * here knows how a workbook is written; nothing here judges, it reads an {@link garboard.checks.Evaluation}.
 *
 * <p>{@link garboard.report.Reports} composes a report. There is one class for each sheet.
 */
package garboard.report;
