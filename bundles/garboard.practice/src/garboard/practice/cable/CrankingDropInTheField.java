// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Limit;
import garboard.model.StartingBattery;
import garboard.quantity.Voltage;

/** The rule of thumb for 12 V: half a volt from the posts to the starter and back. */
final class CrankingDropInTheField {

    private static final Voltage MOST = Voltage.of(0.5, "V");

    private CrankingDropInTheField() {
    }

    static Check<StartingBattery> check() {
        return CrankingDrop.check("CABLE-CRANKING-DROP-12V")
            .title("12 V cranking circuit loses at most half a volt")
            .basis(Basis.commonPractice().othersSay("SAE J541: 0.2 V for each 100 A, 0.1 V for heavy duty"))
            .limit("at most 0.5 V in all at 12 V, where the maker names no resistance")
            .applies(CrankingCircuit.startsOn12V())
            .applies(CrankingCircuit.makerNamesNoResistance())
            .holds(s -> CrankingDrop.compare(s.subject(), Limit.of(MOST, "common practice")))
            .remedy("Measure cable by cable and joint by joint; clean and crimp the bad joint anew, or lay a larger cable")
            .build();
    }
}
