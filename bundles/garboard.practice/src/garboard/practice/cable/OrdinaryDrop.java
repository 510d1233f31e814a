// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CRITICAL;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__SYSTEM_VOLTAGE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.Answer;
import garboard.model.CableRun;
import garboard.physics.cable.CableTask;
import garboard.physics.cable.ConductorResistance;
import garboard.physics.cable.DropAllowance;
import garboard.physics.cable.VoltageDrop;
import garboard.quantity.Length;
import garboard.quantity.Temperature;
import garboard.quantity.Voltage;

/** Voltage that an ordinary direct-current circuit may lose: 3 % where it counts, 10 % elsewhere. */
final class OrdinaryDrop {

    /** The temperature that the constant of ABYC E-11, 10.75 ohm circular mil per foot, stands for. */
    private static final Temperature COPPER = Temperature.of(85, "degF");

    private OrdinaryDrop() {
    }

    /** Everything that the computed and the measured drop have in common. */
    static Check.Builder<CableRun> check(String id) {
        return Check.check(id, CableRun.class)
            .among(CableRuns::below50V, CableRuns.decidingVoltage())
            .why("A pump runs slow, a stop solenoid does not pull and a controller resets when the cable takes the voltage that they need.")
            .gravity(Gravity.DEFECT)
            .limit("3 % of the nominal voltage for feeders, blowers, electronics and the set's own controls and fuel pump; 10 % "
                + "for what may run slow")
            .applies(CableConditions.workingCircuit())
            .needs(CABLE_RUN__SYSTEM_VOLTAGE)
            .needsWhen(s -> !CableRuns.isNeededByTheSet(s.subject()), path(CABLE_RUN__CRITICAL));
    }

    static Limit<Voltage> limit(CableRun run) {
        boolean critical = CableRuns.isNeededByTheSet(run) || run.getCritical() == Answer.YES;
        return Limit.of((critical ? DropAllowance.CRITICAL : DropAllowance.NON_CRITICAL).of(run.getSystemVoltage()),
            critical ? "ABYC E-11, 3 %" : "ABYC E-11, 10 %");
    }

    /** Out and back, in the size that is fitted. */
    static Voltage computed(CableRun run) {
        return VoltageDrop.roundTrip(run.getCurrent(),
            ConductorResistance.atTemperature(CableRuns.resistanceAt20(CableRuns.size(run), run), copper(run)), loop(run));
    }

    /** The run as a task for whoever looks for a larger conductor, at the worst of the accuracy of current and length. */
    static CableTask task(CableRun run) {
        return new CableTask(run.getCurrent(), loop(run), Voltage.of(limit(run).value().si() / (1 + uncertainShare(run))), copper(run));
    }

    /** First order: the drop is proportional to length and current. */
    static double uncertainShare(CableRun run) {
        return Math.hypot(run.getLength().accuracySi().orElse(0) / run.getLength().si(),
            run.getCurrent().accuracySi().orElse(0) / run.getCurrent().si());
    }

    /** The length is that of the run; the current goes out and comes back. */
    static Length loop(CableRun run) {
        return Length.of(2 * run.getLength().si());
    }

    static Temperature copper(CableRun run) {
        return run.getConductorTemperature() == null ? COPPER : run.getConductorTemperature();
    }
}
