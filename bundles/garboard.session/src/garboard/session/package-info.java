// SPDX-License-Identifier: EPL-2.0
/**
 * An open record while a person works on it, without a window: what changed and how to take it back, the verdicts as they stand now, the
 * journal that survives a crash, the stops of the walk through the installation. Everything here is used on one thread (the window's),
 * except where it says otherwise.
 */
package garboard.session;
