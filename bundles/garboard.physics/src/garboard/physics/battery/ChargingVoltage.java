// SPDX-License-Identifier: EPL-2.0
package garboard.physics.battery;

import garboard.physics.Argument;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

/** Charging voltage with temperature compensation ({@link BatterySources#CHARGING_VOLTAGE}). */
public final class ChargingVoltage {

    private static final double COMPENSATION_V_PER_K = -0.003;
    private static final double REFERENCE_K = 298.15;

    private ChargingVoltage() {
    }

    /** n (Vcell - 0.003 V/K (t - 25 degC)). Valid for batteries from -20 to 50 degC; throws outside, where chargers stop compensating. */
    public static Voltage at(ChargeStage stage, int cells, Temperature battery) {
        double temperatureK = Argument.between("battery temperature", battery, 253.15, 323.15, "-20 to 50 degC");
        return Voltage.of(Argument.atLeastOne("cells", cells) * (stage.cellV + COMPENSATION_V_PER_K * (temperatureK - REFERENCE_K)));
    }
}
