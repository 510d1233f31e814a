// SPDX-License-Identifier: EPL-2.0
/** Garboard Console. */
package garboard.console;
