// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.checks.Verdict;
import garboard.model.Signature;
import garboard.model.SignatureRole;
import garboard.model.StoredVerdict;
import garboard.model.io.RecordFile;
import garboard.session.OpenRecord;
import garboard.session.handover.Signatory.Obstacle;

class SigningTest {

    private OpenRecord open;

    @BeforeEach
    void openExample() {
        open = Handed.example("motor-cruiser");
    }

    private static Signatory signatory(SignatureRole role, String name, String words) {
        return new Signatory(role, name, " 000-EX ", "Port Imaginary", Handed.TODAY, words);
    }

    private Signature sign(SignatureRole role, String name) {
        return Signing.sign(open, signatory(role, name, "They stand, and will be mended."), "Statement", "Sign");
    }

    @Test
    void storesTheVerdictsOfTheDay() {
        Signature signature = sign(SignatureRole.SURVEYOR, "Ida Specimen");

        assertThat(signature.getVerdicts()).hasSameSizeAs(open.verdicts().evaluation().verdicts());
        StoredVerdict height = signature.getVerdicts().stream().filter(stored -> stored.getCheck().equals("SIPHON-HEIGHT-UPRIGHT")).findFirst().orElseThrow();
        // As the record has it: z="11.5 in ±0.25 in".
        assertThat(height.getSubject()).isEqualTo("rawWater.siphonBreak");
        assertThat(height.getStanding()).isEqualTo("falls short");
        assertThat(height.getMeasured()).isEqualTo("11.5 in ±0.25 in");
        assertThat(signature.getSignedOn()).isEqualTo(Handed.TODAY);
        assertThat(signature.getLicence()).isEqualTo("000-EX");
        assertThat(open.record().getSignatures()).last().isSameAs(signature);
    }

    @Test
    void keepsThemThroughTheFile() throws Exception {
        sign(SignatureRole.SURVEYOR, "Ida Specimen");
        RecordFile again = RecordFile.read(new ByteArrayInputStream(open.content().toBytes()), "again");
        assertThat(again.record().getSignatures().getLast().getVerdicts()).hasSameSizeAs(open.verdicts().evaluation().verdicts());
        assertThat(again.notes()).isEmpty();
    }

    @Test
    void signingChangesNoVerdict() {
        var before = open.verdicts().evaluation().verdicts().stream().map(Verdict::sentence).toList();
        sign(SignatureRole.SURVEYOR, "Ida Specimen");
        assertThat(open.verdicts().evaluation().verdicts()).extracting(Verdict::sentence).containsExactlyElementsOf(before);
    }

    @Test
    void fillsInTheLineThatWaitsForThePerson() {
        // The record waits for the owner, Wilma Sample, in its second line.
        Signature signature = sign(SignatureRole.OWNER, "wilma sample");
        assertThat(open.record().getSignatures()).hasSize(2).last().isSameAs(signature);
    }

    @Test
    void addsASignatureBesideTheLineOfSomebodyElse() {
        Signature signature = sign(SignatureRole.OWNER, "Somebody Else");
        assertThat(open.record().getSignatures()).hasSize(3).last().isSameAs(signature);
    }

    @Test
    void takesSeveralSignaturesOneAfterTheOther() {
        sign(SignatureRole.OWNER, "Wilma Sample");
        sign(SignatureRole.SURVEYOR, "Ida Specimen");
        sign(SignatureRole.WARRANTY_DESK, "Warranty desk");
        assertThat(open.record().getSignatures()).hasSize(4).allMatch(Signing::isSigned);
    }

    @Test
    void isOneStepToUndo() throws Exception {
        byte[] before = open.content().toBytes();
        sign(SignatureRole.OWNER, "Wilma Sample");
        assertThat(open.edits().undoLabel()).contains("Sign");
        open.edits().undo();
        assertThat(open.record().getSignatures()).hasSize(2);
        assertThat(Signing.isSigned(open.record().getSignatures().getLast())).isFalse();
        assertThat(withoutLedger(open.content().toBytes())).isEqualTo(withoutLedger(before));
    }

    /** Ids are never given twice, also not after an undo: the file remembers the highest that were given. */
    private static String withoutLedger(byte[] file) {
        return new String(file, StandardCharsets.UTF_8).replaceAll(" ids:last=\"[^\"]*\"", "").replaceAll(" xmlns:ids=\"[^\"]*\"", "");
    }

    @Test
    void takingBackIsUndoneWithItsVerdicts() {
        Signature signature = sign(SignatureRole.SURVEYOR, "Ida Specimen");
        int verdicts = signature.getVerdicts().size();
        Signing.takeBack(open, signature, "Take back");
        assertThat(open.record().getSignatures()).hasSize(2);
        open.edits().undo();
        assertThat(open.record().getSignatures()).hasSize(3);
        assertThat(open.record().getSignatures().getLast().getVerdicts()).hasSize(verdicts);
        assertThat(open.record().getSignatures().getLast().getId()).isEqualTo(signature.getId());
    }

    @Test
    void nobodySignsWhatABrokenCheckCouldNotJudge() {
        open = Handed.withBrokenCheck();
        var person = signatory(SignatureRole.OWNER, "Wilma Sample", "They stand, and will be mended.");
        assertThat(person.obstacles(SignOff.of(open, Handed.CLOCK))).containsExactly(Obstacle.CHECK_BROKE);
        assertThatThrownBy(() -> Signing.sign(open, person, "Statement", "Sign")).isInstanceOf(IllegalStateException.class);
        assertThat(open.record().getSignatures()).isEmpty();
    }

    @Test
    void asksForRoleAndName() {
        assertThat(signatory(SignatureRole.NOT_ENTERED, "  ", "They stand as they are.").obstacles(SignOff.of(open, Handed.CLOCK)))
            .containsExactly(Obstacle.NO_ROLE, Obstacle.NO_NAME);
    }

    @Test
    void wantsOpenPointsConfirmedInWords() {
        SignOff signOff = SignOff.of(open, Handed.CLOCK);
        assertThat(signatory(SignatureRole.OWNER, "Wilma Sample", "").obstacles(signOff)).containsExactly(Obstacle.NOT_CONFIRMED);
        assertThat(signatory(SignatureRole.OWNER, "Wilma Sample", "1234567890123 - ok").obstacles(signOff)).containsExactly(Obstacle.NOT_CONFIRMED);
        assertThat(signatory(SignatureRole.OWNER, "Wilma Sample", "Das bleibt so stehen.").obstacles(signOff)).isEmpty();
        assertThat(signatory(SignatureRole.OWNER, "Wilma Sample", "").obstacles(new SignOff(List.of()))).isEmpty();
    }

    @Test
    void findsThePartyThatSignsInARole() {
        assertThat(Signatory.party(open.record(), SignatureRole.INSTALLER)).hasValueSatisfying(party -> assertThat(party.getName()).isEqualTo("Otto Example"));
        assertThat(Signatory.party(open.record(), SignatureRole.SURVEYOR)).isEmpty();
        assertThat(Signatory.party(open.record(), SignatureRole.NOT_ENTERED)).isEmpty();
    }
}
