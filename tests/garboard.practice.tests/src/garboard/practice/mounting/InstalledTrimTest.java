// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Boat;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Angle;

class InstalledTrimTest {

    private Judged installed(String angle, String trim, String most) {
        CommissioningRecord record = Boat.motor("15 deg", trim);
        record.getMounting().setInstalledAngleFore(Angle.valueOf(angle));
        record.getGeneratorSet().getMakerLimits().setMaximumTrim(Angle.valueOf(most));
        return judge(InstalledTrim.check(), record);
    }

    // derived: the two angles add
    @ParameterizedTest
    @CsvSource({ "2 deg, 3 deg, 10 deg, 5, MEETS", "-8 deg, 3 deg, 10 deg, 11, FALLS_SHORT", "7 deg, 3 deg, 10 deg, 10, MEETS",
        "0 deg, 3 deg, 2 deg, 3, FALLS_SHORT" })
    void theSetAndTheBoatTogether(String angle, String trim, String most, double togetherDeg, Standing standing) {
        installed(angle, trim, most).is(standing).measured(togetherDeg, "deg", 1e-9).limitFromMaker();
    }

    @Test
    void remedyLevelsTheSet() {
        installed("-8 deg", "3 deg", "10 deg").fallsShort().afterRemedy().meets();
    }

    @Test
    void isBorderlineWithinTheAccuracyOfTheInclinometer() {
        installed("7 deg ±0.5 deg", "3 deg", "10 deg").is(Standing.BORDERLINE);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(InstalledTrim.check(), Installation.empty()).cannotTell("mounting.installedAngleFore", "vessel.designTrim",
            "generatorSet.makerLimits.maximumTrim");
    }
}
