// SPDX-License-Identifier: EPL-2.0
package garboard.practice.mounting;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.practice.testing.Boat;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Angle;

class InstalledHeelTest {

    private Judged installed(CommissioningRecord record, String angle, String most) {
        record.getMounting().setInstalledAngleSide(Angle.valueOf(angle));
        record.getGeneratorSet().getMakerLimits().setMaximumHeel(Angle.valueOf(most));
        return judge(InstalledHeel.check(), record);
    }

    // derived: the two angles add; a sailing yacht heels, a motor craft rolls
    @ParameterizedTest
    @CsvSource({ "S, 30 deg, 0 deg, 30 deg, 30, MEETS", "S, 30 deg, 1 deg, 30 deg, 31, FALLS_SHORT", "M, 15 deg, -2 deg, 22.5 deg, 17, MEETS",
        "M, 15 deg, 8 deg, 22.5 deg, 23, FALLS_SHORT" })
    void theSetAndTheBoatTogether(String kind, String heelOrRoll, String angle, String most, double togetherDeg, Standing standing) {
        installed(Boat.of(kind, heelOrRoll, "0 deg"), angle, most).is(standing).measured(togetherDeg, "deg", 1e-9).limitFromMaker();
    }

    @ParameterizedTest
    @CsvSource({ "8 deg", "-8 deg" })
    void remedyLevelsTheSetAndKeepsItsSide(String angle) {
        CommissioningRecord record = Boat.motor("15 deg", "0 deg");
        installed(record, angle, "22.5 deg").fallsShort().afterRemedy().meets();
        assertThat(record.getMounting().getInstalledAngleSide().si() < 0).isEqualTo(angle.startsWith("-"));
    }

    @Test
    void noLevellingHelpsWhereTheBoatAloneIsBeyondTheLimit() {
        Judged judged = installed(Boat.sailing("30 deg", "0 deg"), "0 deg", "25 deg").fallsShort();
        assertThat(judged.verdict().remedy().orElseThrow().changes()).isEmpty();
        assertThat(judged.verdict().remedy().orElseThrow().text()).contains("boat alone");
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(InstalledHeel.check(), Installation.empty()).cannotTell("mounting.installedAngleSide", "vessel.hullKind",
            "generatorSet.makerLimits.maximumHeel");
        CommissioningRecord record = Boat.sailing("30 deg", "0 deg");
        record.getVessel().setDesignHeel(null);
        installed(record, "0 deg", "30 deg").cannotTell("vessel.designHeel");
    }
}
