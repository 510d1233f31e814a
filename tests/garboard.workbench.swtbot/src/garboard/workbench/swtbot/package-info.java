// SPDX-License-Identifier: EPL-2.0
/** Moves the hand of the scenarios with SWTBot. Built and run only with the Maven profile {@code swtbot}. */
package garboard.workbench.swtbot;
