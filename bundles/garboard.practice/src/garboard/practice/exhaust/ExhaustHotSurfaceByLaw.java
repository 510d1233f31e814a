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

/** On a small passenger vessel hot exhaust parts are insulated where somebody may touch them. */
final class ExhaustHotSurfaceByLaw {

    /** The section prints 65.5 degC beside it. */
    private static final Temperature HOTTEST_BARE = Temperature.of(150, "degF");

    private ExhaustHotSurfaceByLaw() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-HOT-SURFACE-BY-LAW", ExhaustRun.class)
            .title("Hot exhaust parts of a passenger vessel are insulated")
            .why("In a seaway people hold on to what is nearest, and burn themselves.")
            .basis(Sources.cfr46("177.970"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("insulated or guarded where hotter than 65.5 degC (150 degF)")
            .applies(Conditions.smallPassengerVessel())
            .needs(EXHAUST_RUN__DRY_PARTS_LAGGED)
            .needsWhen(HotSurface::bare, path(EXHAUST_RUN__DRY_PART_SURFACE_TEMPERATURE))
            .holds(s -> HotSurface.compare(s, Limit.of(HOTTEST_BARE, "46 CFR 177.970: 150 degF")))
            .remedy("Lag or guard the hot parts")
            .build();
    }
}
