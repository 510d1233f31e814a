// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__FILL_CLAMP_BAND_WIDTH;
import static garboard.model.GarboardPackage.Literals.FUEL_SUPPLY__FILL_HOSE_CLAMPS;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.FuelSupply;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** 33 CFR 183.564: two wide clamps on each end of the fill hose. */
final class FillHoseClampsByLaw {

    private static final Length BAND = Length.of(0.5, "in");

    private FillHoseClampsByLaw() {
    }

    static Check<FuelSupply> check() {
        return Check.check("FUEL-FILL-CLAMPS-183-564", FuelSupply.class)
            .title("Fill hose has two wide clamps on each end")
            .why("A fill hose that slips off pours the next filling into the boat.")
            .basis(Sources.cfr33("183.564").othersSay("a swaged sleeve takes the place of the clamps"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("2 adjacent metal clamps with a band of at least 1/2 in (12.7 mm) on each end, not held by a spring alone")
            .applies(FuelConditions.lawForGasoline())
            .needs(FUEL_SUPPLY__FILL_HOSE_CLAMPS, FUEL_SUPPLY__FILL_CLAMP_BAND_WIDTH)
            .holds(s -> {
                int count = s.subject().getFillHoseClamps();
                Length band = s.subject().getFillClampBandWidth();
                return count < 2 ? Comparison.holds("each end has " + (count == 1 ? "one clamp" : count + " clamps"), false)
                    : Comparison.atLeast("each end has " + count + " clamps with a band of " + Figures.both(band), band,
                        Limit.of(BAND, "33 CFR 183.564"));
            })
            .remedy("Fit two clamps with a band of 1/2 in on each end", s -> Optional.of(
                Remedy.of("Fit two clamps with a band of 1/2 in (12.7 mm) on each end")
                    .setting(s.subject(), FUEL_SUPPLY__FILL_HOSE_CLAMPS, Math.max(2, s.subject().getFillHoseClamps()))
                    .setting(s.subject(), FUEL_SUPPLY__FILL_CLAMP_BAND_WIDTH, BAND)))
            .build();
    }
}
