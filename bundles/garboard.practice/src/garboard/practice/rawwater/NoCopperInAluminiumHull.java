// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__MATERIAL;
import static garboard.model.GarboardPackage.Literals.SEACOCK__MATERIAL;

import java.util.List;
import java.util.stream.Stream;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.FittingMaterial;
import garboard.model.RawWaterCircuit;
import garboard.practice.Sources;

/** No copper alloy touches the sea water of an aluminium hull. */
final class NoCopperInAluminiumHull {

    private NoCopperInAluminiumHull() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("RAWWATER-METAL-ALUMINIUM-HULL", RawWaterCircuit.class)
            .title("No copper alloy at an aluminium hull")
            .why("Copper alloys and aluminium in sea water make a battery; the hull around the fitting dissolves.")
            .basis(Sources.ISO_9093)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("neither bronze nor brass")
            .applies(RawWaterConditions.aluminiumHull())
            .needs(HULL_PICK_UP__MATERIAL, SEACOCK__MATERIAL)
            .holds(s -> {
                List<String> copper = Stream.of(copper("hull fitting", s.subject().getPickUp().getMaterial()),
                    copper("seacock", s.subject().getSeacock().getMaterial())).flatMap(List::stream).toList();
                return Comparison.holds(copper.isEmpty() ? "hull fitting and seacock are free of copper" : String.join("; ", copper),
                    copper.isEmpty());
            })
            .remedy("Fit reinforced plastic, aluminium or stainless steel made for aluminium hulls, insulated where metals differ")
            .build();
    }

    private static List<String> copper(String part, FittingMaterial material) {
        return switch (material) {
            case BRONZE -> List.of("the " + part + " is of bronze");
            case DZR_BRASS, BRASS -> List.of("the " + part + " is of brass");
            default -> List.of();
        };
    }
}
