// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AC_OUTPUT__LOADS;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__STARTING;

import java.util.Comparator;
import java.util.List;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.AcOutput;
import garboard.model.ElectricalLoad;
import garboard.model.LoadKind;
import garboard.model.MotorStarting;
import garboard.physics.ac.ConnectedLoad;
import garboard.physics.ac.DemandSum;
import garboard.practice.Figures;
import garboard.quantity.ApparentPower;

/** Chargers, electronics and drives stay a part of what the alternator gives. */
final class NonLinearLoad {

    private static final double SHARE = 0.6;

    private NonLinearLoad() {
    }

    static Check<AcOutput> check() {
        return FullLoad.apparentNeeded(LoadList.apparentNeeded(Check.check("AC-NONLINEAR", AcOutput.class)))
            .title("Chargers and electronics are a part of the set's load only")
            .why("They draw their current in peaks, which distort the voltage, heat the winding and upset the regulator.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("chargers, electronics and variable-speed drives, all running, at most 60 % of the set's apparent power")
            .uses(path(AC_OUTPUT__LOADS, ELECTRICAL_LOAD__STARTING))
            .holds(s -> Comparison.atMost("chargers, electronics and drives take " + Figures.both(most(s.subject())) + " of the set's "
                + Figures.both(FullLoad.apparent(s)), most(s.subject()),
                Limit.of(ApparentPower.of(SHARE * FullLoad.apparent(s).si()), "common practice: 60 %")))
            .remedy("Take chargers with power-factor correction, limit their current, or fit a larger alternator")
            .build();
    }

    /** Of the condition in which they take the most. */
    private static ApparentPower most(AcOutput output) {
        return LoadList.conditions(output).stream().map(NonLinearLoad::sum).max(Comparator.naturalOrder()).orElseThrow();
    }

    private static ApparentPower sum(LoadList.Running running) {
        List<ConnectedLoad> loads = running.loads().stream().filter(NonLinearLoad::isNonLinear).map(LoadList::running).toList();
        return loads.isEmpty() ? ApparentPower.of(0) : DemandSum.of(loads).apparent();
    }

    private static boolean isNonLinear(ElectricalLoad load) {
        return load.getKind() == LoadKind.CHARGER || load.getKind() == LoadKind.ELECTRONIC
            || load.getKind() == LoadKind.MOTOR && load.getStarting() == MotorStarting.VARIABLE_SPEED;
    }
}
