// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import garboard.model.CommissioningRecord;
import garboard.model.FittingMaterial;
import garboard.model.HullMaterial;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class MetalsResistSeaWaterTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void aPlasticHull() {
        record.getVessel().setHullMaterial(HullMaterial.FIBRE_REINFORCED_PLASTIC);
    }

    private Judged materials(FittingMaterial hullFitting, FittingMaterial seacock) {
        record.getRawWater().getPickUp().setMaterial(hullFitting);
        record.getRawWater().getSeacock().setMaterial(seacock);
        return judge(MetalsResistSeaWater.check(), record);
    }

    @ParameterizedTest
    @EnumSource(names = {"BRASS", "CAST_IRON", "STEEL", "ALUMINIUM"})
    void whatSeaWaterEatsFallsShort(FittingMaterial material) {
        // ISO 9093:2020, extract: corrosion-resistant, brass only when it resists dezincification
        materials(FittingMaterial.BRONZE, material).fallsShort();
        materials(material, FittingMaterial.BRONZE).fallsShort();
    }

    @ParameterizedTest
    @EnumSource(names = {"BRONZE", "DZR_BRASS", "STAINLESS_STEEL", "REINFORCED_PLASTIC"})
    void whatResistsItMeets(FittingMaterial material) {
        materials(material, material).meets();
    }

    @Test
    void hullsOwnMetalMeets() {
        record.getVessel().setHullMaterial(HullMaterial.STEEL);
        materials(FittingMaterial.STEEL, FittingMaterial.BRONZE).meets();
        record.getVessel().setHullMaterial(HullMaterial.ALUMINIUM);
        materials(FittingMaterial.ALUMINIUM, FittingMaterial.ALUMINIUM).meets();
    }

    @Test
    void cannotTellWithoutTheMaterials() {
        judge(MetalsResistSeaWater.check(), record).cannotTell("rawWater.pickUp.material", "rawWater.seacock.material");
    }
}
