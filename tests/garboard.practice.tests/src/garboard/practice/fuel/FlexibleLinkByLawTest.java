// SPDX-License-Identifier: EPL-2.0
package garboard.practice.fuel;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.FuelLineFunction;
import garboard.model.FuelLineKind;
import garboard.model.FuelLineRun;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;
import garboard.quantity.Length;

class FlexibleLinkByLawTest {

    private final CommissioningRecord record = Installation.empty();
    private final FuelLineRun line = FuelLines.add(record, FuelLineFunction.TANK_TO_ENGINE);

    @BeforeEach
    void aMetalLineUnderTheLaw() {
        FuelLines.underGasolineLaw(record);
        line.setKind(FuelLineKind.COPPER_TUBE);
    }

    private Judged link(Answer flexible, String clip) {
        record.getFuelSupply().setFlexibleLastLink(flexible);
        record.getFuelSupply().setRigidLineSupportDistance(Length.valueOf(clip));
        return judge(FlexibleLinkByLaw.check(), record);
    }

    @Test
    void clipWithinFourInches() {
        // 33 CFR 183.562: strap at 4 in pass, at 5 in fail
        link(Answer.YES, "4 in").meets();
        link(Answer.YES, "101.6 mm").meets();
        link(Answer.YES, "5 in").fallsShort().limit(4, "in", 1e-9).afterRemedy().meets();
    }

    @Test
    void rigidToTheEngineFallsShort() {
        link(Answer.NO, "2 in").fallsShort().afterRemedy().meets();
    }

    @Test
    void doesNotApplyToHoseOrADieselBoat() {
        line.setKind(FuelLineKind.HOSE_A1);
        link(Answer.NO, "9 in").doesNotApply();
        line.setKind(FuelLineKind.COPPER_TUBE);
        FuelLines.outsideGasolineLaw(record);
        link(Answer.NO, "9 in").doesNotApply();
    }

    @Test
    void cannotTellWithoutLinkAndClip() {
        judge(FlexibleLinkByLaw.check(), record).cannotTell("fuelSupply.flexibleLastLink", "fuelSupply.rigidLineSupportDistance");
    }
}
