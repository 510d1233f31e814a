// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.BowlKind;
import garboard.model.CommissioningRecord;
import garboard.model.FuelKind;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class SeparatorBowlTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged bowl(FuelKind fuel, BowlKind bowl) {
        record.getGeneratorSet().setFuel(fuel);
        record.getFuelSupply().getSeparator().setBowl(bowl);
        return judge(SeparatorBowl.check(), record);
    }

    @Test
    void gasolineTakesMetalOnly() {
        // Gerr: metal bowl for gasoline
        bowl(FuelKind.GASOLINE, BowlKind.METAL).meets();
        bowl(FuelKind.GASOLINE, BowlKind.CLEAR_WITH_HEAT_SHIELD).fallsShort();
        bowl(FuelKind.GASOLINE, BowlKind.CLEAR_WITHOUT_SHIELD).fallsShort().afterRemedy().meets();
    }

    @Test
    void dieselTakesAClearBowlWithHeatShield() {
        // Gerr: clear bowl only with a metal heat shield
        bowl(FuelKind.DIESEL, BowlKind.METAL).meets();
        bowl(FuelKind.DIESEL, BowlKind.CLEAR_WITH_HEAT_SHIELD).meets();
        bowl(FuelKind.DIESEL, BowlKind.CLEAR_WITHOUT_SHIELD).fallsShort();
    }

    @Test
    void cannotTellWithoutBowlAndFuel() {
        judge(SeparatorBowl.check(), record).cannotTell("fuelSupply.separator.bowl", "generatorSet.fuel");
    }
}
