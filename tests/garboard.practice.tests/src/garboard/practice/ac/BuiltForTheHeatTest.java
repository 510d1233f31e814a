// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;
import garboard.quantity.Temperature;

class BuiltForTheHeatTest {

    private final CommissioningRecord record = Installation.empty();

    // 46 CFR 183.320(b), (d): 50 degC; 40 degC where the space stays at 40; else derated to 80 % with a plate that says so
    @ParameterizedTest
    @CsvSource({ "50 degC, 50 degC, UNANSWERED, MEETS", "122 degF, 50 degC, UNANSWERED, MEETS", "40 degC, 40 degC, UNANSWERED, MEETS",
        "104 degF, 104 degF, UNANSWERED, MEETS", "40 degC, 45 degC, YES, MEETS", "40 degC, 45 degC, NO, FALLS_SHORT",
        "45 degC, 45 degC, NO, FALLS_SHORT", "40 degC, 50 degC, NOT_APPLICABLE, FALLS_SHORT", "35 degC, 30 degC, YES, FALLS_SHORT" })
    void builtForItOrDerated(String builtFor, String space, Answer plate, Standing standing) {
        Board.passengers(record);
        record.getGeneratorSet().setDesignAmbient(Temperature.valueOf(builtFor));
        record.getVentilation().setDesignAmbient(Temperature.valueOf(space));
        record.getGeneratorSet().setPlateShowsDeratedPower(plate);
        judge(BuiltForTheHeat.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutInputs() {
        Board.passengers(record);
        judge(BuiltForTheHeat.check(), record).cannotTell("generatorSet.designAmbient");
        record.getGeneratorSet().setDesignAmbient(Temperature.of(40, "degC"));
        judge(BuiltForTheHeat.check(), record).cannotTell("ventilation.designAmbient");
        record.getVentilation().setDesignAmbient(Temperature.of(45, "degC"));
        judge(BuiltForTheHeat.check(), record).cannotTell("generatorSet.plateShowsDeratedPower");
    }

    @Test
    void doesNotApplyToOtherVessels() {
        record.getVessel().setService(VesselService.TOWING);
        judge(BuiltForTheHeat.check(), record).doesNotApply();
    }
}
