// SPDX-License-Identifier: EPL-2.0
/** The named calculations of the trade, each as a small page, with values taken from the record and put into it. */
package garboard.workbench.calculators;
