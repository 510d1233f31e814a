// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__MATERIAL;
import static garboard.model.GarboardPackage.Literals.SEACOCK__MATERIAL;
import static garboard.model.GarboardPackage.Literals.VESSEL__HULL_MATERIAL;

import java.util.List;
import java.util.stream.Stream;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Situation;
import garboard.model.FittingMaterial;
import garboard.model.HullMaterial;
import garboard.model.RawWaterCircuit;
import garboard.practice.Sources;

/** Hull fitting and seacock are of a material that sea water does not eat. */
final class MetalsResistSeaWater {

    private MetalsResistSeaWater() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("RAWWATER-METAL-CORROSION", RawWaterCircuit.class)
            .title("Hull fitting and seacock resist sea water")
            .why("Plain brass loses its zinc and breaks like chalk; iron rusts through from the inside.")
            .basis(Sources.ISO_9093.othersSay("that steel and aluminium do in a hull of the same is common practice"))
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("corrosion-resistant; brass only when it resists dezincification; steel and aluminium only in a hull of the same")
            .needs(HULL_PICK_UP__MATERIAL, SEACOCK__MATERIAL, VESSEL__HULL_MATERIAL)
            .holds(s -> {
                List<String> bad = Stream.of(bad("hull fitting", s.subject().getPickUp().getMaterial(), s),
                    bad("seacock", s.subject().getSeacock().getMaterial(), s)).flatMap(List::stream).toList();
                return Comparison.holds(bad.isEmpty() ? "hull fitting and seacock are of materials for sea water"
                    : String.join("; ", bad), bad.isEmpty());
            })
            .remedy("Replace by bronze, dezincification-resistant brass or reinforced plastic made for it")
            .build();
    }

    private static List<String> bad(String part, FittingMaterial material, Situation<RawWaterCircuit> s) {
        HullMaterial hull = s.vessel().getHullMaterial();
        return switch (material) {
            case BRASS -> List.of("the " + part + " is of plain brass");
            case CAST_IRON -> List.of("the " + part + " is of cast iron");
            case STEEL -> hull == HullMaterial.STEEL ? List.of() : List.of("the " + part + " is of steel in a hull that is not");
            case ALUMINIUM -> hull == HullMaterial.ALUMINIUM ? List.of()
                : List.of("the " + part + " is of aluminium in a hull that is not");
            default -> List.of();
        };
    }
}
