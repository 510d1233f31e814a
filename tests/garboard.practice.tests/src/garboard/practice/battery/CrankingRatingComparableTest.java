// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import garboard.model.CommissioningRecord;
import garboard.model.CrankingRatingDefinition;
import garboard.model.MakerLimits;
import garboard.model.StartingBattery;
import garboard.quantity.Current;

class CrankingRatingComparableTest {

    private final CommissioningRecord record = Bench.flooded();
    private final StartingBattery battery = record.getStartingBattery();
    private final MakerLimits maker = record.getGeneratorSet().getMakerLimits();

    // SAE J537, EN 50342-1 and IEC 60095-1, as quoted
    @ParameterizedTest
    @EnumSource(names = "NOT_ENTERED", mode = EnumSource.Mode.EXCLUDE)
    void sameTestAsTheMakers(CrankingRatingDefinition asked) {
        maker.setMinimumBatteryCcA(Current.of(700, "A"));
        maker.setBatteryCrankingDefinition(asked);
        battery.setCrankingRatingDefinition(asked);
        judge(CrankingRatingComparable.check(), record).meets();
        battery.setCrankingRatingDefinition(asked == CrankingRatingDefinition.CA_AT_0DEGREES ? CrankingRatingDefinition.CCA_SAE_J537
            : CrankingRatingDefinition.CA_AT_0DEGREES);
        judge(CrankingRatingComparable.check(), record).fallsShort();
    }

    @Test
    void saeJ537WhereTheMakerIsSilent() {
        battery.setCrankingRatingDefinition(CrankingRatingDefinition.CCA_SAE_J537);
        judge(CrankingRatingComparable.check(), record).meets();
        battery.setCrankingRatingDefinition(CrankingRatingDefinition.EN_50342_1);
        judge(CrankingRatingComparable.check(), record).fallsShort();
    }

    @Test
    void cannotTellWithoutTheTests() {
        maker.setMinimumBatteryCcA(Current.of(700, "A"));
        judge(CrankingRatingComparable.check(), record).cannotTell("startingBattery.crankingRatingDefinition");
        battery.setCrankingRatingDefinition(CrankingRatingDefinition.CCA_SAE_J537);
        judge(CrankingRatingComparable.check(), record).cannotTell("generatorSet.makerLimits.batteryCrankingDefinition");
    }
}
