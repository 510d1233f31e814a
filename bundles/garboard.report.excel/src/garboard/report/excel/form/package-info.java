// SPDX-License-Identifier: EPL-2.0
/**
 * The form as a workbook: written to be filled in on board, read back with every mistake named by sheet and cell. The record that a
 * form was made from travels in a hidden sheet, in plain cells, because office programs drop package parts that they do not know.
 */
package garboard.report.excel.form;
