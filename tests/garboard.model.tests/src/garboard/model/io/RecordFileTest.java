// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.InspectionAnswer;
import garboard.model.Photograph;
import garboard.model.Records;
import garboard.model.Vessel;
import garboard.model.WaterHoseRun;
import garboard.quantity.Length;

class RecordFileTest {

    private static final GarboardFactory MAKE = GarboardFactory.eINSTANCE;

    @TempDir
    Path folder;

    @Test
    void aNewRecordIsInTheCurrentFormatAndHoldsNothingElse() {
        CommissioningRecord record = RecordFile.create().record();

        assertThat(record.getFormatVersion()).isEqualTo("1.0");
        record.setFormatVersion(null);
        assertThat(Records.equal(record, MAKE.createCommissioningRecord())).isTrue();
    }

    @Test
    void whatWasSavedIsOpened() throws Exception {
        RecordFile file = RecordFile.create();
        Vessel vessel = MAKE.createVessel();
        vessel.setName("Two lines\n and \"quotes\"");
        vessel.setBeam(Length.valueOf("12 ft 4 in"));
        file.record().setVessel(vessel);
        Path boat = folder.resolve("boat.garboard");

        file.save(boat);
        RecordFile opened = RecordFile.open(boat);

        assertThat(Records.firstDifference(file.record(), opened.record())).isEmpty();
        assertThat(opened.record().getVessel().getBeam()).hasToString("12 ft 4 in");
        assertThat(opened.notes()).isEmpty();
        assertThat(Files.readAllBytes(boat)).isEqualTo(opened.toBytes()).isEqualTo(file.toBytes());
    }

    @Test
    void theFileIsXmiInUtf8WithLineFeeds() throws Exception {
        RecordFile file = RecordFile.create();
        file.record().setTitle("Größe");
        assertThat(RecordXml.saved(file)).isEqualTo("""
            <?xml version="1.0" encoding="UTF-8"?>
            <garboard:CommissioningRecord xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" xmlns:garboard="urn:garboard:record:1" \
            formatVersion="1.0" title="Größe"/>
            """);
    }

    @Test
    void inspectionAnswersKeepTheirPhotographs() throws Exception {
        RecordFile file = RecordFile.create();
        Photograph unseen = photograph("seen from aft");
        Photograph seen = photograph("seen from forward");
        file.record().getPhotographs().add(unseen);
        file.record().getPhotographs().add(seen);
        InspectionAnswer answer = MAKE.createInspectionAnswer();
        answer.setAnswer(Answer.YES);
        answer.getPhotographs().add(seen);
        file.record().getInspections().add(answer);

        CommissioningRecord read = RecordXml.read(file.toBytes()).record();

        assertThat(read.getInspections().getFirst().getPhotographs()).containsExactly(read.getPhotographs().get(1));
        assertThat(read.getPhotographs().get(1).getData()).containsExactly(1, 2, -3);
    }

    @Test
    void aReferenceToAPhotographThatWasTakenOutGoesWithIt() throws Exception {
        RecordFile file = RecordFile.create();
        Photograph photograph = photograph("deleted");
        file.record().getPhotographs().add(photograph);
        InspectionAnswer answer = MAKE.createInspectionAnswer();
        answer.getPhotographs().add(photograph);
        file.record().getInspections().add(answer);
        file.record().getPhotographs().remove(photograph);

        assertThat(RecordXml.saved(file)).doesNotContain("photo");
        assertThat(answer.getPhotographs()).isEmpty();
    }

    @Test
    void aRecordOfAnOlderVersionOpensAndIsSavedInTheCurrentOne() throws Exception {
        RecordFile file = RecordXml.read(RecordXml.of("<vessel name=\"Old\"/>").replace("\"1.0\">", "\"0.3\">"));

        assertThat(file.notes()).isEmpty();
        assertThat(file.record().getVessel().getName()).isEqualTo("Old");
        assertThat(RecordXml.saved(file)).contains("formatVersion=\"1.0\"");
    }

    @Test
    void aRecordWithoutVersionCountsAsOld() throws Exception {
        RecordFile file = RecordXml.read(RecordXml.of("").replace(" formatVersion=\"1.0\"", ""));

        assertThat(file.notes()).isEmpty();
        assertThat(RecordXml.saved(file)).contains("formatVersion=\"1.0\"");
    }

