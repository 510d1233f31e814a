// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SHAFT_POWER;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW;
import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__MEASURED_FLOW;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.Cooling;
import garboard.model.MakerLimits;
import garboard.model.RawWaterCircuit;
import garboard.physics.rawwater.FlowPerPower;
import garboard.practice.Figures;
import garboard.practice.MakersLimit;
import garboard.practice.Sources;
import garboard.quantity.VolumeFlow;

/** The flow caught overboard reaches the maker's least flow, or the trade's figure for the power. */
final class FlowReachesWhatTheSetNeeds {

    private FlowReachesWhatTheSetNeeds() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("RAWWATER-FLOW-MEASURED", RawWaterCircuit.class)
            .title("Measured raw-water flow is enough for the set")
            .why("Too little water overheats the set and, before that, burns the exhaust hose behind the injection.")
            .basis(Sources.CHANDLER_GUIDE.othersSay("0.85 to 1.3 L/min for each kW of shaft power are seen with a heat exchanger"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at least 65 L/min for each 100 hp of shaft power with a heat exchanger, 36 L/min with direct cooling, or"
                + " the maker's least flow")
            .applies(RawWaterConditions.cooledBySeaWater())
            .uses(MAKER_LIMITS__MINIMUM_RAW_WATER_FLOW)
            .needsWhen(s -> makersFlow(s).isEmpty(), path(GENERATOR_SET__SHAFT_POWER))
            .needs(RAW_WATER_CIRCUIT__MEASURED_FLOW)
            .holds(s -> Comparison.atLeast("the pump delivers " + Figures.both(s.subject().getMeasuredFlow()) + "; wanted are "
                + Figures.both(limit(s).value()), s.subject().getMeasuredFlow(), limit(s)))
            .remedy("Clean strainer and intake, look at impeller and suction hose, then a larger bore or pump",
                s -> Optional.of(Remedy.of("Clean strainer and intake, look at impeller and suction hose, then measure again; "
                    + Figures.both(limit(s).value()) + " are wanted")))
            .build();
    }

    private static Limit<VolumeFlow> limit(Situation<RawWaterCircuit> s) {
        return MakersLimit.or(makersFlow(s), () -> {
            FlowPerPower rule = s.set().getCooling() == Cooling.DIRECT_RAW_WATER ? FlowPerPower.DIRECT : FlowPerPower.HEAT_EXCHANGER;
            return Limit.of(rule.least(s.set().getShaftPower()), "chandler's guide for each 100 hp");
        });
    }

    private static Optional<VolumeFlow> makersFlow(Situation<RawWaterCircuit> s) {
        return s.maker(MakerLimits::getMinimumRawWaterFlow);
    }
}
