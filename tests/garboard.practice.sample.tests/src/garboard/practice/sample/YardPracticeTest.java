// SPDX-License-Identifier: EPL-2.0
package garboard.practice.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;

import org.eclipse.core.runtime.RegistryFactory;
import org.junit.jupiter.api.Test;

import garboard.checks.Catalogue;
import garboard.checks.Evaluator;
import garboard.checks.Practice;
import garboard.checks.PracticeExtensions;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.model.FuelSeparator;
import garboard.model.GarboardFactory;
import garboard.model.WaterHoseRun;
import garboard.quantity.Length;

class YardPracticeTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    @Test
    void isFoundThroughTheExtensionPointWithoutBeingNamedAnywhere() {
        List<Practice> found = PracticeExtensions.practices(RegistryFactory.getRegistry());
        assertThat(found).extracting(Practice::id).contains("sample-yard");
    }

    @Test
    void findsASeparatorWithoutRoomBelowAndTheRemedyMakesItMeet() {
        CommissioningRecord record = record();
        FuelSeparator separator = record.getFuelSupply().getSeparator();
        separator.setClearanceBelow(Length.of(180, "mm"));
        Verdict short0 = verdict(record, "YARD-SEPARATOR-ROOM");
        assertThat(short0.standing()).isEqualTo(Standing.FALLS_SHORT);
        // 250 mm - 180 mm, house rule 1
        assertThat(short0.margin().orElseThrow().distance().in("mm")).isCloseTo(-70, org.assertj.core.api.Assertions.within(1e-9));
        short0.remedy().orElseThrow().changes().forEach(change -> change.target().eSet(change.feature(), change.value()));
        assertThat(verdict(record, "YARD-SEPARATOR-ROOM").standing()).isEqualTo(Standing.MEETS);
    }

    @Test
    void findsAHoseWithOneClamp() {
        CommissioningRecord record = record();
        WaterHoseRun hose = GarboardFactory.eINSTANCE.createWaterHoseRun();
        record.getRawWater().getHoses().add(hose);
        assertThat(verdict(record, "YARD-HOSE-CLAMPS").standing()).isEqualTo(Standing.CANNOT_TELL);
        hose.setClampsPerEnd(1);
        assertThat(verdict(record, "YARD-HOSE-CLAMPS").standing()).isEqualTo(Standing.FALLS_SHORT);
        hose.setClampsPerEnd(2);
        assertThat(verdict(record, "YARD-HOSE-CLAMPS").standing()).isEqualTo(Standing.MEETS);
    }

    private static Verdict verdict(CommissioningRecord record, String check) {
        return new Evaluator(Catalogue.of(new YardPractice())).evaluate(record, TODAY).verdicts().stream()
            .filter(one -> one.check().id().equals(check)).findFirst().orElseThrow();
    }

    private static CommissioningRecord record() {
        GarboardFactory make = GarboardFactory.eINSTANCE;
        CommissioningRecord record = make.createCommissioningRecord();
        record.setFuelSupply(make.createFuelSupply());
        record.getFuelSupply().setSeparator(make.createFuelSeparator());
        record.setRawWater(make.createRawWaterCircuit());
        return record;
    }
}
