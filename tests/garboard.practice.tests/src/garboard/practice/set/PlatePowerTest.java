// SPDX-License-Identifier: EPL-2.0
package garboard.practice.set;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.ApparentPower;
import garboard.quantity.Power;
import garboard.quantity.Ratio;

class PlatePowerTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged plate(String power, String apparent, String factor) {
        record.getGeneratorSet().setRatedPower(Power.valueOf(power));
        record.getGeneratorSet().setRatedApparentPower(ApparentPower.valueOf(apparent));
        record.getGeneratorSet().setRatedPowerFactor(Ratio.valueOf(factor));
        return judge(PlatePower.check(), record);
    }

    // P = S pf: 25 kVA at 0.8 are 20 kW; 3 % of rounding to each side
    @ParameterizedTest
    @CsvSource({ "20 kW, 25 kVA, 0.8, MEETS", "26.82 hp, 25 kVA, 0.8, MEETS", "20.6 kW, 25 kVA, 0.8, MEETS", "19.4 kW, 25 kVA, 80 %, MEETS",
        "20.7 kW, 25 kVA, 0.8, FALLS_SHORT", "19.3 kW, 25 kVA, 0.8, FALLS_SHORT", "25 kW, 25 kVA, 0.8, FALLS_SHORT" })
    void belongTogether(String power, String apparent, String factor, Standing standing) {
        plate(power, apparent, factor).is(standing);
    }

    @Test
    void cannotTellWithoutAllThree() {
        judge(PlatePower.check(), record).cannotTell("generatorSet.ratedPower", "generatorSet.ratedApparentPower", "generatorSet.ratedPowerFactor");
    }
}
