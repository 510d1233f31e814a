// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__DRY_PARTS_LAGGED;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__DRY_PART_SURFACE_TEMPERATURE;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.model.ExhaustRun;
import garboard.practice.Conditions;
import garboard.practice.Sources;
import garboard.quantity.Temperature;

/** Dry exhaust parts within reach are lagged, or not hot enough to burn at a touch. */
final class ExhaustSurfaceTemperature {

    private static final Temperature HOTTEST_BARE = Temperature.of(200, "degF");

    private ExhaustSurfaceTemperature() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-SURFACE-TEMPERATURE", ExhaustRun.class)
            .title("Dry exhaust parts are lagged or not hot to the touch")
            .why("Bare metal at gas temperature burns whoever touches it and sets fire to what lies near.")
            .basis(Sources.ABYC_P_1_FROM_MEMORY.othersSay("46 CFR 177.970 draws the line at 65.5 degC (150 degF) for small passenger vessels"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("lagged or jacketed, or at most 93 degC (200 degF) where it can be touched")
            .applies(Conditions.unlessLawForPassengers("177.970"))
            .applies(Conditions.asked(EXHAUST_RUN__DRY_PARTS_LAGGED))
            .needs(EXHAUST_RUN__DRY_PARTS_LAGGED)
            .needsWhen(HotSurface::bare, path(EXHAUST_RUN__DRY_PART_SURFACE_TEMPERATURE))
            .holds(s -> HotSurface.compare(s, Limit.of(HOTTEST_BARE, "ABYC P-1, from memory: 200 degF")))
            .remedy("Lag the dry parts")
            .build();
    }
}
