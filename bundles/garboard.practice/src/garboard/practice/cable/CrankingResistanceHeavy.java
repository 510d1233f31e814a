// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;



import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.checks.SteppingBack;
import garboard.model.StartingBattery;
import garboard.physics.cable.StarterDuty;
import garboard.practice.Sources;
import garboard.quantity.Resistance;

/** Advice for hard starts: the cranking cables keep the resistance of SAE J541 for heavy duty. */
final class CrankingResistanceHeavy {

    private CrankingResistanceHeavy() {
    }

    static Check<StartingBattery> check() {
        return CrankingResistance.check("CABLE-CRANKING-RESISTANCE-HEAVY")
            .title("Cranking cables would do for heavy duty")
            .basis(Sources.SAE_J541.othersSay("twice as much for light and medium duty"))
            .gravity(Gravity.ADVICE)
            .limit("1.0 mohm at 12 V, 1.7 mohm at 24 to 32 V (0.1 V and 0.17 V for each 100 A), posts to starter and back with joints")
            .applies(CrankingCircuit.makerNamesNoResistance())
            .applies(SteppingBack.where(CrankingResistanceLight.check()))
            .holds(s -> CrankingResistance.compare(s, limit(s)))
            .remedy("Lay larger cranking cables or shorten them", s -> CrankingCircuit.of(s.subject()).keeping(limit(s).value()))
            .build();
    }

    private static Limit<Resistance> limit(Situation<StartingBattery> s) {
        StarterDuty duty = CrankingCircuit.startsOn12V(s.set()) ? StarterDuty.HEAVY_12_V : StarterDuty.HEAVY_24_V;
        return Limit.of(duty.allowedResistance(), "SAE J541, heavy duty");
    }
}
