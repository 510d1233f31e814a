// SPDX-License-Identifier: EPL-2.0
/** Signal K deltas, and the raw log of a server. */
package garboard.trial.signalk;
