// SPDX-License-Identifier: EPL-2.0
/** Garboard Installation Practice. */
package garboard.practice;
