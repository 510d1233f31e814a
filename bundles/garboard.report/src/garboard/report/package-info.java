// SPDX-License-Identifier: EPL-2.0
/** Garboard Report. */
package garboard.report;
