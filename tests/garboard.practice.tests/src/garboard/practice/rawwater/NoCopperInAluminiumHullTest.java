// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.FittingMaterial;
import garboard.model.HullMaterial;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class NoCopperInAluminiumHullTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void anAluminiumHull() {
        record.getVessel().setHullMaterial(HullMaterial.ALUMINIUM);
    }

    private Judged materials(FittingMaterial hullFitting, FittingMaterial seacock) {
        record.getRawWater().getPickUp().setMaterial(hullFitting);
        record.getRawWater().getSeacock().setMaterial(seacock);
        return judge(NoCopperInAluminiumHull.check(), record);
    }

    @Test
    void copperAlloysFallShort() {
        // ISO 9093:2020, extract: no copper alloy in the system of an aluminium hull
        materials(FittingMaterial.REINFORCED_PLASTIC, FittingMaterial.BRONZE).fallsShort();
        materials(FittingMaterial.DZR_BRASS, FittingMaterial.REINFORCED_PLASTIC).fallsShort();
        materials(FittingMaterial.BRASS, FittingMaterial.BRASS).fallsShort();
    }

    @Test
    void othersMeet() {
        materials(FittingMaterial.ALUMINIUM, FittingMaterial.REINFORCED_PLASTIC).meets();
        materials(FittingMaterial.STAINLESS_STEEL, FittingMaterial.ALUMINIUM).meets();
    }

    @Test
    void doesNotApplyToOtherHulls() {
        record.getVessel().setHullMaterial(HullMaterial.WOOD);
        materials(FittingMaterial.BRONZE, FittingMaterial.BRONZE).doesNotApply();
    }

    @Test
    void cannotTellWithoutTheMaterials() {
        judge(NoCopperInAluminiumHull.check(), record).cannotTell("rawWater.pickUp.material", "rawWater.seacock.material");
    }
}
