// SPDX-License-Identifier: EPL-2.0
/** What all logs have in common. */
package garboard.trial.log;
