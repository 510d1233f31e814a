// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import garboard.physics.Argument;
import garboard.physics.reference.Interpolation;
import garboard.physics.reference.ReferenceTable;
import garboard.quantity.Ratio;

/**
 * What a motor is asked to bear: deviations from its rated supply, signed shares ({@link AcSources#MOTOR_TOLERANCE}).
 *
 * @param voltage (U - U rated) / U rated
 * @param frequency (f - f rated) / f rated
 */
public record MotorSupply(Ratio voltage, Ratio frequency) {

    private static final double VOLTAGE_LIMIT = 0.10;
    private static final double FREQUENCY_LIMIT = 0.05;
    private static final double SUM_LIMIT = 0.10;
    /** Percentages that were typed or measured meet a limit exactly in decimals, not in binary. */
    private static final double ROUNDING = 1e-12;
    private static final Interpolation DERATING = ReferenceTable.load("motor-unbalance-derating.csv").interpolation("unbalance_pct", "factor");

    /** A supply exactly as rated. */
    public static MotorSupply rated() {
        return new MotorSupply(Ratio.of(0), Ratio.of(0));
    }

    public MotorSupply withVoltage(Ratio deviation) {
        return new MotorSupply(deviation, frequency);
    }

    public MotorSupply withFrequency(Ratio deviation) {
        return new MotorSupply(voltage, deviation);
    }

    /** Sum of the absolute values. */
    public Ratio combined() {
        return Ratio.of(Math.abs(voltage.si()) + Math.abs(frequency.si()));
    }

    /** Whether a motor runs on it: voltage within 10 %, frequency within 5 %, the sum within 10 %, limits included. */
    public boolean tolerated() {
        return Math.abs(voltage.si()) <= VOLTAGE_LIMIT + ROUNDING && Math.abs(frequency.si()) <= FREQUENCY_LIMIT + ROUNDING
                && combined().si() <= SUM_LIMIT + ROUNDING;
    }

    /** Share of its rated power that a motor may give at a voltage unbalance by NEMA ({@link AcSources#MOTOR_DERATING}); throws above 5 %. */
    public static Ratio deratingByUnbalance(Ratio unbalanceNema) {
        double share = Argument.between("voltage unbalance", unbalanceNema, 0, 0.05, "0 to 5 %; above that motors must not run");
        return Ratio.of(DERATING.at(share * 100));
    }
}
