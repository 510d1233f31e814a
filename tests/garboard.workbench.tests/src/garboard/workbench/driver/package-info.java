// SPDX-License-Identifier: EPL-2.0
/** Moves the hand of the scenarios with SWT's own events alone: for machines that have no library for it. */
package garboard.workbench.driver;
