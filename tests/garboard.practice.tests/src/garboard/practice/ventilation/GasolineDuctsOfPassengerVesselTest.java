// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ventilation;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.DuctFunction;
import garboard.model.FuelKind;
import garboard.model.VesselService;
import garboard.practice.testing.Installation;

class GasolineDuctsOfPassengerVesselTest {

    private final CommissioningRecord record = Installation.empty();

    @BeforeEach
    void passengers() {
        Compartments.gasoline(record, "300 ft3");
        record.getVessel().setService(VesselService.SMALL_PASSENGER);
    }

    // 46 CFR 182.460(a): two and two
    @ParameterizedTest
    @CsvSource({ "2, 2, 0, MEETS", "2, 1, 1, MEETS", "3, 0, 2, MEETS", "1, 2, 0, FALLS_SHORT", "2, 1, 0, FALLS_SHORT", "2, 0, 1, FALLS_SHORT" })
    void twoInAndTwoOut(int supply, int exhaust, int blower, Standing standing) {
        for (int i = 0; i < supply; i++) {
            Compartments.addDuct(record, DuctFunction.NATURAL_SUPPLY);
        }
        for (int i = 0; i < exhaust; i++) {
            Compartments.addDuct(record, DuctFunction.NATURAL_EXHAUST);
        }
        for (int i = 0; i < blower; i++) {
            Compartments.addDuct(record, DuctFunction.BLOWER_INTAKE);
        }
        judge(GasolineDuctsOfPassengerVessel.check(), record).is(standing);
    }

    @Test
    void cannotTellWithoutDucts() {
        judge(GasolineDuctsOfPassengerVessel.check(), record).cannotTell("ventilation.ducts.function");
    }

    @Test
    void doesNotApplyToDieselOrOtherVessels() {
        record.getGeneratorSet().setFuel(FuelKind.DIESEL);
        judge(GasolineDuctsOfPassengerVessel.check(), record).doesNotApply();
        record.getGeneratorSet().setFuel(FuelKind.GASOLINE);
        record.getVessel().setService(VesselService.RECREATIONAL);
        judge(GasolineDuctsOfPassengerVessel.check(), record).doesNotApply();
    }
}
