// SPDX-License-Identifier: EPL-2.0
/** Readings kept in a file beside the record. */
package garboard.trial.store;
