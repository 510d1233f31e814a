// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__VENT_HOSE_END_HEIGHT;
import static garboard.model.GarboardPackage.Literals.VESSEL__BEAM;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_HEEL;
import static garboard.model.GarboardPackage.Literals.VESSEL__DESIGN_ROLL;
import static garboard.model.GarboardPackage.Literals.VESSEL__HULL_KIND;
import static garboard.model.GarboardPackage.Literals.VESSEL__SINKAGE;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.SiphonBreak;
import garboard.model.Vessel;
import garboard.physics.geometry.AttitudeEnvelope;
import garboard.physics.geometry.BoatPoint;
import garboard.physics.geometry.HeeledHeight;
import garboard.physics.geometry.PlaceToBuild;
import garboard.practice.Conditions;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Angle;
import garboard.quantity.Length;

/**
 * The end of a vent hose led overboard stays out of the water when the boat heels. The record holds only its height, so it is reckoned at the
 * side of the hull, half the beam off the centreline, without trim.
 */
final class SiphonVentHoseEndHeight {

    private SiphonVentHoseEndHeight() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-VENT-HOSE-END-HEIGHT", SiphonBreak.class)
            .title("Overboard end of the vent hose stays out of the water")
            .why("Under water the end of the hose lets the sea into the top of the loop, where it should let in air.")
            .basis(Basis.derived("a vent whose end is under water lets in water and no air"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("above the water at design heel or roll, reckoned at the side of the hull")
            .applies(SiphonConditions.breakFitted())
            .applies(SiphonConditions.ventedOverboard())
            .needs(SIPHON_BREAK__VENT_HOSE_END_HEIGHT, VESSEL__BEAM, VESSEL__HULL_KIND)
            .needsWhen(DesignAttitude::heels, path(VESSEL__DESIGN_HEEL))
            .needsWhen(DesignAttitude::rolls, path(VESSEL__DESIGN_ROLL))
            .uses(VESSEL__SINKAGE)
            .holds(s -> {
                HeeledHeight.HeightAt lowest = HeeledHeight.lowest(end(s), envelope(s.vessel()));
                return Comparison.moreThan("at the side of the hull the end of the vent hose lies " + DesignAttitude.heightInWords(lowest.height())
                    + " at " + Figures.both(greatestHeel(s.vessel())) + " of heel", lowest.height(),
                    Limit.of(Length.of(0, "mm"), "the water itself"));
            })
            .remedy("Move the end of the vent hose higher, or into the cockpit", SiphonVentHoseEndHeight::raise)
            .build();
    }

    private static BoatPoint end(Situation<SiphonBreak> s) {
        return BoatPoint.atHeight(s.subject().getVentHoseEndHeight()).withStarboard(Length.of(s.vessel().getBeam().si() / 2));
    }

    private static Angle greatestHeel(Vessel vessel) {
        return Conditions.isSailing(vessel) ? vessel.getDesignHeel() : vessel.getDesignRoll();
    }

    private static AttitudeEnvelope envelope(Vessel vessel) {
        AttitudeEnvelope heel = AttitudeEnvelope.toHeel(greatestHeel(vessel));
        return vessel.getSinkage() == null ? heel : heel.withSinkage(Length.of(Math.max(0, vessel.getSinkage().si())));
    }

    private static Optional<Remedy> raise(Situation<SiphonBreak> s) {
        Length enough = Rounding.up(PlaceToBuild.leastHeight(end(s), envelope(s.vessel()), Length.of(1, "mm")), 10, "mm");
        return Optional.of(Remedy.of("Lead the vent hose into the cockpit, or end it " + Figures.both(enough) + " above the waterline")
            .setting(s.subject(), SIPHON_BREAK__VENT_HOSE_END_HEIGHT, enough));
    }
}
