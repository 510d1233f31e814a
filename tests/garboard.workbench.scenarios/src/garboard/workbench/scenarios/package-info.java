// SPDX-License-Identifier: EPL-2.0
/**
 * What a person does in the window, from the first page to the workbook, told once against {@link garboard.workbench.scenarios.Hand}: what a
 * hand and an eye can do. Which library moves the hand is the affair of the test bundles that run the scenarios.
 */
package garboard.workbench.scenarios;
