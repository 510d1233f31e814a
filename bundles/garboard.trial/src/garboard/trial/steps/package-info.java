// SPDX-License-Identifier: EPL-2.0
/**
 * From readings to the trial: steps and steady windows are found in the load and proposed ({@link garboard.trial.steps.StepDetector}), channels
 * are proposed for the fields of a reading ({@link garboard.trial.steps.AssignmentProposal}); a person confirms both, and
 * {@link garboard.trial.steps.TrialReadings} makes load steps for the record of it.
 */
package garboard.trial.steps;
