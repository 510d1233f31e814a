// SPDX-License-Identifier: EPL-2.0
/** Garboard Trial. */
package garboard.trial;
