// SPDX-License-Identifier: EPL-2.0
/**
 * What survives a crash: while a record has unsaved changes, a copy of it lies in the user's folder, never older than a blink. A lock on
 * the folder of a running window tells the next one which copies were left behind.
 */
package garboard.session.journal;
