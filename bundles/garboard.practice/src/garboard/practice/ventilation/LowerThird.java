// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.AIR_DUCT__MOUTH_HEIGHT;
import static garboard.model.GarboardPackage.Literals.VENTILATION__BILGE_WATER_HEIGHT;
import static garboard.model.GarboardPackage.Literals.VENTILATION__COMPARTMENT_HEIGHT;

import java.util.Comparator;
import java.util.Optional;

import garboard.checks.Comparison;
import garboard.checks.FeaturePath;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.model.AirDuct;
import garboard.model.DuctFunction;
import garboard.model.Ventilation;
import garboard.physics.air.Ventilation33Cfr183;
import garboard.practice.Figures;
import garboard.practice.Rounding;
import garboard.quantity.Length;

/** The place for a duct that draws vapour from the bilge: above bilge water, and in the lowest third of the compartment. */
final class LowerThird {

    private LowerThird() {
    }

    static FeaturePath[] inputs(DuctFunction function) {
        return new FeaturePath[] {path(VENTILATION__COMPARTMENT_HEIGHT), path(VENTILATION__BILGE_WATER_HEIGHT),
            Ducts.paths(function).then(AIR_DUCT__MOUTH_HEIGHT)};
    }

    /** Holds the duct that is worst placed against the limit that it is nearer to or beyond. */
    static Comparison compare(Ventilation ventilation, DuctFunction function, String origin) {
        AirDuct worst = Ducts.of(ventilation, function).stream().min(Comparator.comparingDouble(duct -> room(ventilation, duct)))
            .orElseThrow();
        Length mouth = worst.getMouthHeight();
        String found = Ducts.name(worst) + " begins " + Figures.both(mouth) + " above the bottom of the compartment";
        return overWater(ventilation, worst) < underThird(ventilation, worst)
            ? Comparison.moreThan(found, mouth, Limit.of(ventilation.getBilgeWaterHeight(), origin + ": above bilge water"))
            : Comparison.atMost(found, mouth, Limit.of(third(ventilation), origin + ": lowest third of the compartment"));
    }

    /** Puts each duct that is wrong halfway between water and a third of the height, where there is room. */
    static Optional<Remedy> remedy(Ventilation ventilation, DuctFunction function) {
        double middleM = (ventilation.getBilgeWaterHeight().si() + third(ventilation).si()) / 2;
        if (ventilation.getBilgeWaterHeight().si() >= third(ventilation).si()) {
            return Optional.empty();
        }
        Length place = Rounding.up(Length.of(middleM), 1, "mm");
        Remedy remedy = Remedy.of("Lead the duct to begin between " + Figures.both(ventilation.getBilgeWaterHeight()) + " and "
            + Figures.both(third(ventilation)) + " above the bottom of the compartment");
        for (AirDuct duct : Ducts.of(ventilation, function)) {
            if (overWater(ventilation, duct) <= 0 || underThird(ventilation, duct) < 0) {
                remedy = remedy.setting(duct, AIR_DUCT__MOUTH_HEIGHT, place);
            }
        }
        return Optional.of(remedy);
    }

    private static double room(Ventilation ventilation, AirDuct duct) {
        return Math.min(overWater(ventilation, duct), underThird(ventilation, duct));
    }

    private static double overWater(Ventilation ventilation, AirDuct duct) {
        return duct.getMouthHeight().si() - ventilation.getBilgeWaterHeight().si();
    }

    private static double underThird(Ventilation ventilation, AirDuct duct) {
        return third(ventilation).si() - duct.getMouthHeight().si();
    }

    private static Length third(Ventilation ventilation) {
        return Ventilation33Cfr183.highestPickUp(ventilation.getCompartmentHeight());
    }
}
