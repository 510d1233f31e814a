// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__CURRENT;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__FUNCTION;
import static garboard.model.GarboardPackage.Literals.CABLE_RUN__PROTECTION_RATING;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.CableFunction;
import garboard.model.CableRun;
import garboard.physics.cable.OvercurrentDevice;
import garboard.practice.Conditions;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Current;

/** 33 CFR 183.460(b), from memory: the device in the output of a charging source that does not limit itself. */
final class ChargingDeviceByLaw {

    private ChargingDeviceByLaw() {
    }

    static Check<CableRun> check() {
        return Check.check("CABLE-CHARGING-DEVICE-33CFR", CableRun.class)
            .among(run -> !CableRuns.isOutputCable(run) && run.getFunction() == CableFunction.CHARGING, path(CABLE_RUN__FUNCTION))
            .title("Fuse of the charging lead suits its alternator (gasoline boats)")
            .why("An alternator that can be drawn on beyond its rating overheats before a larger fuse blows.")
            .basis(Sources.cfr33FromMemory("183.460(b)"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 120 % of the source's greatest rated current at 60 degC; one that limits itself is left out, which the record does not tell")
            .applies(Conditions.boatWithGasolineEngine())
            .applies(CableConditions.deviceFitted())
            .needs(CABLE_RUN__CURRENT, CABLE_RUN__PROTECTION_RATING)
            .holds(s -> Comparison.atMost("a device of " + Figures.both(s.subject().getProtectionRating()) + " sits in the lead of a source of "
                + Figures.both(s.subject().getCurrent()) + "; the rule leaves out a source that limits itself", s.subject().getProtectionRating(), limit(s)))
            .remedy("Fit a smaller device, or show by the maker's sheet that the source limits its own current", s -> {
                Current largest = DeviceRating.largest(limit(s).value());
                return Optional.of(Remedy.of("Show by the maker's sheet that the source limits its own current, or fit a device of at most "
                    + Figures.both(largest)).setting(s.subject(), CABLE_RUN__PROTECTION_RATING, largest));
            })
            .build();
    }

    private static Limit<Current> limit(Situation<CableRun> s) {
        return Limit.of(OvercurrentDevice.alternatorLimit(s.subject().getCurrent()), "33 CFR 183.460(b), from memory: 120 %");
    }
}
