// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

/** Practice of alarms and safety: carbon monoxide, fuel vapour, the set's own alarms, fire, stop and labels. */
