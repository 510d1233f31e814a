// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.practice.testing.Judged.judge;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import garboard.checks.Standing;
import garboard.model.CommissioningRecord;
import garboard.model.NeutralBond;
import garboard.practice.testing.Installation;

class NeutralGroundConductorTest {

    private final CommissioningRecord record = Installation.empty();

    private void conductors(String cable, String toGround) {
        record.getAcOutput().setNeutralBond(NeutralBond.AT_GENERATOR);
        record.getAcOutput().getOutputCable().setConductorSize(cable);
        record.getAcOutput().setNeutralGroundConductorSize(toGround);
    }

    // 46 CFR Table 111.05-31(b): generator cable 2 AWG -> 8 (8.4 mm2); 1/0 -> 6 (13.3); 3/0 -> 4 (21.2); 4/0 -> 2 (33.6)
    @ParameterizedTest
    @CsvSource({ "2 AWG, 8 AWG, 8.4, MEETS", "2 AWG, 10 AWG, 8.4, FALLS_SHORT", "1/0 AWG, 8 AWG, 13.3, FALLS_SHORT", "1/0 AWG, 6 AWG, 13.3, MEETS",
        "3/0 AWG, 4 AWG, 21.2, MEETS", "4/0 AWG, 4 AWG, 33.6, FALLS_SHORT", "4/0 AWG, 35 mm2, 33.6, MEETS", "16 mm2, 10 mm2, 8.4, MEETS",
        "16 mm2, 6 mm2, 8.4, FALLS_SHORT" })
    void byTheGeneratorCable(String cable, String toGround, double leastMm2, Standing standing) {
        conductors(cable, toGround);
        judge(NeutralGroundConductor.check(), record).is(standing).limit(leastMm2, "mm2", 0.05);
    }

    @ParameterizedTest
    @CsvSource({ "6 mm2, 10 mm2", "10 AWG, 8 AWG" })
    void remedyIsTheNextSizeOfTheSameKind(String toGround, String next) {
        conductors("16 mm2", toGround);
        judge(NeutralGroundConductor.check(), record).fallsShort().afterRemedy().meets();
        assertThat(record.getAcOutput().getNeutralGroundConductorSize()).isEqualTo(next);
    }

    @ParameterizedTest
    @CsvSource({ "16, 10 mm2", "16 mm2, thick" })
    void cannotTellWhatCannotBeRead(String cable, String toGround) {
        conductors(cable, toGround);
        judge(NeutralGroundConductor.check(), record).is(Standing.CANNOT_TELL);
    }

    @Test
    void cannotTellWithoutInputs() {
        judge(NeutralGroundConductor.check(), record).cannotTell("acOutput.neutralBond", "acOutput.neutralGroundConductorSize",
            "acOutput.outputCable.conductorSize");
    }

    @Test
    void doesNotApplyToUngroundedSystems() {
        record.getAcOutput().setNeutralBond(NeutralBond.NONE);
        judge(NeutralGroundConductor.check(), record).doesNotApply();
    }
}
