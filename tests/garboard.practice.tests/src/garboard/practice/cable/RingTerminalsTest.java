// SPDX-License-Identifier: EPL-2.0
package garboard.practice.cable;

import static garboard.model.GarboardPackage.Literals.CABLE_RUN__RING_TERMINALS;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.model.CableFunction;
import garboard.practice.testing.Question;

class RingTerminalsTest {

    @Test
    void answered() { // ABYC E-11 (quoted)
        Question.of(RingTerminals.check(), CABLE_RUN__RING_TERMINALS).at(record -> record.getStartingBattery().getCables().getFirst())
            .in(record -> {
                record.getAcOutput().setOutputCable(null);
                Wiring.add(record, CableFunction.OTHER_DC);
            })
            .wants(Answer.YES, "startingBattery.cables[0].ringTerminals");
    }
}
