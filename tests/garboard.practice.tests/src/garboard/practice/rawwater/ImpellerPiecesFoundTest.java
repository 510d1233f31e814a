// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.practice.testing.Judged.judge;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.practice.testing.Installation;
import garboard.practice.testing.Judged;

class ImpellerPiecesFoundTest {

    private final CommissioningRecord record = Installation.empty();

    private Judged pieces(int missing, int found) {
        record.getRawWater().getPump().setImpellerPiecesMissing(missing);
        record.getRawWater().getPump().setImpellerPiecesFound(found);
        return judge(ImpellerPiecesFound.check(), record);
    }

    @Test
    void everyPieceHasToBeFound() {
        // trade press, quoted: lost pieces lie in the cooler inlet
        pieces(3, 2).fallsShort();
        pieces(3, 3).meets();
        pieces(0, 0).meets();
    }

    @Test
    void cannotTellWithoutTheCounts() {
        judge(ImpellerPiecesFound.check(), record).cannotTell("rawWater.pump.impellerPiecesMissing",
            "rawWater.pump.impellerPiecesFound");
    }
}
