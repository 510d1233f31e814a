// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.WATER_PUMP__IMPELLER_PIECES_FOUND;
import static garboard.model.GarboardPackage.Literals.WATER_PUMP__IMPELLER_PIECES_MISSING;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.WaterPump;
import garboard.practice.Sources;

/** Every piece that broke off an impeller has been found. */
final class ImpellerPiecesFound {

    private ImpellerPiecesFound() {
    }

    static Check<WaterPump> check() {
        return Check.check("RAWWATER-IMPELLER-PIECES", WaterPump.class)
            .title("All lost pieces of the impeller are found")
            .why("A piece that stays in the line lies before the heat exchanger and chokes it when the set works hard.")
            .basis(Sources.TRADE_PRESS)
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("as many pieces found as are missing")
            .needs(WATER_PUMP__IMPELLER_PIECES_MISSING, WATER_PUMP__IMPELLER_PIECES_FOUND)
            .holds(s -> {
                int missing = s.subject().getImpellerPiecesMissing();
                int found = s.subject().getImpellerPiecesFound();
                return Comparison.holds(missing == 0 ? "the impeller is whole" : "of " + missing + " missing pieces "
                    + found + " are found",
                    found >= missing);
            })
            .remedy("Look in pump outlet, hose, cooler inlet, siphon loop and injection ring until every piece is there")
            .build();
    }
}
