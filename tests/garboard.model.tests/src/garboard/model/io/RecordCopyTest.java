// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.testing.RandomRecords;
import garboard.model.testing.RecordArbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A copy of a record file, to be written elsewhere while the record is edited on. */
class RecordCopyTest {

    @Provide
    Arbitrary<CommissioningRecord> records() {
        return RecordArbitraries.records();
    }

    @Property(tries = 60)
    void writesTheSameBytes(@ForAll("records") CommissioningRecord record) throws Exception {
        RecordFile file = RecordFile.of(record);
        byte[] bytes = file.toBytes();

        assertThat(file.copy().toBytes()).isEqualTo(bytes);
    }

    @Test
    void keepsWhatTheModelDoesNotKnow() throws Exception {
        RecordFile file = RecordXml.read(RecordXml.of("""
            <rawWater weather="fair &amp; calm" xmlns:a="urn:a" a:b="1">
              <hoses id="hose-1" bore="1 in" colour="red"><label at="both ends"><line n="1">a<b/>c</line></label></hoses>
              <hoses xsi:type="garboard:BellowsRun" id="hose-2" bore="1 in"><fittings kind="tee-run"/></hoses>
            </rawWater>"""));
        String saved = RecordXml.saved(file);

        assertThat(saved).contains("colour=\"red\"", "BellowsRun", "weather=");
        assertThat(RecordXml.saved(file.copy())).isEqualTo(saved);
    }

    @Test
    void isNotTouchedByLaterEdits() throws Exception {
        RecordFile file = RecordXml.read(RecordXml.of("<vessel name=\"Wren\"/>"));
        RecordFile copy = file.copy();

        file.record().getVessel().setName("Robin");
        file.record().setTrial(GarboardFactory.eINSTANCE.createTrial());

        assertThat(copy.record().getVessel().getName()).isEqualTo("Wren");
        assertThat(copy.record().getTrial()).isNull();
    }

    @Test
    void writingItDoesNotTouchTheOriginal() throws Exception {
        RecordFile file = RecordFile.of(new RandomRecords(new Random(7), 30).record());
        file.record().getInstruments().add(GarboardFactory.eINSTANCE.createInstrument());

        file.copy().toBytes();

        assertThat(file.record().getInstruments().getLast().getId()).isNull();
    }

    @Test
    void doesNotGiveTheIdOfADeletedItemAgain() throws Exception {
        RecordFile file = RecordXml.read(RecordXml.of("<rawWater><hoses id=\"hose-1\"/><hoses id=\"hose-7\"/></rawWater>"));
        file.record().getRawWater().getHoses().removeLast();

        RecordFile copy = file.copy();
        copy.record().getRawWater().getHoses().add(GarboardFactory.eINSTANCE.createWaterHoseRun());
        copy.items().assign();

        assertThat(copy.record().getRawWater().getHoses().getLast().getId()).isEqualTo("hose-8");
    }

    @Test
    void sharesTheBytesOfPhotographs() throws Exception {
        RecordFile file = RecordFile.create();
        var photograph = GarboardFactory.eINSTANCE.createPhotograph();
        photograph.setData(new byte[] { 1, 2, 3 });
        file.record().getPhotographs().add(photograph);

        assertThat(file.copy().record().getPhotographs().getFirst().getData()).isSameAs(photograph.getData());
    }
}
