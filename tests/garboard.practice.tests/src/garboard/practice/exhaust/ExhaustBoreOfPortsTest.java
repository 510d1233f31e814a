// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.practice.exhaust.ExhaustFixture.add;
import static garboard.practice.exhaust.ExhaustFixture.exhaust;
import static garboard.practice.exhaust.ExhaustFixture.liftMuffler;
import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustSection;
import garboard.practice.testing.Installation;
import garboard.quantity.Length;

class ExhaustBoreOfPortsTest {

    private static CommissioningRecord ports(String elbow, String inlet, String outlet) {
        CommissioningRecord record = liftMuffler();
        exhaust(record).getRiser().setElbowBore(Length.valueOf(elbow));
        exhaust(record).getMuffler().setInletBore(Length.valueOf(inlet));
        exhaust(record).getMuffler().setOutletBore(Length.valueOf(outlet));
        return record;
    }

    // common practice: never smaller than the port of elbow or muffler
    @ParameterizedTest
    @CsvSource({ "INJECTION_TO_MUFFLER, 50.8 mm, 50.8, MEETS", "INJECTION_TO_MUFFLER, 2 in, 50.8, MEETS",
            "INJECTION_TO_MUFFLER, 50 mm, 50.8, FALLS_SHORT",
            "MUFFLER_TO_CREST, 63.5 mm, 63.5, MEETS", "CREST_TO_OUTLET, 63 mm, 63.5, FALLS_SHORT" })
    void holdsEachPartAgainstItsPort(ExhaustSection section, String bore, double limit, Standing expected) {
        CommissioningRecord record = ports("45 mm", "50.8 mm", "63.5 mm");
        add(record, section, bore, "1 m");
        judge(ExhaustBoreOfPorts.check(), record).is(expected).limit(limit, "mm", 1e-9);
    }

    @Test
    void theElbowCountsWhereItIsTheWiderPort() {
        CommissioningRecord record = ports("76.2 mm", "63.5 mm", "63.5 mm");
        add(record, ExhaustSection.INJECTION_TO_MUFFLER, "63.5 mm", "1 m");
        judge(ExhaustBoreOfPorts.check(), record).fallsShort().limit(76.2, "mm", 1e-9).afterRemedy().meets();
    }

    @Test
    void theMakersBoreTakesThePlaceOfThePorts() {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.INJECTION_TO_MUFFLER, "38 mm", "1 m");
        record.getGeneratorSet().getMakerLimits().setMinimumExhaustBore(Length.valueOf("1 1/2 in"));
        judge(ExhaustBoreOfPorts.check(), record).fallsShort().limitFromMaker().afterRemedy().meets();
    }

    @Test
    void cannotTellWithoutBoreOrPorts() {
        CommissioningRecord record = Installation.empty();
        add(record, ExhaustSection.MUFFLER_TO_CREST);
        judge(ExhaustBoreOfPorts.check(), record).cannotTell("exhaust.sections[run-1].bore");
        exhaust(record).getSections().getFirst().setBore(Length.valueOf("2 in"));
        judge(ExhaustBoreOfPorts.check(), record).cannotTell("exhaust.muffler.outletBore");
        CommissioningRecord noInlet = ports("2 in", "2 in", "2 in");
        exhaust(noInlet).getMuffler().setInletBore(null);
        add(noInlet, ExhaustSection.INJECTION_TO_MUFFLER, "2 in", "1 m");
        judge(ExhaustBoreOfPorts.check(), noInlet).cannotTell("exhaust.muffler.inletBore");
    }
}
