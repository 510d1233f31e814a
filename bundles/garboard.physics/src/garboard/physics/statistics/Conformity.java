// SPDX-License-Identifier: EPL-2.0
package garboard.physics.statistics;

/** The four outcomes of a decision with a guard band ({@link MeasurementSources#GUARD_BAND}). */
public enum Conformity {
    /** Within the limit by the whole uncertainty. */
    PASS,
    /** Within the limit by less than the uncertainty. */
    CONDITIONAL_PASS,
    /** Beyond the limit by no more than the uncertainty. */
    CONDITIONAL_FAIL,
    /** Beyond the limit by more than the uncertainty. */
    FAIL;

    /** A limit that guards people is kept by a plain pass only. */
    public boolean keepsSafetyLimit() {
        return this == PASS;
    }
}
