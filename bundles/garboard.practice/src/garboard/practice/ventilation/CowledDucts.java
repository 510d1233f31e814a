// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AIR_DUCT__MOUTH_HEIGHT;
import static garboard.model.GarboardPackage.Literals.AIR_DUCT__TERMINATES_OUTSIDE;
import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__FUEL;
import static garboard.model.GarboardPackage.Literals.VENTILATION__COMPARTMENT_HEIGHT;
import static garboard.model.GarboardPackage.Literals.VENTILATION__DUCTS;
import static garboard.model.GarboardPackage.Literals.VESSEL__GASOLINE_ENGINE_ABOARD;
import static garboard.model.GarboardPackage.Literals.VESSEL__SERVICE;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.model.AirDuct;
import garboard.model.Answer;
import garboard.model.DuctFunction;
import garboard.model.Ventilation;
import garboard.model.VesselService;
import garboard.practice.Conditions;
import garboard.practice.Sources;

/** 46 CFR 25.40-1: ducts with cowls on uninspected vessels with gasoline, which 33 CFR 183 does not reach. */
final class CowledDucts {

    private static final Set<VesselService> UNINSPECTED =
        EnumSet.of(VesselService.UNINSPECTED_COMMERCIAL, VesselService.FISHING, VesselService.TOWING);

    private CowledDucts() {
    }

    static Check<Ventilation> check() {
        return Check.check("VENT-COWLED-DUCTS-25-40", Ventilation.class)
            .title("Gasoline space has a duct in and a duct out (uninspected vessels)")
            .why("Vapour gathers in the bilge and is lit by the next start.")
            .basis(Sources.cfr46("25.40-1").othersSay("\"lower portion of the bilge\" is taken as the lowest third, as in 33 CFR 183.630"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("fuel of a flash point up to 43.3 degC (110 F): at least 2 ducts with cowls to the open air, one from the low bilge, one in to "
                + "the middle of the bilge or lower")
            .applies(Condition.<EObject>when("vessels with a gasoline engine").known(path(VESSEL__GASOLINE_ENGINE_ABOARD))
                .uses(path(GENERATOR_SET__FUEL)).test(Conditions::gasolineLawBinds, "no gasoline engine is aboard"))
            .applies(Condition.<EObject>when("uninspected vessels in commercial service").known(path(VESSEL__SERVICE))
                .test(s -> UNINSPECTED.contains(s.vessel().getService()), "33 CFR 183 or the rules for inspected vessels speak here"))
            .needs(path(VENTILATION__COMPARTMENT_HEIGHT), Ducts.function(), path(VENTILATION__DUCTS, AIR_DUCT__MOUTH_HEIGHT),
                path(VENTILATION__DUCTS, AIR_DUCT__TERMINATES_OUTSIDE))
            .holds(s -> compare(s.subject()))
            .remedy("Lead one duct from the bottom of the bilge and one to half its height, both to cowls in the open air")
            .build();
    }

    private static Comparison compare(Ventilation ventilation) {
        boolean in = Ducts.of(ventilation, DuctFunction.NATURAL_SUPPLY).stream().anyMatch(duct -> serves(duct, ventilation, 2));
        boolean out = Stream.concat(Ducts.of(ventilation, DuctFunction.NATURAL_EXHAUST).stream(),
            Ducts.of(ventilation, DuctFunction.BLOWER_INTAKE).stream()).anyMatch(duct -> serves(duct, ventilation, 3));
        String found = in ? out ? "one duct leads in low and one out from the low bilge" : "no duct leads from the low bilge to the open air"
            : out ? "no duct leads from the open air to half the height or lower" : "neither a duct in nor a duct out reaches low enough";
        return Comparison.holds(found, in && out);
    }

    /** Whether a duct ends in the open air and begins no higher than a part of the compartment's height. */
    private static boolean serves(AirDuct duct, Ventilation ventilation, int part) {
        return duct.getTerminatesOutside() == Answer.YES
            && duct.getMouthHeight().si() <= ventilation.getCompartmentHeight().si() / part * (1 + 1e-9);
    }
}
