// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__OUTPUT_CABLE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CONDUCTOR_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__LENGTH;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__STRAND_CLASS;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.AcOutput;
import garboard.model.CableRun;
import garboard.model.PhaseSystem;
import garboard.physics.cable.ConductorSize;
import garboard.practice.Figures;
import garboard.practice.cable.CableRuns;
import garboard.practice.cable.OutputCable;
import garboard.quantity.Voltage;

/** What the output cable loses at full load, by its conductor and length. */
final class OutputDrop {

    private static final double SHARE = 0.03;

    private OutputDrop() {
    }

    static Check<AcOutput> check() {
        return FullLoad.needed(Check.check("AC-OUTPUT-DROP", AcOutput.class))
            .title("Output cable loses little voltage at full load")
            .why("Motors that get too little voltage draw more current, start badly and burn.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("at most 3 % of the set's voltage at full load, with the copper at 60 degC unless another temperature is entered")
            .applies(OutputCable.readableSize())
            .needs(path(AC_OUTPUT__OUTPUT_CABLE, CABLE_RUN__LENGTH))
            .needsWhen(s -> CableRuns.isMetric(s.subject().getOutputCable()), path(AC_OUTPUT__OUTPUT_CABLE, CABLE_RUN__STRAND_CLASS))
            .uses(path(AC_OUTPUT__OUTPUT_CABLE, CABLE_RUN__CONDUCTOR_TEMPERATURE))
            .holds(s -> {
                Voltage drop = drop(s, CableRuns.size(s.subject().getOutputCable()));
                return Comparison.atMost(Figures.both(FullLoad.current(s)) + " over " + Figures.both(s.subject().getOutputCable().getLength()) + " of "
                    + CableRuns.size(s.subject().getOutputCable()) + " lose " + Figures.both(drop), drop, limit(s));
            })
            .remedy("Lay a larger cable", s -> CableRuns.nextThatWillDo(s.subject().getOutputCable(),
                size -> !drop(s, size).isMoreThan(limit(s).value())).map(size -> CableRuns.replace(s.subject().getOutputCable(), size)))
            .build();
    }

    static Limit<Voltage> limit(Situation<AcOutput> s) {
        return Limit.of(Voltage.of(SHARE * s.set().getRatedVoltage().si()), "common practice: 3 %");
    }

    private static Voltage drop(Situation<AcOutput> s, ConductorSize size) {
        CableRun cable = s.subject().getOutputCable();
        return s.set().getPhases() == PhaseSystem.THREE_PHASE ? OutputCable.dropOfThreePhases(cable, size, FullLoad.current(s))
            : OutputCable.dropOutAndBack(cable, size, FullLoad.current(s));
    }
}
