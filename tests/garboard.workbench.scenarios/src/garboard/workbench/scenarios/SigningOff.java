// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;

import garboard.model.Signature;
import garboard.model.io.RecordFile;

/** An installer signs with shortfalls that stand, having been told; the verdicts of the day are kept. */
public abstract class SigningOff extends Scenario {

    @Test
    void whatIsMissingIsToldAndTheSignatureKeepsTheVerdictsOfTheDay() throws Exception {
        Hand hand = open();
        hand.press("start.example.motor-cruiser");
        hand.await("the walk", () -> hand.canUse("walk.tree"));
        int before = signatures();
        hand.pick("walk.tree", "Sign-off");
        hand.await("what is still missing", () -> hand.sees("Siphon break"));
        hand.choose("signoff.role", "Installer");
        hand.type("signoff.name", "Made-up Installer");
        hand.type("signoff.place", "Made-up Harbour");
        hand.press("signoff.sign");
        hand.await("the reason why a set with shortfalls is not signed for just so", () -> hand.canUse("signoff.obstacle"));
        assertThat(signatures()).as("signatures of the example").isEqualTo(before);
        hand.type("signoff.words", "The owner knows what falls short; the set stays shut down until it is put right.");
        hand.press("signoff.sign");
        hand.await("the signature", () -> signatures() == before + 1);

        Path file = folder.resolve("signed.garboard");
        answers().nextFile(file);
        hand.menu("Record", "Save as");
        hand.await("the record on the disk", () -> Files.exists(file));
        Signature signature = RecordFile.open(file).record().getSignatures().getLast();
        assertThat(signature.getName()).isEqualTo("Made-up Installer");
        assertThat(signature.getStatement()).contains("stays shut down");
        assertThat(signature.getVerdicts()).anyMatch(verdict -> "falls short".equals(verdict.getStanding()));
    }

    private int signatures() {
        return window().<Integer>onWindow(() -> desk().open().orElseThrow().record().getSignatures().size());
    }
}
