// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import java.util.Optional;
import java.util.stream.Stream;

import garboard.model.ElectricalLoad;
import garboard.physics.ac.AcPower;
import garboard.physics.ac.CodeLetter;
import garboard.physics.ac.MotorStart;
import garboard.quantity.ApparentPower;
import garboard.quantity.Ratio;

/** Apparent power that a motor of the load list draws while it starts. */
final class MotorStartPower {

    private MotorStartPower() {
    }

    static ApparentPower running(ElectricalLoad motor) {
        return AcPower.apparent(LoadList.input(motor), motor.getPowerFactor());
    }

    /** The code letter of the plate, where it is one; V has no upper end to reckon with. */
    static Optional<CodeLetter> letter(ElectricalLoad motor) {
        return motor.getCodeLetter() == null ? Optional.empty() : Stream.of(CodeLetter.values()).filter(letter -> letter != CodeLetter.V)
            .filter(letter -> letter.name().equalsIgnoreCase(motor.getCodeLetter().strip())).findFirst();
    }

    /** The locked-rotor current goes before the code letter; a soft starter keeps to its multiple of the running current where that is less. */
    static ApparentPower of(ElectricalLoad motor, boolean threePhase, Ratio softStart) {
        return switch (motor.getStarting()) {
            case STAR_DELTA -> MotorStart.starDelta(direct(motor, threePhase).orElseThrow());
            case SOFT_START -> {
                ApparentPower soft = MotorStart.softStarter(running(motor), softStart);
                yield direct(motor, threePhase).filter(direct -> direct.isLessThan(soft)).orElse(soft);
            }
            case DIRECT_ON_LINE, VARIABLE_SPEED, NOT_ENTERED -> direct(motor, threePhase).orElseThrow();
        };
    }

    private static Optional<ApparentPower> direct(ElectricalLoad motor, boolean threePhase) {
        if (motor.getLockedRotorCurrent() != null) {
            return Optional.of(MotorStart.lockedRotor(motor.getVoltage(), motor.getLockedRotorCurrent(),
                threePhase ? garboard.physics.ac.PhaseSystem.THREE_PHASE : garboard.physics.ac.PhaseSystem.SINGLE_PHASE));
        }
        return motor.getMotorHorsepower() == null ? Optional.empty()
            : letter(motor).flatMap(letter -> letter.highest(motor.getMotorHorsepower()));
    }
}
