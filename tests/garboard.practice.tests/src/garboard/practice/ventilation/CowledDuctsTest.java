// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.AirDuct;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.DuctFunction;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class CowledDuctsTest {

    private final CommissioningRecord record = Installation.empty();

    private void workboat() {
        record.getVessel().setService(VesselService.FISHING);
        record.getVessel().setGasolineEngineAboard(Answer.YES);
        record.getVentilation().setCompartmentHeight(Length.of(1.2));
    }

    private void duct(DuctFunction function, String mouth, Answer outside) {
        AirDuct duct = Compartments.addDuct(record, function);
        duct.setMouthHeight(Length.valueOf(mouth));
        duct.setTerminatesOutside(outside);
    }

    // 46 CFR 25.40-1: one from the low bilge, one in at least midway; 1.2 m high: 0.6 m, and 0.4 m for the lowest third of 33 CFR 183.630
    @ParameterizedTest
    @CsvSource({ "0.6 m, YES, NATURAL_EXHAUST, 0.4 m, YES, MEETS", "0.3 m, YES, BLOWER_INTAKE, 0.1 m, YES, MEETS",
        "0.61 m, YES, NATURAL_EXHAUST, 0.4 m, YES, FALLS_SHORT", "0.6 m, YES, NATURAL_EXHAUST, 0.41 m, YES, FALLS_SHORT",
        "0.6 m, NO, NATURAL_EXHAUST, 0.4 m, YES, FALLS_SHORT", "0.6 m, YES, NATURAL_EXHAUST, 0.4 m, NO, FALLS_SHORT" })
    void oneInAndOneOut(String in, Answer inOutside, DuctFunction exhaust, String out, Answer outOutside, Standing standing) {
        workboat();
        duct(DuctFunction.NATURAL_SUPPLY, in, inOutside);
        duct(exhaust, out, outOutside);
        judge(CowledDucts.check(), record).is(standing);
    }

    @Test
    void aSupplyAloneIsNotEnough() {
        workboat();
        duct(DuctFunction.NATURAL_SUPPLY, "0.3 m", Answer.YES);
        assertThat(judge(CowledDucts.check(), record).fallsShort().verdict().sentence()).contains("low bilge");
    }

    @Test
    void cannotTellWithoutInputs() {
        workboat();
        record.getVentilation().setCompartmentHeight(null);
        judge(CowledDucts.check(), record).cannotTell("ventilation.compartmentHeight", "ventilation.ducts.function", "ventilation.ducts.mouthHeight",
            "ventilation.ducts.terminatesOutside");
    }

    @Test
    void doesNotApplyToYachtsPassengerVesselsOrWithoutGasoline() {
        workboat();
        for (VesselService service : List.of(VesselService.RECREATIONAL, VesselService.SMALL_PASSENGER)) {
            record.getVessel().setService(service);
            judge(CowledDucts.check(), record).doesNotApply();
        }
        record.getVessel().setService(VesselService.TOWING);
        record.getVessel().setGasolineEngineAboard(Answer.NO);
        judge(CowledDucts.check(), record).doesNotApply();
    }
}
