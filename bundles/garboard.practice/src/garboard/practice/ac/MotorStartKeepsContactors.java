// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__CODE_LETTER;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__EFFICIENCY;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__MOTOR_HORSEPOWER;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__PHASE;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__POWER;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__POWER_FACTOR;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__STARTING;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__VOLTAGE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_APPARENT_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_POWER_FACTOR;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__TRANSIENT_REACTANCE;

import java.util.function.Predicate;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.ElectricalLoad;
import garboard.quantity.Ratio;

/** No motor start lets contactors drop out or the motor itself stall. */
final class MotorStartKeepsContactors {

    private static final Ratio MOST = Ratio.of(30, "%");

    private MotorStartKeepsContactors() {
    }

    static Check<ElectricalLoad> check() {
        return MotorStartDip.check("AC-START-STALL")
            .title("Start of the motor leaves enough voltage to run up")
            .why("Below 70 % contactors drop out and chatter, and the motor hums at standstill until it burns.")
            .basis(Basis.commonPractice().othersSay("the divider z / (1 + z) with z = X'd S start / S rated is from memory"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("a dip of at most 30 %; soft starters count with 3 times the running current")
            .holds(s -> Comparison.atMost(MotorStartDip.inWords(s), MotorStartDip.of(s), Limit.of(MOST, "common practice")))
            .remedy("Fit a soft starter or a drive, or a larger alternator")
            .build();
    }

    static boolean holds(Situation<ElectricalLoad> s) {
        return !MotorStartDip.of(s).isMoreThan(MOST);
    }

    /** A condition on the dip, which stands undecided, and so true, as long as the dip cannot be told. */
    static Condition<ElectricalLoad> decided(String when, Predicate<Situation<ElectricalLoad>> test, String reasonIfNot) {
        return Condition.<ElectricalLoad>when(when).known()
            .uses(path(ELECTRICAL_LOAD__LOCKED_ROTOR_CURRENT), path(ELECTRICAL_LOAD__CODE_LETTER), path(ELECTRICAL_LOAD__MOTOR_HORSEPOWER),
                path(ELECTRICAL_LOAD__VOLTAGE), path(ELECTRICAL_LOAD__POWER), path(ELECTRICAL_LOAD__POWER_FACTOR), path(ELECTRICAL_LOAD__EFFICIENCY),
                path(ELECTRICAL_LOAD__STARTING), path(ELECTRICAL_LOAD__PHASE), path(GENERATOR_SET__PHASES), path(GENERATOR_SET__RATED_APPARENT_POWER),
                path(GENERATOR_SET__RATED_POWER), path(GENERATOR_SET__RATED_POWER_FACTOR), path(GENERATOR_SET__TRANSIENT_REACTANCE))
            .test(s -> {
                try {
                    return test.test(new Situation<ElectricalLoad>(s.subject(), s.record(), s.today()));
                } catch (RuntimeException notKnown) {
                    return true;
                }
            }, reasonIfNot);
    }
}
