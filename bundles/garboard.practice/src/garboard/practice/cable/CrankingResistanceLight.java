// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.MakerLimits;
import garboard.model.StartingBattery;
import garboard.physics.cable.StarterDuty;
import garboard.practice.Sources;
import garboard.quantity.Resistance;

/** The cranking cables keep the resistance of SAE J541 for light and medium duty, or the maker's. */
final class CrankingResistanceLight {

    private CrankingResistanceLight() {
    }

    static Check<StartingBattery> check() {
        return CrankingResistance.check("CABLE-CRANKING-RESISTANCE")
            .title("Cranking cables have a low enough resistance")
            .basis(Sources.SAE_J541.othersSay("half of it for heavy duty; 0.5 V in all at 12 V (common practice)"))
            .gravity(Gravity.DEFECT)
            .limit("2.0 mohm at 12 V, 4.0 mohm at 24 V (0.2 V and 0.4 V for each 100 A), posts to starter and back with joints; or the maker's")
            .uses(MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE)
            .holds(s -> CrankingResistance.compare(s, limit(s)))
            .remedy("Lay larger cranking cables or shorten them", s -> CrankingCircuit.of(s.subject()).keeping(limit(s).value()))
            .build();
    }

    /** The maker's resistance, else that of SAE J541 for light and medium duty. */
    static Limit<Resistance> limit(Situation<StartingBattery> s) {
        StarterDuty duty = CrankingCircuit.startsOn12V(s.set()) ? StarterDuty.LIGHT_12_V : StarterDuty.LIGHT_24_V;
        return Limit.makerOr(s.maker(MakerLimits::getMaximumCrankingCircuitResistance), duty.allowedResistance(), "SAE J541, "
            + "light and medium duty");
    }
}
