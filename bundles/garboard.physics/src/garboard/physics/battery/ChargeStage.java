// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

/** Stages of charging a lead-acid battery with their voltage per cell at 25 degC ({@link BatterySources#CHARGING_VOLTAGE}). */
public enum ChargeStage {
    /** Absorption or boost. */
    ABSORPTION(2.40),
    /** Float of vented cells. */
    FLOAT_VENTED(2.23),
    /** Float of valve-regulated cells. */
    FLOAT_VALVE_REGULATED(2.27);

    final double cellV;

    ChargeStage(double cellV) {
        this.cellV = cellV;
    }
}
