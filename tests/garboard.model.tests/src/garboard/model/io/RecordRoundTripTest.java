// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;

import org.eclipse.emf.ecore.util.EcoreUtil;

import garboard.model.CommissioningRecord;
import garboard.model.Records;
import garboard.model.testing.RecordArbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class RecordRoundTripTest {

    @Provide
    Arbitrary<CommissioningRecord> records() {
        return RecordArbitraries.records();
    }

    @Property(tries = 100)
    void whatWasSavedIsRead(@ForAll("records") CommissioningRecord record) throws Exception {
        CommissioningRecord before = EcoreUtil.copy(record);
        RecordFile file = RecordFile.of(record);
        byte[] bytes = file.toBytes();

        RecordFile read = RecordFile.read(new ByteArrayInputStream(bytes), "the file");

        assertThat(Records.firstDifference(record, read.record())).isEmpty();
        assertThat(read.notes()).isEmpty();
        assertThat(read.toBytes()).isEqualTo(bytes);
        // saving itself changes nothing but ids that were missing
        Items.of(before).assign();
        assertThat(Records.firstDifference(before, read.record())).isEmpty();
    }
}
