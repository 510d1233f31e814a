// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import garboard.model.GarboardPackage.Literals;
import garboard.quantity.Length;

class EnteredTest {

    private final SiphonBreak siphonBreak = GarboardFactory.eINSTANCE.createSiphonBreak();

    @Test
    void aValueIsEntered() {
        assertThat(Entered.isEntered(siphonBreak, Literals.SIPHON_BREAK__BORE)).isFalse();
        siphonBreak.setBore(Length.valueOf("1 in"));
        assertThat(Entered.isEntered(siphonBreak, Literals.SIPHON_BREAK__BORE)).isTrue();
    }

    @Test
    void theFirstChoiceIsNot() {
        siphonBreak.setTellTaleVisible(Answer.UNANSWERED);
        assertThat(Entered.isEntered(siphonBreak, Literals.SIPHON_BREAK__TELL_TALE_VISIBLE)).isFalse();
        siphonBreak.setTellTaleVisible(Answer.NOT_APPLICABLE);
        assertThat(Entered.isEntered(siphonBreak, Literals.SIPHON_BREAK__TELL_TALE_VISIBLE)).isTrue();
    }

    @Test
    void aPartIsThereAndYetHoldsNothing() {
        siphonBreak.setVentSeat(GarboardFactory.eINSTANCE.createPoint());
        assertThat(Entered.isEntered(siphonBreak, Literals.SIPHON_BREAK__VENT_SEAT)).isTrue();
        assertThat(Entered.anythingIn(siphonBreak, Literals.SIPHON_BREAK__VENT_SEAT)).isFalse();
        assertThat(Entered.anythingIn(siphonBreak)).isFalse();
        siphonBreak.getVentSeat().setZ(Length.valueOf("450 mm"));
        assertThat(Entered.anythingIn(siphonBreak, Literals.SIPHON_BREAK__VENT_SEAT)).isTrue();
        assertThat(Entered.anythingIn(siphonBreak)).isTrue();
    }

    @Test
    void anIdIsNothingEntered() {
        RawWaterCircuit circuit = GarboardFactory.eINSTANCE.createRawWaterCircuit();
        WaterHoseRun hose = GarboardFactory.eINSTANCE.createWaterHoseRun();
        hose.setId("hose-1");
        circuit.getHoses().add(hose);
        assertThat(Entered.anythingIn(circuit)).isFalse();
        hose.setKind(WaterHoseKind.SOFT_WALL);
        assertThat(Entered.anythingIn(circuit)).isTrue();
    }
}
