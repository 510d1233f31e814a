// SPDX-License-Identifier: EPL-2.0
/** Garboard Example Records. */
package garboard.examples;
