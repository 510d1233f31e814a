// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__NO_LOAD_VOLTAGE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__RATED_VOLTAGE;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.quantity.Voltage;

/** A voltage that destroys appliances. */
final class NoLoadOvervoltage {

    private NoLoadOvervoltage() {
    }

    static Check<AcOutput> check() {
        return Check.check("AC-NO-LOAD-OVERVOLTAGE", AcOutput.class)
            .title("Voltage without load does not harm appliances")
            .why("More than a tenth too much burns lamps, chargers and the coils of contactors.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 10 % above the rated voltage")
            .needs(AC_OUTPUT__NO_LOAD_VOLTAGE, GENERATOR_SET__RATED_VOLTAGE)
            .holds(s -> Comparison.atMost(NoLoadVoltage.inWords(s.subject()), s.subject().getNoLoadVoltage(), Limit.of(most(s), "common practice: 10 %")))
            .remedy("Connect nothing; set the voltage regulator, or replace it")
            .build();
    }

    static Voltage most(Situation<?> s) {
        return Voltage.of(1.1 * s.set().getRatedVoltage().si());
    }
}
