// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PERFORMANCE_CLASS;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ElectricalLoad;
import garboard.physics.ac.Alternator;
import garboard.physics.ac.ClassCriterion;
import garboard.physics.ac.SetTraits;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.practice.Sources;
import garboard.quantity.ApparentPower;
import garboard.quantity.Ratio;

/** The dip of each motor start stays within the limit of the set's performance class. */
final class MotorStartWithinClass {

    private MotorStartWithinClass() {
    }

    static Check<ElectricalLoad> check() {
        return MotorStartDip.check("AC-START-DIP")
            .title("Start of the motor dips the voltage within the set's class")
            .why("Lights flicker, electronics restart and other motors slow down each time it starts.")
            .basis(Sources.STANDBY_POWER_SYSTEMS.othersSay("15 %: Lloyd's Register naval rules 9-2-6.4, text read; 25 %: UFGS; the divider z / (1 + z) "
                + "with z = X'd S start / S rated is from memory"))
            .gravity(Gravity.DEFECT)
            .limit("G1 25 %, G2 20 %, G3 15 %; 20 % where the class is not entered; soft starters count with 3 times the running current")
            .applies(contactorsHold())
            .uses(GENERATOR_SET__PERFORMANCE_CLASS)
            .holds(s -> Comparison.atMost(MotorStartDip.inWords(s), MotorStartDip.of(s), limit(s)))
            .remedy("Start it softly or before the other loads, or fit a larger alternator", MotorStartWithinClass::remedy)
            .build();
    }

    private static Optional<Remedy> remedy(Situation<ElectricalLoad> s) {
        Ratio reactance = s.set().getTransientReactance();
        if (reactance == null) {
            return Optional.empty();
        }
        double part = Phases.of(s.subject(), s.set().getPhases()).partOfTheSet();
        ApparentPower start = new Alternator(ApparentPower.of(part * FullLoad.apparent(s).si()), reactance).largestStart(limit(s).value());
        return Optional.of(Remedy.of("Bring the start down to " + Figures.both(Rounding.down(start, 0.1, "kVA"))
            + " by a soft starter or star-delta, or start the motor before the other loads"));
    }

    private static Limit<Ratio> limit(Situation<ElectricalLoad> s) {
        var wanted = switch (s.set().getPerformanceClass()) {
            case G1 -> garboard.physics.ac.PerformanceClass.G1;
            case G3 -> garboard.physics.ac.PerformanceClass.G3;
            case G2, G4, NOT_ENTERED -> garboard.physics.ac.PerformanceClass.G2;
        };
        Ratio most = (Ratio) ClassCriterion.TRANSIENT_VOLTAGE_DROP.limit(wanted, SetTraits.ordinary()).orElseThrow();
        return Limit.of(most, "ISO 8528-5 class " + wanted + " as printed in a textbook of 2004");
    }

    private static Condition<ElectricalLoad> contactorsHold() {
        return MotorStartKeepsContactors.decided("starts that let no contactor drop", MotorStartKeepsContactors::holds,
            "the start lets contactors drop already");
    }
}
