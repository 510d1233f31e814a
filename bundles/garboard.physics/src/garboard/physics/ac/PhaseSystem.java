// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

/** How the output is wired; the voltage beside it is that between lines, of a split-phase set the full 240 V. */
public enum PhaseSystem {
    SINGLE_PHASE(1), SPLIT_PHASE(1), THREE_PHASE(Math.sqrt(3));

    /** Apparent power over the product of line voltage and line current. */
    final double factor;

    PhaseSystem(double factor) {
        this.factor = factor;
    }
}
