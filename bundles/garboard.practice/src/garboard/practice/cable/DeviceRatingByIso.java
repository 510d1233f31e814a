// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__PROTECTION_RATING;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__PHASES;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.CableRun;
import garboard.practice.Sources;
import garboard.quantity.Current;

/** ISO 13297: the device is never rated above what the conductor may carry. */
final class DeviceRatingByIso {

    private DeviceRatingByIso() {
    }

    static Check<CableRun> check() {
        return Check.check("CABLE-DEVICE-RATING-ISO", CableRun.class)
            .among(run -> !CableRuns.isOutputCable(run))
            .title("Fuse or breaker is rated no higher than its metric conductor")
            .why("A fuse too large lets the conductor glow before it blows.")
            .basis(Sources.ISO_13297.othersSay("33 CFR 183.455(c): 150 % of Table 5; the permitted current used is that of ISO "
                + "10133 annex A, from memory"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at most the permitted current of ISO 10133 annex A")
            .applies(CableConditions.scopeOfIso13297())
            .needsWhen(CableConditions::alternates, path(GENERATOR_SET__PHASES))
            .applies(CableConditions.workingCircuit())
            .applies(CableConditions.deviceFitted())
            .applies(IsoAnnex.listed())
            .needs(CABLE_RUN__PROTECTION_RATING)
            .holds(s -> DeviceRating.compare(s.subject(), s.subject().getProtectionRating(), limit(s.subject())))
            .remedy("Fit a smaller device or lay a larger conductor", s -> DeviceRating.smaller(s, limit(s.subject())))
            .build();
    }

    private static Optional<Limit<Current>> limit(CableRun run) {
        return IsoAnnex.allowed(run, CableRuns.size(run)).map(allowed -> Limit.of(allowed, "ISO 13297 with ISO 10133 annex A, from memory"));
    }
}
