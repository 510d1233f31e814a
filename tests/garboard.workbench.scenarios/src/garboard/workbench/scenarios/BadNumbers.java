// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;

import garboard.model.io.RecordFile;

/** What cannot be read is told in words, kept as it was typed, never taken for a value, and there again when the record is opened. */
public abstract class BadNumbers extends Scenario {

    private static final String BEAM = "field:vessel.beam";

    @Test
    void whatIsNoNumberIsToldKeptAndFoundAgain() throws Exception {
        Hand hand = open();
        hand.press("start.new");
        hand.type(BEAM, "3.2 m");
        hand.type(BEAM, "3.2 parsecs");
        hand.await("the unit to be refused in words", () -> hand.sees("is no unit"));
        Path file = folder.resolve("bad.garboard");
        answers().nextFile(file);
        hand.press("garboard.tool.save");
        hand.await("the record on the disk", () -> Files.exists(file));
        assertThat(RecordFile.open(file).record().getVessel().getBeam()).as("a value that nobody entered").isNull();

        hand.menu("Record", "Close the record");
        hand.await("the start page", () -> hand.canUse("start.new"));
        answers().nextFile(file);
        hand.press("start.open");
        hand.await("the text as it was typed", () -> "3.2 parsecs".equals(hand.read(BEAM)));

        hand.type(BEAM, "10 ft 6 in");
        hand.await("the value in the other system", () -> hand.sees("3.2 m") || hand.sees("3200 mm"));
    }

    @Test
    void nonsenseOfEveryKindIsRefusedWhereItIsTypedAndTheWindowGoesOn() {
        Hand hand = open();
        hand.press("start.new");
        for (String nonsense : new String[] {"-", "1e999 m", "NaN m", "3,,2 m", "=1+1", "3.2 kg", "\u221e m", "m"}) {
            hand.type(BEAM, nonsense);
            hand.await("\"" + nonsense + "\" to stay", () -> nonsense.equals(hand.read(BEAM)));
        }
        hand.type(BEAM, "");
        hand.await("the field to be empty", () -> hand.read(BEAM).isEmpty());
    }
}
