// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__MEASURED_BACK_PRESSURE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__ASPIRATION;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_BACK_PRESSURE;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ExhaustRun;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.GaugePressure;

/** The back pressure that was measured is one that the engine bears. */
final class ExhaustBackPressure {

    private ExhaustBackPressure() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-BACK-PRESSURE", ExhaustRun.class)
            .title("Measured back pressure is within the limit")
            .why("Back pressure costs power, overheats the exhaust valves and pushes gas and water into the cylinders.")
            .basis(Sources.GERR.othersSay(BackPressureLimit.OTHER_FIGURES))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit(BackPressureLimit.IN_WORDS)
            .needs(EXHAUST_RUN__MEASURED_BACK_PRESSURE)
            .uses(MAKER_LIMITS__MAXIMUM_BACK_PRESSURE)
            .needsWhen(BackPressureLimit::makerIsSilent, path(GENERATOR_SET__ASPIRATION))
            .holds(s -> Comparison.atMost("the back pressure was measured as " + Figures.both(measured(s)), measured(s), BackPressureLimit.of(s)))
            .remedy("Larger bore, fewer bends, a lower lift, or a gas and water separator", s -> Optional.of(Remedy.of(
                "Bring the back pressure down to " + Figures.both(BackPressureLimit.of(s).value())
                    + ": look for a blocked elbow or collapsed hose first, then larger bore, fewer bends, a lower lift or a separator")))
            .build();
    }

    private static GaugePressure measured(Situation<ExhaustRun> s) {
        return s.subject().getMeasuredBackPressure();
    }
}
