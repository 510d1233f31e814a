// SPDX-License-Identifier: EPL-2.0
/** Garboard Excel Workbook. */
package garboard.report.excel;
