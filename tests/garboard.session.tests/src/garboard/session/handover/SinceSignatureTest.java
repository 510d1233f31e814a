// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.checks.Standing;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;
import garboard.model.Signature;
import garboard.model.SignatureRole;
import garboard.quantity.Length;
import garboard.session.OpenRecord;
import garboard.session.handover.SinceSignature.What;

class SinceSignatureTest {

    private OpenRecord open;
    private Signature signature;

    @BeforeEach
    void sign() {
        open = Handed.example("sailing-yacht");
        signature = Signing.sign(open, new Signatory(SignatureRole.SURVEYOR, "Ida Specimen", "", "", Handed.TODAY, "They stand as they are."), "Statement", "Sign");
    }

    private SinceSignature since() {
        return SinceSignature.of(open, signature);
    }

    @Test
    void nothingDiffersOnTheDay() {
        assertThat(since().comparable()).isTrue();
        assertThat(since().differences()).isEmpty();
    }

    @Test
    void tellsAVerdictThatAnEditTurned() {
        open.edits().set(Handed.field(open, "rawWater.siphonBreak.ventSeat.z"), Length.valueOf("100 mm"), "");
        assertThat(since().changes()).anySatisfy(difference -> {
            assertThat(difference.key().check()).isEqualTo("SIPHON-HEIGHT-UPRIGHT");
            assertThat(difference.what()).isEqualTo(What.STANDING);
            assertThat(difference.then()).hasValueSatisfying(then -> assertThat(then.getStanding()).isEqualTo("meets"));
            assertThat(difference.standing()).isEqualTo(Standing.FALLS_SHORT);
        });
        assertThat(since().changes()).isSortedAccordingTo(Comparator.comparing(SinceSignature.Difference::standing));
        open.edits().undo();
        assertThat(since().differences()).isEmpty();
    }

    @Test
    void tellsAFigureThatChangedWithoutTurningTheVerdict() {
        open.edits().set(Handed.field(open, "fuelSupply.separator.clearanceBelow"), Length.valueOf("161 mm"), "");
        assertThat(since().changes()).singleElement().satisfies(difference -> {
            assertThat(difference.key().check()).isEqualTo("FUEL-SEPARATOR-CLEARANCE");
            assertThat(difference.what()).isEqualTo(What.FIGURES);
        });
    }

    @Test
    void tellsWhatCameAndWhatWent() {
        open.edits().remove(List.of(open.record().getRawWater().getHoses().getFirst()), "");
        String gone = "rawWater.hoses[hose-1]";
        assertThat(since().changes()).anySatisfy(difference -> {
            assertThat(difference.key().subject()).isEqualTo(gone);
            assertThat(difference.what()).isEqualTo(What.WENT);
        });
        open.edits().undo();
        open.edits().add(open.record(), List.of(GarboardPackage.Literals.COMMISSIONING_RECORD__RAW_WATER,
            GarboardPackage.Literals.RAW_WATER_CIRCUIT__HOSES), GarboardFactory.eINSTANCE.createWaterHoseRun(), "");
        assertThat(since().changes()).anySatisfy(difference -> assertThat(difference.what()).isEqualTo(What.CAME));
    }

    @Test
    void doesNotTellWhatNoCheckReads() {
        open.edits().set(Handed.field(open, "parties[party-1].contact"), "somewhere else", "");
        assertThat(since().differences()).isEmpty();
    }

    /** The siphon break was serviced on 2026-09-12 and is due again a year later: nothing was edited. */
    @Test
    void tellsApartWhatOnlyTimeDid() {
        Clock later = Clock.offset(Handed.CLOCK, Duration.ofDays(400));
        open = Handed.of(open.content(), later);
        assertThat(LocalDate.now(later)).isEqualTo(LocalDate.of(2027, 12, 30));
        assertThat(since().differences()).anySatisfy(difference -> {
            assertThat(difference.key().check()).isEqualTo("SIPHON-SERVICED");
            assertThat(difference.byTime()).isTrue();
        });
        assertThat(since().changes()).isEmpty();
    }

    @Test
    void cannotCompareASignatureWithoutVerdicts() {
        Signature typed = open.record().getSignatures().getFirst();
        assertThat(SinceSignature.of(open, typed).comparable()).isFalse();
        assertThat(SinceSignature.of(open, typed).differences()).isEmpty();
    }

    @Test
    void aRevisionGetsTheNextNumber() {
        OpenRecord cruiser = Handed.example("motor-cruiser");
        // The record has revisions 1 to 4.
        var revision = Revisions.record(cruiser, Handed.TODAY, " Otto Example ", " Loop raised ", "Revision");
        assertThat(revision.getNumber()).isEqualTo(5);
        assertThat(revision.getBy()).isEqualTo("Otto Example");
        assertThat(revision.getDescription()).isEqualTo("Loop raised");
        assertThat(revision.getDate()).isEqualTo(Handed.TODAY);
        cruiser.edits().undo();
        assertThat(cruiser.record().getRevisions()).hasSize(4);
        assertThat(Revisions.next(Handed.empty().record())).isEqualTo(1);
    }
}
