// SPDX-License-Identifier: EPL-2.0
/**
 * Handing over: what still stands between a record and a signature, signing it and what changed since, revisions, the plan of the upkeep,
 * and a copy of the record from which the report is written while the person works on.
 */
package garboard.session.handover;
