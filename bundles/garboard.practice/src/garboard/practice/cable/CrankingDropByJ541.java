// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__CRANKING_CURRENT;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE;

import garboard.checks.Check;
import garboard.checks.Limit;
import garboard.checks.Situation;
import garboard.model.StartingBattery;
import garboard.practice.Sources;
import garboard.quantity.Resistance;
import garboard.quantity.Voltage;

/** The measured drop of the cranking circuit keeps SAE J541 for light and medium duty, or the maker's resistance. */
final class CrankingDropByJ541 {

    private CrankingDropByJ541() {
    }

    static Check<StartingBattery> check() {
        return CrankingDrop.check("CABLE-CRANKING-DROP")
            .title("Cranking circuit loses little voltage under the starter")
            .basis(Sources.SAE_J541.othersSay("0.5 V in all at 12 V (common practice)"))
            .limit("0.2 V at 12 V, 0.4 V at 24 V for each 100 A of cranking current; or the maker's resistance times that current")
            .applies(CrankingCircuit.listedVoltage())
            .needs(GENERATOR_SET__CRANKING_CURRENT)
            .uses(MAKER_LIMITS__MAXIMUM_CRANKING_CIRCUIT_RESISTANCE)
            .holds(s -> CrankingDrop.compare(s.subject(), limit(s)))
            .remedy("Measure cable by cable and joint by joint; clean and crimp the bad joint anew, or lay a larger cable")
            .build();
    }

    private static Limit<Voltage> limit(Situation<StartingBattery> s) {
        Limit<Resistance> resistance = CrankingResistanceLight.limit(s);
        return new Limit<>(Voltage.of(resistance.value().si() * s.set().getCrankingCurrent().si()), resistance.origin(), resistance.fromMaker());
    }
}