    @Test
    void aRecordOfANewerVersionOpensWithANoteAndStaysNewer() throws Exception {
        RecordFile file = RecordXml.read(RecordXml.of("<vessel/>").replace("\"1.0\">", "\"1.10\">"));

        assertThat(file.notes()).containsExactly(
            "The record is in format version 1.10 and this program knows 1.0; what it does not know is kept in the file and not shown");
        assertThat(RecordXml.saved(file)).contains("formatVersion=\"1.10\"");
    }

    @Test
    void editsOfAnOpenedRecordAreNotified() throws Exception {
        CommissioningRecord record = RecordXml.read(RecordXml.of("<vessel name=\"One\"/>")).record();
        StringBuilder heard = new StringBuilder();
        record.getVessel().eAdapters().add(new AdapterImpl() {
            @Override
            public void notifyChanged(Notification change) {
                heard.append(change.getNewStringValue());
            }
        });

        record.getVessel().setName("Two");

        assertThat(heard).hasToString("Two");
    }

    @Test
    void namesTheTextThatHoldsACharacterWhichXmlCannot() {
        RecordFile file = RecordFile.create();
        Vessel vessel = MAKE.createVessel();
        vessel.setName("vertical\u000Btab");
        file.record().setVessel(vessel);

        assertThatThrownBy(file::toBytes).isInstanceOf(RecordWriteException.class)
            .hasMessage("The record cannot be written: Vessel › Name holds the character U+000B, which no record file can hold; delete it");
        vessel.setName("half a pair \uD83D");
        assertThatThrownBy(file::toBytes).isInstanceOf(RecordWriteException.class).hasMessageContaining("U+D83D");
        vessel.setName("whole pair \uD83D\uDE00");
        assertThat(Records.firstDifference(file.record(), reread(file))).isEmpty();
    }

    @Test
    void photographsOfSomeMegabytesAreNoTrouble() throws Exception {
        RecordFile file = RecordFile.create();
        Photograph photograph = photograph("large");
        photograph.setData(new byte[6_000_000]);
        file.record().getPhotographs().add(photograph);

        assertThat(RecordXml.read(file.toBytes()).record().getPhotographs().getFirst().getData()).hasSize(6_000_000);
    }

    @Test
    void aRecordMadeOtherwiseGetsAFile() throws Exception {
        CommissioningRecord record = MAKE.createCommissioningRecord();
        record.setRawWater(MAKE.createRawWaterCircuit());
        WaterHoseRun hose = MAKE.createWaterHoseRun();
        record.getRawWater().getHoses().add(hose);

        RecordFile file = RecordFile.of(record);

        assertThat(file.record()).isSameAs(record);
        assertThat(Records.firstDifference(record, reread(file))).isEmpty();
        assertThat(hose.getId()).isEqualTo("hose-1");
    }

    @Test
    void aCopyOfARecordIsEqualAndIndependent() throws Exception {
        CommissioningRecord record = RecordXml.read(RecordXml.of("<vessel name=\"One\"/>")).record();
        CommissioningRecord copy = EcoreUtil.copy(record);
        assertThat(Records.equal(record, copy)).isTrue();
        copy.getVessel().setName("Two");
        assertThat(Records.firstDifference(record, copy)).contains("vessel.name: One against Two");
    }

    private static CommissioningRecord reread(RecordFile file) {
        try {
            return RecordXml.read(file.toBytes()).record();
        } catch (RecordReadException | RecordWriteException failed) {
            throw new AssertionError(failed);
        }
    }

    private static Photograph photograph(String caption) {
        Photograph photograph = MAKE.createPhotograph();
        photograph.setCaption(caption);
        photograph.setData(new byte[] { 1, 2, -3 });
        return photograph;
    }

    @Test
    void anUnwritablePlaceIsToldInOneSentence() throws IOException {
        RecordFile file = RecordFile.create();
        assertThatThrownBy(() -> file.save(folder)).isInstanceOf(RecordWriteException.class)
            .hasMessage(folder + " cannot be written: it is a folder; choose a file name");
        Path nowhere = folder.resolve("nowhere/boat.garboard");
        assertThatThrownBy(() -> file.save(nowhere)).isInstanceOf(RecordWriteException.class)
            .hasMessage(nowhere + " cannot be written: its folder does not exist");
        Path inAFile = Files.writeString(folder.resolve("file"), "x").resolve("boat.garboard");
        assertThatThrownBy(() -> file.save(inAFile)).isInstanceOf(RecordWriteException.class)
            .hasMessageStartingWith(inAFile + " cannot be written: ").hasMessageNotContaining("Exception");
    }
}
